package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Checks a plan against its book, trusting nothing that made it: every must, every figure, all money. Runs after each
 * plan; its verdict is printed.
 */
public final class PlanChecker {
    /** Kinds of musts: the topics of {@link #checkAll}. */
    private static final int MUSTS = 9;

    private PlanChecker() { }

    /**
     * @param given what the plan was made with
     * @param now what the plan was made with: a delivery whose cut-off is before it cannot be ordered; empty: all can
     */
    public static Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now) {
        return check(book, plan, given, now, Optional.empty());
    }

    /** @param revised empty: the plan was made anew. @param now as when the first version was made */
    public static Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now,
            Optional<Revised> revised) {
        Report report = new Report();
        report.findIf(!plan.fingerprint().equals(book.fingerprint()),
                "book: the plan was made from another state of the book; figures may differ for that reason");
        Days days = new Days(book, plan.week(), revised.map(Revised::notSold).orElse(Set.of()));
        Offered offered = new Offered(book, days, given, now);
        Subject of = new Subject(book, plan, given, days, offered, new Making(book, offered, revised.isEmpty() ? new TreeMap<>()
                        : SwapsCheck.everyLine(plan.swaps())), Slot.all(book, days, revised),
                revised);
        checkAll(of, new Counted(book, days, given), report);
        return report.verdict();
    }

    private static void checkAll(Subject of, Counted counted, Report report) {
        topic("what was done", report, () -> new DoneCheck(of, report).run());
        topic("menu", report, () -> new SlotsCheck(of, report).run());
        topic("portions", report, () -> new PortionsCheck(of, report).run());
        topic("swaps", report, () -> new SwapsCheck(of, report).run());
        topic("batches", report, () -> new BatchesCheck(of, counted, report).run());
        topic("use-by", report, () -> new UseByCheck(of, counted, report).run());
        topic("needs", report, () -> new NeedsCheck(of, report).run());
        topic("flows", report, () -> new FlowsCheck(of, counted, report).run());
        topic("orders", report, () -> of.revised().ifPresentOrElse(r -> new RevisedOrdersCheck(of, r, report).run(),
                () -> new OrdersCheck(of, report).run()));
        topic("promised packs", report, () -> new PromisedPacksCheck(of, counted, report).run());
        WorkCheck work = new WorkCheck(of, report);
        topic("hands and equipment", report, work::run);
        topic("share", report, () -> new ShareCheck(of, report).run());
        topic("promises", report, () -> new PromisesCheck(of, work, report).run());
        topic("account", report, () -> new MoneyCheck(of, report).run());
        topic("missing", report, () -> new MissingCheck(of, report).run());
        report.count(MUSTS, "musts");
    }

    /** Figures so wild that they cannot be worked with are a finding, not the end of the check. */
    private static void topic(String name, Report report, Runnable check) {
        try {
            check.run();
        } catch (RuntimeException e) {
            report.find(name + ": cannot be derived again from what the plan says (" + e.getClass().getSimpleName()
                    + (e.getMessage() == null ? "" : ": " + e.getMessage()) + ")");
        }
    }
}
