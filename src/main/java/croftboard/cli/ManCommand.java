package croftboard.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a man page for the program and for each of its commands. */
@Command(name = "man", description = "Write a man page for each command into a folder.", sortOptions = false,
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class ManCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @CommandLine.Option(names = {"-h", "--help"}, usageHelp = true, description = "print this help")
    private boolean help;

    @Parameters(paramLabel = "DIR", description = "folder to write to; it is made when it is not there")
    private Path folder;

    @Override
    public Integer call() throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, String> page : pages(spec.root().commandLine()).entrySet()) {
            Files.writeString(folder.resolve(page.getKey()), page.getValue(), StandardCharsets.UTF_8);
            spec.commandLine().getOut().println(folder.resolve(page.getKey()));
        }
        return Exit.DONE;
    }

    /** File name to page, for the program and its commands. */
    static Map<String, String> pages(CommandLine root) {
        Map<String, String> pages = new TreeMap<>();
        pages.put(root.getCommandName() + ".1", page(root, root.getCommandName()));
        root.getSubcommands().forEach((name, line) -> pages.put(root.getCommandName() + "-" + name + ".1",
                page(line, root.getCommandName() + "-" + name)));
        return pages;
    }

    private static String page(CommandLine line, String title) {
        line.setUsageHelpWidth(80);
        String[] about = line.getCommandSpec().usageMessage().description();
        StringBuilder roff = new StringBuilder();
        roff.append(".TH \"").append(title.toUpperCase(java.util.Locale.ROOT)).append("\" 1\n.SH NAME\n")
                .append(safe(title)).append(" \\- ").append(safe(about.length == 0 ? title : about[0]))
                .append("\n.SH USE\n.nf\n");
        line.getUsageMessage(CommandLine.Help.Ansi.OFF).lines().forEach(l -> roff.append(safe(l)).append('\n'));
        return roff.append(".fi\n").toString();
    }

    /** Backslashes and leading dots or quotes mean something to roff. */
    private static String safe(String text) {
        String plain = text.replace("\\", "\\e").replace("-", "\\-");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
