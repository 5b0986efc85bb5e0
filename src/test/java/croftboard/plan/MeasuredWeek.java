package croftboard.plan;

import croftboard.menu.MenuSearch;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Sourcing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * One week solved as the program solves it, with the figures that a benchmark wants. Money in cents.
 *
 * @param medianPacks of the items that are bought, packs over all their orders
 * @param triesPerSecond menus looked at by one search, median over the searches (two run side by side)
 * @param misjudged by search: what it thought its menu worth, less what the menu was worth with its orders
 */
public record MeasuredWeek(String name, int slots, boolean complete, long value, long purchases, long broken,
        Optional<Long> bestAtAll, Optional<Long> bestForMenu, double medianPacks, double triesPerSecond,
        List<Long> misjudged) {

    /** Solves a week with the program's own shares of that time. */
    public static MeasuredWeek of(WeekProblem problem, Duration time, long seed) {
        Budget budget = Budget.of(time, OptionalLong.empty());
        Ear ear = new Ear();
        int[] nothing = new int[problem.slots().size()];
        Arrays.fill(nothing, -1);
        WeekSolver.Solved solved = new WeekSolver(problem, budget, seed, ear, () -> false).solve(nothing);
        int[] packs = solved.orders().packs();
        Account account = Account.of(problem, solved.choice(), packs);
        double seconds = Math.max(1, budget.menuMillis()) / 1000.0;
        return new MeasuredWeek(problem.name(), problem.slots().size(), solved.complete(), account.value(),
                account.purchases(), account.brokenCents(), solved.bestAtAll(), solved.orders().bestForMenu(),
                medianPacks(problem, packs), median(ear.tries.stream().map(n -> n / seconds).toList()),
                List.copyOf(ear.misjudged));
    }

    private static double medianPacks(WeekProblem problem, int[] packs) {
        Map<Integer, Integer> ofItem = new TreeMap<>();
        for (int o = 0; o < packs.length; o++) {
            if (packs[o] > 0) {
                ofItem.merge(problem.offers().get(o).item(), packs[o], Integer::sum);
            }
        }
        return median(ofItem.values());
    }

    /** Of no numbers: 0. */
    public static double median(java.util.Collection<? extends Number> numbers) {
        double[] sorted = numbers.stream().mapToDouble(Number::doubleValue).sorted().toArray();
        int n = sorted.length;
        return n == 0 ? 0 : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    private static final class Ear implements WeekSolver.Listener {
        private final List<Long> tries = new ArrayList<>();
        private final List<Long> misjudged = new ArrayList<>();

        @Override
        public void doing(String what) {
            // figures are taken at the end
        }

        @Override
        public void better(WeekSolver.Solved solved) {
            // figures are taken at the end
        }

        @Override
        public void searched(MenuSearch.Found menu, Sourcing.Orders orders) {
            tries.add(menu.tries());
            if (orders.complete()) {
                misjudged.add(menu.worthCents() - orders.valueCents());
            }
        }
    }
}
