package croftboard.plan;

import croftboard.menu.MenuSearch;
import croftboard.need.Enumeration;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.MonthRelaxation;
import croftboard.sourcing.Sourcing;
import java.lang.management.ManagementFactory;

/** One search of menus of several weeks, then menu and orders together: {@code SEED WEEKS MENUS MEMORY ROUNDS TRIES}. */
public final class MonthJointFigures {
    private MonthJointFigures() { }

    private static double cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    public static void main(String[] args) {
        long seed = Long.parseLong(args[0]);
        WeekProblem problem = RandomWeek.weeks(seed, Integer.parseInt(args[1]));
        double worth = problem.prices().localPrice().toDouble() / 2;
        if (!Boolean.getBoolean("noworth")) {
            worth = MonthRelaxation.of(problem, 180_000).orElseThrow().localWorth();
            System.out.printf("local worth %.3f in %.1f s%n", worth, cpu());
        }
        double t = cpu();
        int[] greedy = new MenuSearch(problem, worth).greedy(Enumeration.nothing(problem)).choice();
        MenuSearch.Found menu = new MenuSearch(problem, worth).search(greedy, seed,
                new MenuSearch.Effort(Long.parseLong(args[2]), 0, Integer.parseInt(args[3])), () -> false);
        Sourcing sourcing = new Sourcing(problem, worth);
        Sourcing.Orders orders = sourcing.search(menu.choice(), seed, Integer.parseInt(args[4]), () -> false);
        System.out.printf("menus %.1f s: thought %.2f, worth %.2f %s%n", cpu() - t, menu.worthCents() / 100.0,
                orders.valueCents() / 100.0, orders.complete());
        for (int a = 5; a < args.length; a++) {
            t = cpu();
            JointSearch.Found found = new JointSearch(problem, worth, menu.choice(), orders.packs(), seed)
                    .run(Long.parseLong(args[a]), 0, () -> false);
            Sourcing.Orders known = sourcing.known(found.choice(), found.packs());
            double joint = cpu() - t;
            Sourcing.Orders better = sourcing.better(found.choice(), found.packs(), seed, Integer.parseInt(args[4]));
            System.out.printf("joint %s tries %.1f s: worth %.2f %s; packs %.1f s: %.2f %s%n", args[a], joint,
                    known.valueCents() / 100.0, known.complete(), cpu() - t - joint, better.valueCents() / 100.0,
                    better.complete());
        }
    }
}
