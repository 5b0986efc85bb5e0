package croftboard.plan;

import croftboard.menu.MenuSearch;
import croftboard.need.Enumeration;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Sourcing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * Several weeks as if they were one long one, without any bound: two searches over all slots side by side, each with its
 * orders. What the week's own pieces do with a month, for want of an engine of its own; the time is kept.
 */
final class LongWeek {
    private static final int SIDE_BY_SIDE = 2;
    private static final int TRIES_PER_MILLI = 20;
    private static final int MOST_ROUNDS = 20_000;
    private final WeekProblem problem;
    private final long menuMillis;
    private final long orderMillis;
    private final long seed;
    private final WeekSolver.Listener listener;
    private final double localWorth;
    private WeekSolver.Solved best;

    LongWeek(WeekProblem problem, Duration time, long seed, WeekSolver.Listener listener) {
        this.problem = problem;
        this.menuMillis = time.toMillis() * 75 / 100;
        this.orderMillis = time.toMillis() / 5;
        this.seed = seed;
        this.listener = listener;
        this.localWorth = problem.prices().localPrice().toDouble() / 2;
    }

    private record Run(MenuSearch.Found menu, Sourcing.Orders orders) { }

    WeekSolver.Solved solve() {
        int[] start = new MenuSearch(problem, localWorth).greedy(Enumeration.nothing(problem)).choice();
        take(start, new Sourcing(problem, localWorth).search(start, seed, 1, () -> false));
        List<CompletableFuture<Run>> runs = new ArrayList<>();
        for (int n = 0; n < SIDE_BY_SIDE; n++) {
            long own = seed + 1_000L * n;
            runs.add(CompletableFuture.supplyAsync(() -> run(start, own)));
        }
        for (CompletableFuture<Run> r : runs) {
            Run run = r.join();
            listener.searched(run.menu, run.orders);
            take(run.menu.choice(), run.orders);
        }
        return best;
    }

    private Run run(int[] start, long own) {
        int memory = (int) Math.max(4, menuMillis * TRIES_PER_MILLI / 4_000);
        MenuSearch.Found menu = new MenuSearch(problem, localWorth).search(start, own,
                new MenuSearch.Effort(0, menuMillis, Math.min(500, memory)), () -> false);
        long end = System.nanoTime() + 1_000_000 * orderMillis;
        return new Run(menu, new Sourcing(problem, localWorth).search(menu.choice(), own, MOST_ROUNDS,
                () -> System.nanoTime() > end));
    }

    private void take(int[] menu, Sourcing.Orders orders) {
        WeekSolver.Solved now = new WeekSolver.Solved(menu, orders, Engine.complete(problem, menu, orders.packs()),
                Optional.empty(), "");
        if (best == null || now.complete() && !best.complete()
                || now.complete() == best.complete() && orders.valueCents() > best.orders().valueCents()) {
            best = now;
            listener.better(now);
        }
    }
}
