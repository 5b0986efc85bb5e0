package croftboard.plan;

import croftboard.menu.MenuSearch;
import croftboard.need.Buying;
import croftboard.need.ServiceWeeks;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.sourcing.MonthRelaxation;
import croftboard.sourcing.Sourcing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;

/**
 * Chooses dishes and packs for several weeks as one problem: a greedy menu with its orders at once; two searches of menus
 * over all weeks side by side; from each, menu and orders together; then orders, week by week by the exact program with the other
 * weeks' orders as they are, and beside that one exact program over all weeks for its proof. With a clock the bound over
 * all menus is reckoned beside the first search, with steps before it. Knows no book. One object solves once.
 */
final class MonthSolver {
    private static final int FIRST_ROUNDS = 400;
    private static final int SIDE_BY_SIDE = 2;
    private static final int MORE_ROUNDS = 4;
    private final WeekProblem problem;
    private final MonthBudget budget;
    private final long seed;
    private final WeekSolver.Listener listener;
    private final BooleanSupplier stop;
    private double localWorth;
    private Optional<Long> bound = Optional.empty();
    private WeekSolver.Solved best;

    /** @param stop asked now and then; true ends with the best so far */
    MonthSolver(WeekProblem problem, MonthBudget budget, long seed, WeekSolver.Listener listener, BooleanSupplier stop) {
        this.problem = problem;
        this.budget = budget;
        this.seed = seed;
        this.listener = listener;
        this.stop = stop;
        localWorth = problem.prices().localPrice().toDouble() / 2;
    }

    /** @param start menu to start from, -1 where nothing is set */
    WeekSolver.Solved solve(int[] start) {
        listener.doing("first menu");
        MenuSearch.Found greedy = new MenuSearch(problem, localWorth).greedy(start);
        take(greedy.choice(), new Sourcing(problem, localWorth).search(greedy.choice(), seed, FIRST_ROUNDS, () -> false));
        if (!stop.getAsBoolean()) {
            ExecutorService threads = Executors.newFixedThreadPool(SIDE_BY_SIDE, r -> {
                Thread t = new Thread(r, "month-search");
                t.setDaemon(true);
                return t;
            });
            try {
                proceed(greedy.choice(), threads);
            } finally {
                threads.shutdownNow();
            }
        }
        best = proved(lower(best.orders().bestForMenu(), best.orders().bestForMenu().isPresent() ? bound : Optional.empty()));
        return solved(best.choice(), best.orders());
    }

    private void proceed(int[] greedy, ExecutorService threads) {
        CompletableFuture<Optional<MonthRelaxation>> relaxed = CompletableFuture.supplyAsync(
                () -> budget.boundMillis() < 0 ? Optional.empty() : MonthRelaxation.of(problem, budget.boundMillis()),
                beside(threads));
        if (budget.menuMillis() == 0) {
            listener.doing("what no plan can pass");
            hear(relaxed.join());
        }
        if (EveryMenu.suits(problem)) {
            hear(relaxed.join());
            tryEveryMenu();
            settle(threads);
            return;
        }
        listener.doing("menus of all weeks");
        search(greedy, threads);
        if (relaxed.isDone()) {
            hear(relaxed.join());
        }
        if (!stop.getAsBoolean()) {
            settle(threads);
        }
        if (budget.menuMillis() > 0 && !stop.getAsBoolean()) {
            listener.doing("what no plan can pass");
            hear(relaxed.join());
        }
    }

    /** A clock lets the bound take a third thread, so that it does not keep a search waiting. */
    private java.util.concurrent.Executor beside(ExecutorService threads) {
        return budget.menuMillis() == 0 ? threads : r -> {
            Thread t = new Thread(r, "month-bound");
            t.setDaemon(true);
            t.start();
        };
    }

    private void hear(Optional<MonthRelaxation> relaxed) {
        relaxed.ifPresent(r -> {
            bound = Optional.of(r.boundCents());
            localWorth = r.localWorth();
        });
    }

    private void tryEveryMenu() {
        listener.doing("every menu");
        EveryMenu all = new EveryMenu(problem, new Sourcing(problem, localWorth), seed, best.choice(), best.orders(),
                best.complete());
        all.run(stop);
        take(all.menu(), all.orders());
    }

    /** Two searches side by side, each with its orders, again from the best of them; then menu and orders together. */
    private void search(int[] greedy, ExecutorService threads) {
        List<Run> last = List.of();
        for (int wave = 0; wave < budget.waves() && !stop.getAsBoolean(); wave++) {
            last = wave(wave == 0 || !best.complete() ? greedy : best.choice(), wave, threads);
        }
        if (!JointSearch.suits(problem) || budget.jointTries() + budget.jointMillis() == 0) {
            return;
        }
        listener.doing("menus and orders of all weeks together");
        double worth = localWorth;
        List<CompletableFuture<Together>> together = new ArrayList<>();
        for (Run from : last) {
            long own = seed + 1_000L * together.size();
            together.add(CompletableFuture.supplyAsync(() -> together(from, worth, own), threads));
        }
        together.forEach(t -> take(t.join().choice, t.join().orders));
    }

    private List<Run> wave(int[] start, int wave, ExecutorService threads) {
        MenuSearch.Effort effort = new MenuSearch.Effort(budget.tries(), budget.menuMillis(), budget.memory());
        double worth = localWorth;
        List<CompletableFuture<Run>> runs = new ArrayList<>();
        for (int n = 0; n < SIDE_BY_SIDE; n++) {
            long own = seed + 10_000L * wave + 1_000L * n;
            runs.add(CompletableFuture.supplyAsync(() -> {
                MenuSearch.Found menu = new MenuSearch(problem, worth).search(start, own, effort, stop);
                return new Run(menu, new Sourcing(problem, worth).search(menu.choice(), own, budget.rounds(), stop));
            }, threads));
        }
        List<Run> done = runs.stream().map(CompletableFuture::join).toList();
        done.forEach(run -> {
            listener.searched(run.menu, run.orders);
            take(run.menu.choice(), run.orders);
        });
        return done;
    }

    private record Run(MenuSearch.Found menu, Sourcing.Orders orders) { }

    private record Together(int[] choice, Sourcing.Orders orders) { }

    /** Never worse than what it starts from. */
    private Together together(Run from, double worth, long own) {
        JointSearch.Found found = new JointSearch(problem, worth, from.menu.choice(), from.orders.packs(), own)
                .run(budget.jointTries(), budget.jointMillis(), stop);
        return new Together(found.choice(), new Sourcing(problem, worth).better(found.choice(), found.packs(), own,
                budget.rounds()));
    }

    /** Exact orders of each week; beside them, from the orders of before, the exact program over all weeks. */
    private void settle(ExecutorService threads) {
        if (budget.windowMillis() + budget.windowNodes() == 0) {
            return;
        }
        listener.doing("orders to the last pack");
        Sourcing sourcing = new Sourcing(problem, localWorth);
        take(best.choice(), sourcing.search(best.choice(), seed + 1, MORE_ROUNDS * budget.rounds(), stop));
        WeekSolver.Solved known = best;
        CompletableFuture<Sourcing.Orders> proof = CompletableFuture.supplyAsync(() -> sourcing.exact(known.choice(),
                known.orders(), budget.proofMillis(), budget.proofNodes()), threads);
        ServiceWeeks weeks = new ServiceWeeks(problem);
        for (int w = 0; w < weeks.count() && !stop.getAsBoolean(); w++) {
            int from = w == 0 ? 0 : weeks.monday(w);
            int until = w + 1 == weeks.count() ? problem.days() : weeks.monday(w + 1);
            take(known.choice(), sourcing.exactWithin(known.choice(), best.orders(), from, until,
                    budget.windowMillis(), budget.windowNodes()));
        }
        Sourcing.Orders all = proof.join();
        take(known.choice(), all);
        best = proved(all.bestForMenu());
    }

    /** The proof speaks of the menu, whatever orders are the best in the end. */
    private WeekSolver.Solved proved(Optional<Long> most) {
        Sourcing.Orders o = best.orders();
        Optional<Long> proof = most.filter(m -> o.complete()).map(m -> Math.max(m, o.valueCents()));
        return solved(best.choice(), new Sourcing.Orders(o.packs(), o.complete(), o.valueCents(), proof, o.rounds()));
    }

    private void take(int[] menu, Sourcing.Orders found) {
        WeekSolver.Solved now = solved(menu, found);
        boolean better = best == null || now.complete() && !best.complete()
                || now.complete() == best.complete() && found.valueCents() > best.orders().valueCents();
        if (better) {
            best = now;
            listener.better(now);
        }
    }

    private static Optional<Long> lower(Optional<Long> a, Optional<Long> b) {
        return a.isPresent() && b.isPresent() ? Optional.of(Math.min(a.get(), b.get())) : a.isPresent() ? a : b;
    }

    private WeekSolver.Solved solved(int[] menu, Sourcing.Orders found) {
        Workload work = Workload.of(problem, menu);
        Buying buying = Buying.of(problem, work.needMg(), found.packs());
        boolean complete = new MissingMusts(Names.IDS, problem, menu, found.packs(), work, buying).list().isEmpty();
        return new WeekSolver.Solved(menu, found, complete, bound, "");
    }
}
