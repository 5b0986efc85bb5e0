package croftboard.plan;

import croftboard.menu.MenuSearch;
import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.Enumeration;
import croftboard.need.ServiceWeeks;
import croftboard.need.Stretch;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.sourcing.Sourcing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;

/** The one door through which benchmarks have a problem solved as the program solves it, and plans judged. */
public final class Engine {
    private Engine() { }

    /**
     * @param complete whether every must is kept
     * @param valueCents by the account
     * @param bestAtAll no menu at all is worth more; empty when nothing was proved
     * @param bestForMenu no order for this menu is worth more
     * @param moments each better plan as it came
     * @param searches of menus
     */
    public record Answer(int[] choice, int[] packs, boolean complete, long valueCents, Optional<Long> bestAtAll,
            Optional<Long> bestForMenu, List<Moment> moments, List<Searched> searches) {
        /** Bound less value as a share of the value; no bound: infinite. */
        public double gap() {
            return bestAtAll.map(b -> (b - valueCents) / (double) valueCents).orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** @param seconds since the start. @param valueCents of a complete plan */
    public record Moment(double seconds, long valueCents, Optional<Long> bestAtAll) { }

    /**
     * One menu search.
     *
     * @param tries menus looked at
     * @param thoughtCents what it thought its menu worth
     * @param trueCents what the menu was worth with the orders then searched for it; empty when they are not complete
     */
    public record Searched(long tries, long thoughtCents, Optional<Long> trueCents) { }

    public static Answer week(WeekProblem problem, Duration time, long seed) {
        return heard(problem, ear -> new WeekSolver(problem, Budget.of(time, OptionalLong.empty()), seed, ear, () -> false)
                .solve(Enumeration.nothing(problem)));
    }

    /** Weeks that follow each other as one problem. The one call to the engine for several weeks stands here. */
    public static Answer month(WeekProblem problem, Duration time, long seed) {
        return heard(problem, ear -> new MonthSolver(problem, MonthBudget.of(time, OptionalLong.empty()), seed, ear,
                () -> false).solve(Enumeration.nothing(problem)));
    }

    /** As a rotation plans them: up to five weeks as one problem, more by stretches of three. */
    public static Answer weeks(WeekProblem problem, int weeks, Duration time, long seed) {
        if (weeks <= Rotator.AS_ONE) {
            return month(problem, time, seed);
        }
        MonthBudget first = MonthBudget.ofStretch(time.multipliedBy(4).dividedBy(weeks + 1), OptionalLong.empty());
        MonthBudget each = MonthBudget.ofStretch(time.dividedBy(weeks + 1), OptionalLong.empty());
        return heard(problem, ear -> new RollingWeeks(problem, 3, first, each, seed, ear, () -> false)
                .solve(Enumeration.nothing(problem)));
    }

    /** The same weeks one after the other, each with its share of the time: stock and dishes of the settled ones are given. */
    public static Answer oneByOne(WeekProblem problem, Duration time, long seed) {
        return heard(problem, ear -> {
            ServiceWeeks weeks = new ServiceWeeks(problem);
            int[] choice = Enumeration.nothing(problem);
            int[] packs = new int[problem.offers().size()];
            for (int w = 0; w < weeks.count(); w++) {
                Stretch week = new Stretch(problem, weeks, w, w + 1, choice, packs);
                WeekSolver.Solved solved = new WeekSolver(week.problem, Budget.of(time.dividedBy(weeks.count()),
                        OptionalLong.empty()), seed, new Ear(), () -> false).solve(week.choice(Enumeration.nothing(problem)));
                week.choiceInto(solved.choice(), choice);
                week.packsInto(solved.orders().packs(), packs);
            }
            Sourcing.Orders orders = new Sourcing(problem, 0).known(choice, packs);
            return new WeekSolver.Solved(choice, orders, complete(problem, choice, packs), Optional.empty(), "");
        });
    }

    private static Answer heard(WeekProblem problem, Function<WeekSolver.Listener, WeekSolver.Solved> solver) {
        Ear ear = new Ear();
        WeekSolver.Solved solved = solver.apply(ear);
        ear.better(solved);
        return new Answer(solved.choice(), solved.orders().packs(), solved.complete(),
                value(problem, solved.choice(), solved.orders().packs()), solved.bestAtAll(),
                solved.orders().bestForMenu(), List.copyOf(ear.moments), List.copyOf(ear.searches));
    }

    /** Seconds that one menu search has within a time. */
    public static double menuSeconds(Duration time) {
        return Math.max(1, Budget.of(time, OptionalLong.empty()).menuMillis()) / 1000.0;
    }

    /** Whether a plan keeps every must: the judgement that the program passes on its own plans. */
    public static boolean complete(WeekProblem problem, int[] choice, int[] packs) {
        Workload work = Workload.of(problem, choice);
        Buying buying = Buying.of(problem, work.needMg(), packs);
        return new MissingMusts(Names.IDS, problem, choice, packs, work, buying).list().isEmpty();
    }

    /** Cents by the account. */
    public static long value(WeekProblem problem, int[] choice, int[] packs) {
        return Account.of(problem, choice, packs).value();
    }

    private static final class Ear implements WeekSolver.Listener {
        private final long t0 = System.nanoTime();
        private final List<Moment> moments = new ArrayList<>();
        private final List<Searched> searches = new ArrayList<>();

        @Override
        public void doing(String what) {
            // only better plans are of interest
        }

        @Override
        public void better(WeekSolver.Solved solved) {
            if (solved.complete()) {
                moments.add(new Moment((System.nanoTime() - t0) / 1e9, solved.orders().valueCents(), solved.bestAtAll()));
            }
        }

        @Override
        public void searched(MenuSearch.Found menu, Sourcing.Orders orders) {
            searches.add(new Searched(menu.tries(), menu.worthCents(),
                    orders.complete() ? Optional.of(orders.valueCents()) : Optional.empty()));
        }
    }
}
