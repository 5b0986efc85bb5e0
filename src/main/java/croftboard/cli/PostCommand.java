package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a plan the one that people work from. */
@Command(name = "post", sortOptions = false, description = "Post a plan: from now on people work from it.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, there is no such plan, or the book has faults; nothing was posted",
            "3:the plan is not complete, or its check found something; nothing was posted"})
final class PostCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "such as 2027-W33 (the current version) or 2027-W33@2")
    private PlanRef ref;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    PostCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        PlanStore plans = at.plans();
        int version = Kept.version(plans, ref);
        WeekPlan plan = Kept.plan(plans, new PlanRef(ref.week(), OptionalInt.of(version)));
        OptionalInt before = plans.postedVersion(ref.week());
        PrintWriter err = spec.commandLine().getErr();
        checkBase(plan, version, before);
        if (!plan.fingerprint().equals(book.fingerprint())) {
            err.println("croftboard: the book has changed since this plan was made");
        } else {
            PlanCheck.Verdict verdict = tools.check().check(book, plan, plans.given(plan.week(), book), PlanCheck.asOf(plan),
                    Kept.base(plans, plan));
            if (!verdict.holds()) {
                return refuse(List.of(verdict.sentence()));
            }
        }
        return plans.post(ref.week(), version).fold(
                posted -> tell(plan, posted.version(), before),
                incomplete -> refuse(incomplete.missing().stream()
                        .map(m -> m.what() + ". What would mend it: " + m.mend() + ".").toList()),
                none -> {
                    throw new WrongUse(none.why());
                });
    }

    /** A repair of a version that people no longer work from would undo what was decided since. */
    private static void checkBase(WeekPlan plan, int version, OptionalInt posted) {
        plan.inputs().revision().filter(r -> posted.isEmpty() || posted.getAsInt() != r.of() && posted.getAsInt() != version)
                .ifPresent(r -> {
                    String week = plan.week().toString();
                    throw new WrongUse(week + "@" + version + " changes version " + r.of() + ", but people work from "
                            + (posted.isPresent() ? "version " + posted.getAsInt() : "none") + " -> croftboard short " + week
                            + (posted.isPresent() ? ", with the changes once more" : "@" + r.of() + ", or post that version first"));
                });
    }

    private int tell(WeekPlan plan, int version, OptionalInt before) {
        Page page = setting.page();
        page.say(plan.week() + "@" + version + " is posted: people work from it."
                + (before.isPresent() && before.getAsInt() != version
                        ? " It takes the place of version " + before.getAsInt() + ", which is kept." : ""));
        print(spec.commandLine().getOut(), page);
        return Exit.DONE;
    }

    private int refuse(List<String> why) {
        Page page = setting.page();
        page.say(ref + " cannot be posted; nothing has changed:");
        why.forEach(w -> page.item("- ", w));
        print(spec.commandLine().getErr(), page);
        return Exit.INCOMPLETE;
    }

    private static void print(PrintWriter to, Page page) {
        to.print(page);
        to.flush();
    }
}
