package croftboard.sourcing;

import croftboard.menu.MenuSearch;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;

/**
 * Prints bounds over all menus of random weeks, in dollars, for comparison over time: {@code BoundFigures MILLIS,...
 * SEED...}; {@code s1} is the small week 1. Seconds are wall clock: look only where the machine is otherwise idle.
 */
public final class BoundFigures {
    private BoundFigures() { }

    public static void main(String[] args) {
        Natives.available();
        for (int a = 1; a < args.length; a++) {
            boolean small = args[a].startsWith("s");
            long seed = Long.parseLong(args[a].substring(small ? 1 : 0));
            WeekProblem week = small ? RandomWeek.small(seed) : RandomWeek.week(seed);
            Relaxation relaxed = JointRelaxation.of(week).orElseThrow();
            int[] menu = new MenuSearch(week, relaxed.localWorth()).greedy().choice();
            Sourcing.Orders orders = new Sourcing(week, relaxed.localWorth()).search(menu, 1, 6_000, () -> false);
            System.out.printf("week %s: greedy plan %.2f, divisible %.2f%n", args[a], orders.valueCents() / 100.0,
                    relaxed.boundCents() / 100.0);
            for (String millis : args[0].split(",")) {
                long bound = JointRoot.bound(week, menu, orders.packs(), Long.parseLong(millis), 0).orElse(0);
                System.out.printf("  %s ms: at most %.2f, %.4f of the divisible%n", millis, bound / 100.0,
                        bound / (double) relaxed.boundCents());
            }
        }
    }
}
