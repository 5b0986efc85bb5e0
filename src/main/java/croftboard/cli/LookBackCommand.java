package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.LookBackScreen;
import croftboard.ledger.store.LedgerStore;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import croftboard.plan.look.LookingBack;
import java.io.PrintWriter;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Holds a week's plan against what the ledger says happened. */
@Command(name = "look-back", sortOptions = false, description = "Hold a week's plan against what happened: portions, money, waste, your own"
        + " figures, yields, menu mix.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class LookBackCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "such as 2027-W33 (the plan that was posted, else the current one) or 2027-W33@2")
    private PlanRef ref;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Mixin
    private LedgerAt ledgerAt;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    LookBackCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        PlanStore plans = at.plans();
        OptionalInt posted = ref.version().isPresent() ? ref.version() : plans.postedVersion(ref.week());
        PlanRef which = posted.isPresent() ? new PlanRef(ref.week(), posted) : ref;
        WeekPlan plan = Kept.plan(plans, which);
        int version = Kept.version(plans, which);
        boolean isPosted = plans.postedVersion(ref.week()).equals(OptionalInt.of(version));
        try (LedgerStore ledger = ledgerAt.toRead(at.folder(), setting)) {
            LookBackScreen screen = new LookBackScreen(book, LookingBack.of(book, plan, ledger), ref.week() + "@" + version
                    + (isPosted ? ", posted" : ", never posted: nobody was told to work from it"));
            PrintWriter out = spec.commandLine().getOut();
            out.print(ScreenPrint.as(format, screen, setting.page()));
            out.flush();
            return Exit.DONE;
        }
    }
}
