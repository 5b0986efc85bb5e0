package croftboard.bench;

import croftboard.menu.MenuSearch;
import croftboard.need.WeekProblem;
import croftboard.sourcing.GreedyOrders;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * OptaPlanner alone: two searches side by side with other seeds for the whole time, at plain list prices, then packs filled
 * greedily and small orders topped up; the better of both.
 */
final class SearchAlone {
    private static final int SIDE_BY_SIDE = 2;
    private static final int MEMORY = 500;

    private SearchAlone() { }

    static Optional<Judged> plan(WeekProblem problem, int seconds) {
        List<CompletableFuture<Judged>> runs = new ArrayList<>();
        for (int n = 0; n < SIDE_BY_SIDE; n++) {
            long seed = 1 + 1_000L * n;
            runs.add(CompletableFuture.supplyAsync(() -> run(problem, seconds, seed)));
        }
        Optional<Judged> best = Judged.better(runs.stream().map(CompletableFuture::join).toArray(Judged[]::new));
        Bench.tell(problem.name() + ", search alone: " + best.map(p -> Figures.dollars(p.cents())).orElse("no answer"));
        return best;
    }

    private static Judged run(WeekProblem problem, int seconds, long seed) {
        MenuSearch search = new MenuSearch(problem, 0);
        int[] menu = search.search(search.greedy().choice(), seed,
                new MenuSearch.Effort(0, 1000L * seconds, MEMORY), () -> false).choice();
        return Judged.of(problem, menu, GreedyOrders.of(problem, menu));
    }
}
