package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.ComparisonScreen;
import croftboard.plan.ask.Comparison;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays two plans beside each other. */
@Command(name = "compare", sortOptions = false, description = "What differs between two plans: orders to send or cancel, "
        + "dishes, prep, promises, money; nothing that is equal.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, AnswerPrint.WRONG_SAY})
final class CompareCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "the plan before, such as 2027-W33@1")
    private PlanRef before;

    @Parameters(index = "1", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "the plan after, such as 2027-W33@2; without @VERSION the current one")
    private PlanRef after;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    CompareCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        PlanStore plans = at.plans();
        Comparison differs = Comparison.of(Kept.plan(plans, before), Kept.plan(plans, after));
        AnswerPrint.print(new ComparisonScreen(book, exactly(plans, before), exactly(plans, after), differs), format,
                setting, spec.commandLine().getOut());
        return Exit.DONE;
    }

    private static String exactly(PlanStore plans, PlanRef ref) {
        return new PlanRef(ref.week(), OptionalInt.of(Kept.version(plans, ref))).toString();
    }
}
