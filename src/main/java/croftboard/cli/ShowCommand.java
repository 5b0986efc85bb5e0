package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Screen;
import croftboard.cli.screen.Shown;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.OrderLife;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.WeekNotes;
import java.io.PrintWriter;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows a plan that is kept, or one part of it. */
@Command(name = "show", sortOptions = false, description = "Show a plan, or one part of it.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, there is no such plan, or the book has faults",
            "3:shown, but the plan is not complete: it cannot be posted"})
final class ShowCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "such as 2027-W33 (the current version) or 2027-W33@2")
    private PlanRef ref;

    @Parameters(index = "1", arity = "0..1", paramLabel = "PART", defaultValue = "all",
            converter = Typed.PartWord.class, description = "${COMPLETION-CANDIDATES} (default: all)")
    private Part part;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text",
            converter = Typed.FormatWord.class, description = "how to print it (default: text); csv takes one part")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ShowCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if (format == Format.CSV && part == Part.ALL) {
            throw new WrongUse("--format csv: one table at a time -> croftboard show " + ref
                    + " menu --format csv (or orders, prep, money, coverage, share, proof)");
        }
        Book book = at.read(tools.books());
        PlanStore plans = at.plans();
        WeekPlan plan = Kept.plan(plans, ref);
        int version = Kept.version(plans, ref);
        boolean posted = plans.postedVersion(ref.week()).stream().anyMatch(v -> v == version);
        LocalDateTime now = LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone());
        Shown shown = new Shown(book, plan, Optional.of(version), posted, now, verdict(book, plan),
                posted ? new WeekNotes(at.folder()).orders(ref.week()).doubts(plan, true, now) : OrderLife.Doubts.NONE);
        List<Screen> screens = part.screens(shown);
        PrintWriter out = spec.commandLine().getOut();
        out.print(switch (format) {
            case TEXT -> PlanPrint.text(shown, screens, setting.page());
            case JSON -> PlanPrint.json(shown, screens, OptionalDouble.empty());
            case CSV -> PlanPrint.csv(screens.get(0).rows());
        });
        out.flush();
        return plan.complete() ? Exit.DONE : Exit.INCOMPLETE;
    }

    private String verdict(Book book, WeekPlan plan) {
        return plan.fingerprint().equals(book.fingerprint()) ? tools.check()
                .check(book, plan, at.plans().given(plan.week(), book), PlanCheck.asOf(plan), Kept.base(at.plans(), plan)).sentence()
                : "the book has changed since, so this plan cannot be checked against it.";
    }
}
