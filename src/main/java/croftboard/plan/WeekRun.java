package croftboard.plan;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.sourcing.Sourcing;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Solves a week that is already a problem, and names what was found: for questions about a plan. */
public final class WeekRun {
    private WeekRun() { }

    /**
     * How long and how.
     *
     * @param steps menus looked at in each search: repeatable; empty: {@code time} by the clock
     */
    public record Effort(long seed, Duration time, OptionalLong steps, BooleanSupplier stop) { }

    /**
     * Dishes and packs found.
     *
     * @param bestForMenu no order for this menu is worth more, cents; empty: not proved
     * @param bestAtAll no menu is worth more, cents; empty: not proved
     */
    public record Found(int[] choice, int[] packs, boolean complete, long valueCents, Optional<Long> bestForMenu,
            Optional<Long> bestAtAll, String how) { }

    /** The best that is found. @param better told each better one, in time to be shown */
    public static Found solve(WeekProblem problem, int[] start, Effort effort, Consumer<Found> better) {
        Budget budget = Budget.of(effort.time(), effort.steps());
        WeekSolver solver = new WeekSolver(problem, budget, effort.seed(), new WeekSolver.Listener() {
            @Override
            public void doing(String what) { }

            @Override
            public void better(WeekSolver.Solved solved) {
                better.accept(found(solved));
            }
        }, effort.stop());
        return found(solver.solve(start));
    }

    /** Orders alone for one menu: an answer at once. */
    public static Found orders(WeekProblem problem, int[] choice, long seed, int rounds) {
        return judged(problem, choice, sourcing(problem).search(choice, seed, rounds, () -> false));
    }

    /** Orders for one menu close to known packs, in milliseconds. */
    public static Found near(WeekProblem problem, int[] choice, int[] packs) {
        return judged(problem, choice, sourcing(problem).near(choice, packs));
    }

    /** The same menu with orders from the exact program, so many nodes of it; the better of both. */
    public static Found exact(WeekProblem problem, Found start, long nodes) {
        return judged(problem, start.choice(), sourcing(problem).exact(start.choice(), new Sourcing.Orders(start.packs(),
                start.complete(), start.valueCents(), Optional.empty(), 0), 0, nodes));
    }

    /** Whether it is proved that no order for this menu keeps the musts. */
    public static boolean impossible(WeekProblem problem, int[] choice, long nodes) {
        return sourcing(problem).impossible(choice, nodes);
    }

    /** So small that every menu is tried: then {@link #solve} gives the best there is. */
    public static boolean isTiny(WeekProblem problem) {
        return EveryMenu.suits(problem);
    }

    /** Every promise, kept or broken, in words. */
    public static List<WeekPlan.Promise> promises(Book book, WeekProblem problem, Account account) {
        return new PromiseWords(book, problem, account).all();
    }

    /** Musts that dishes and packs break, in words; empty: complete. */
    public static List<WeekPlan.Missing> missing(Book book, WeekProblem problem, int[] choice, int[] packs) {
        return missing(Names.of(book), problem, choice, packs);
    }

    /** Whether dishes and packs keep every must. */
    public static boolean holds(WeekProblem problem, int[] choice, int[] packs) {
        return missing(Names.IDS, problem, choice, packs).isEmpty();
    }

    private static List<WeekPlan.Missing> missing(Names names, WeekProblem problem, int[] choice, int[] packs) {
        Workload work = Workload.of(problem, choice);
        return new MissingMusts(names, problem, choice, packs, work, Buying.of(problem, work.needMg(), packs)).list();
    }

    private static Sourcing sourcing(WeekProblem problem) {
        return new Sourcing(problem, problem.prices().localPrice().toDouble() / 2);
    }

    private static Found judged(WeekProblem problem, int[] choice, Sourcing.Orders orders) {
        boolean complete = orders.complete() && missing(Names.IDS, problem, choice, orders.packs()).isEmpty();
        return new Found(choice, orders.packs(), complete, orders.valueCents(), orders.bestForMenu(), Optional.empty(), "");
    }

    /** Dishes and packs as they are. */
    public static Found judged(WeekProblem problem, int[] choice, int[] packs) {
        croftboard.need.Workload work = croftboard.need.Workload.of(problem, choice);
        boolean complete = new MissingMusts(Names.IDS, problem, choice, packs, work,
                croftboard.need.Buying.of(problem, work.needMg(), packs)).list().isEmpty();
        return new Found(choice.clone(), packs.clone(), complete,
                croftboard.need.Account.of(problem, choice, packs, work).value(), Optional.empty(), Optional.empty(), "");
    }

    private static Found found(WeekSolver.Solved solved) {
        return new Found(solved.choice(), solved.orders().packs(), solved.complete(), solved.orders().valueCents(),
                solved.orders().bestForMenu(), solved.bestAtAll(), solved.how());
    }

    /** The plan that dishes and packs make. @param standing what stays of an earlier version */
    public static WeekPlan plan(Book book, IsoWeek week, ProblemBuilder.Built built, int[] choice, int[] packs,
            Standing standing, WeekPlan.Inputs inputs, WeekPlan.Proof proof) {
        return new PlanAssembler(book, week, built, choice, packs, standing).assemble(inputs, proof);
    }
}
