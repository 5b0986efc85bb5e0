package croftboard.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program itself: help, version, and what the commands stand under. */
@Command(name = "croftboard", versionProvider = Version.class, sortOptions = false, usageHelpAutoWidth = false,
        description = "Plans what a deli case sells from what nearby farms can deliver.",
        synopsisSubcommandLabel = "COMMAND", commandListHeading = "%nCommands:%n",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY,
            Exit.INCOMPLETE_SAY, Exit.STOPPED_SAY},
        footer = {"", "Start: ./croftboard check, ./croftboard plan, ./croftboard show WEEK"})
final class Root implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "print this help")
    private boolean help;

    @Option(names = {"-V", "--version"}, versionHelp = true, description = "print the version")
    private boolean version;

    @Option(names = "--warm-up", hidden = true, arity = "0..1", fallbackValue = ".", paramLabel = "DIR",
            description = "touch what a normal run uses, for a faster start")
    private Path warmUp;

    private final Setting setting;
    private final Tools tools;

    Root(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if (warmUp != null) {
            new WarmUp(setting, tools).run(warmUp);
            return Exit.DONE;
        }
        CommandLine line = spec.commandLine();
        line.usage(line.getErr());
        return Exit.WRONG_USE;
    }
}
