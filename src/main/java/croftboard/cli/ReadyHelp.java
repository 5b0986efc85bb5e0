package croftboard.cli;

import croftboard.cli.screen.Page;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;

/**
 * Help and version as texts, written once after a build beside the program's jar: asked for alone, they are there at
 * once, without the command line being built. Whatever is asked in another way, or at another width, goes the long way.
 */
final class ReadyHelp {
    private static final String JAR = "croftboard.jar";
    private static final String ROOT = "croftboard";
    private static final Set<String> HELP = Set.of("--help", "-h");
    private static final Set<String> VERSION = Set.of("--version", "-V");

    private ReadyHelp() { }

    /** Where the texts lie; empty when the program does not run from its jar. */
    static Optional<Path> folder() {
        String jar = System.getProperty("java.class.path", "");
        return jar.endsWith(JAR) ? Optional.of(Path.of(jar).resolveSibling("help")) : Optional.empty();
    }

    /** The text that answers; empty when there is none ready. */
    static Optional<String> answer(Path folder, Setting setting, String... args) {
        Optional<String> name = name(args);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Path file = folder.resolve(name.get() + ".txt");
        try {
            return setting.width() == Page.WIDTH && Files.isRegularFile(file) ? Optional.of(Files.readString(file))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> name(String[] args) {
        if (args.length == 1) {
            return HELP.contains(args[0]) ? Optional.of(ROOT) : VERSION.contains(args[0]) ? Optional.of("version")
                    : Optional.empty();
        }
        return args.length == 2 && HELP.contains(args[1]) && args[0].chars().allMatch(c -> c >= 'a' && c <= 'z')
                && !args[0].equals(ROOT) && !args[0].equals("help") ? Optional.of(args[0]) : Optional.empty();
    }

    /** Writes the texts of all commands. */
    static void write(Path folder, CommandLine all) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(ROOT + ".txt"), usage(all));
        for (var command : all.getSubcommands().entrySet()) {
            Files.writeString(folder.resolve(command.getKey() + ".txt"), usage(command.getValue()));
        }
        StringWriter version = new StringWriter();
        all.printVersionHelp(new PrintWriter(version, true));
        Files.writeString(folder.resolve("version.txt"), version.toString());
    }

    private static String usage(CommandLine command) {
        StringWriter text = new StringWriter();
        command.usage(new PrintWriter(text, true));
        return text.toString();
    }
}
