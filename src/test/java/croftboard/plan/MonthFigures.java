package croftboard.plan;

import croftboard.menu.MenuSearch;
import croftboard.need.RandomWeek;
import croftboard.need.ServiceWeeks;
import croftboard.need.Stretch;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Sourcing;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Several random weeks planned as one, beside the same weeks planned one after the other in the same run:
 * {@code MonthFigures SEED WEEKS SECONDS|STEPSs [AHEAD...]}. With steps, the single weeks get as many as take about the same
 * time. With AHEAD, or with more than five weeks, also by rolling stretches of so many weeks. Money in dollars; time of
 * all threads, as other work may stand beside.
 */
public final class MonthFigures {
    private static final double WEEK_STEPS = 1.6;
    private static final int ONE_PROBLEM = 5;
    private final WeekProblem problem;
    private final ServiceWeeks weeks;
    private final long seed;
    private final boolean steps;
    private final long effort;
    private long cpu;
    private long wall;

    private MonthFigures(String[] args) {
        seed = Long.parseLong(args[0]);
        problem = RandomWeek.weeks(seed, Integer.parseInt(args[1]));
        weeks = new ServiceWeeks(problem);
        steps = args[2].endsWith("s");
        effort = Long.parseLong(args[2].replace("s", ""));
    }

    public static void main(String[] args) {
        MonthFigures figures = new MonthFigures(args);
        boolean one = figures.weeks.count() <= ONE_PROBLEM;
        if (one) {
            figures.asOne();
        }
        for (int a = 3; a < args.length; a++) {
            figures.rolling(Integer.parseInt(args[a]));
        }
        if (!one && args.length == 3) {
            figures.rolling(ONE_PROBLEM);
        }
        figures.oneByOne();
    }

    private static long cpuNanos() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private void start() {
        cpu = cpuNanos();
        wall = System.nanoTime();
    }

    private String spent() {
        return String.format("%.1f s of processors, %.1f s by the clock", (cpuNanos() - cpu) / 1e9,
                (System.nanoTime() - wall) / 1e9);
    }

    private int[] nothing() {
        int[] menu = new int[problem.slots().size()];
        Arrays.fill(menu, -1);
        return menu;
    }

    private MonthBudget budget(long of) {
        return MonthBudget.of(Duration.ofMillis(steps ? 0 : of * 1000), steps ? OptionalLong.of(of) : OptionalLong.empty());
    }

    private void asOne() {
        start();
        WeekSolver.Solved solved = new MonthSolver(problem, budget(effort), seed, new Ear(), () -> false).solve(nothing());
        print("all weeks as one", solved.complete(), solved.orders().valueCents());
        double value = solved.orders().valueCents();
        solved.bestAtAll().ifPresent(b -> System.out.printf("  no plan passes %.2f: gap %.2f %%%n", b / 100.0,
                (b / value - 1) * 100));
        solved.orders().bestForMenu().ifPresent(b -> System.out.printf(
                "  no order of all these weeks passes %.2f with this menu: gap %.2f %%%n", b / 100.0, (b / value - 1) * 100));
    }

    private void rolling(int ahead) {
        start();
        WeekSolver.Solved solved = new RollingWeeks(problem, ahead, stretch(4), stretch(1), seed, new Ear(), () -> false)
                .solve(nothing());
        print("rolling, " + ahead + " weeks ahead", solved.complete(), solved.orders().valueCents());
    }

    /** Of the effort for all weeks, so many shares of a week. */
    private MonthBudget stretch(long shares) {
        long own = Math.max(1, effort * shares * (steps ? 1 : 1000) / (weeks.count() + 3));
        return MonthBudget.ofStretch(Duration.ofMillis(own), steps ? OptionalLong.of(own) : OptionalLong.empty());
    }

    private void oneByOne() {
        start();
        int[] choice = nothing();
        int[] packs = new int[problem.offers().size()];
        for (int w = 0; w < weeks.count(); w++) {
            Stretch week = new Stretch(problem, weeks, w, w + 1, choice, packs);
            Budget budget = steps ? Budget.of(Duration.ZERO, OptionalLong.of(Math.round(effort * WEEK_STEPS
                    * Math.min(1.0, 4.0 / weeks.count()))))
                    : Budget.of(Duration.ofMillis(effort * 1000 / weeks.count()), OptionalLong.empty());
            WeekSolver.Solved solved = new WeekSolver(week.problem, budget, seed, new Quiet(), () -> false)
                    .solve(week.choice(nothing()));
            week.choiceInto(solved.choice(), choice);
            week.packsInto(solved.orders().packs(), packs);
        }
        Sourcing.Orders orders = new Sourcing(problem, 0).known(choice, packs);
        print("one week after the other", orders.complete(), orders.valueCents());
    }

    private void print(String how, boolean complete, long cents) {
        System.out.printf("%s, seed %d: worth %.2f%s; %s; %s%n", how, seed, cents / 100.0, complete ? "" : " INCOMPLETE",
                spent(), memory());
    }

    /** The most that the whole program has held so far, native parts included; where the system tells it. */
    private static String memory() {
        try (java.util.stream.Stream<String> lines = java.nio.file.Files.lines(java.nio.file.Path.of("/proc/self/status"))) {
            return lines.filter(l -> l.startsWith("VmHWM")).findFirst().orElse("memory unknown").replaceAll("\\s+", " ");
        } catch (java.io.IOException e) {
            return "memory unknown";
        }
    }

    private final class Ear implements WeekSolver.Listener {
        @Override
        public void doing(String what) {
            System.out.printf("  %s (%s)%n", what, spent());
        }

        @Override
        public void better(WeekSolver.Solved solved) {
            System.out.printf("    worth %.2f%s%n", solved.orders().valueCents() / 100.0, solved.complete() ? "" : " incomplete");
        }

        @Override
        public void searched(MenuSearch.Found menu, Sourcing.Orders orders) {
            System.out.printf("    %d menus looked at, thought worth %.2f%n", menu.tries(), menu.worthCents() / 100.0);
        }
    }

    private static final class Quiet implements WeekSolver.Listener {
        @Override
        public void doing(String what) {
            // the sequence is measured as a whole
        }

        @Override
        public void better(WeekSolver.Solved solved) {
            // the sequence is measured as a whole
        }
    }
}
