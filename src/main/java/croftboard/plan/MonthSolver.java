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
 * Chooses dishes and packs for several weeks as one problem: a greedy menu with its orders at once; two searches over all
 * weeks, side by side, and two that go on from the better; then orders, week by week by the exact program with the other
 * weeks' orders as they are, and beside that one exact program over all weeks for its proof. With a clock the bound over
 * all menus is reckoned beside the first search, with steps before it. Knows no book. One object solves once.
 */
final class MonthSolver {
    private static final int FIRST_ROUNDS = 400;
    private static final int SIDE_BY_SIDE = 2;
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

    /** The worth of local money to reckon with where the bound has not told one: a share of the price of a missing dollar. */
    MonthSolver withLocalWorth(double worth) {
        localWorth = worth;
        return this;
    }

    double localWorth() {
        return localWorth;
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
        return solved(best.choice(), best.orders());
    }

    private void proceed(int[] greedy, ExecutorService threads) {
        CompletableFuture<Optional<MonthRelaxation.Found>> relaxed = CompletableFuture.supplyAsync(
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
        List<MenuSearch.Found> found = search(greedy, seed, new MenuSearch.Effort(budget.tries(), budget.menuMillis(),
                budget.memory()), threads);
        if (relaxed.isDone()) {
            hear(relaxed.join());
        }
        List<CompletableFuture<Sourcing.Orders>> orders = found.stream().map(f -> orders(f.choice(), threads)).toList();
        for (int n = 0; n < found.size(); n++) {
            listener.searched(found.get(n), orders.get(n).join());
            take(found.get(n).choice(), orders.get(n).join());
        }
        if (!stop.getAsBoolean() && budget.againMemory() > 0 && budget.againTries() + budget.againMillis() > 0) {
            again(found, threads);
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

    private void hear(Optional<MonthRelaxation.Found> relaxed) {
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

    private List<MenuSearch.Found> search(int[] start, long from, MenuSearch.Effort effort, ExecutorService threads) {
        List<CompletableFuture<MenuSearch.Found>> runs = new ArrayList<>();
        for (int n = 0; n < SIDE_BY_SIDE; n++) {
            long own = from + 1_000L * n;
            double worth = localWorth;
            runs.add(CompletableFuture.supplyAsync(
                    () -> new MenuSearch(problem, worth).search(start, own, effort, stop), threads));
        }
        return runs.stream().map(CompletableFuture::join).toList();
    }

    private CompletableFuture<Sourcing.Orders> orders(int[] choice, ExecutorService threads) {
        double worth = localWorth;
        return CompletableFuture.supplyAsync(
                () -> new Sourcing(problem, worth).search(choice, seed, budget.rounds(), stop), threads);
    }

    private void again(List<MenuSearch.Found> found, ExecutorService threads) {
        listener.doing("menus of all weeks, once more");
        int[] start = best.complete() ? best.choice() : found.get(0).choice();
        List<MenuSearch.Found> more = search(start, seed + 10_000, new MenuSearch.Effort(budget.againTries(),
                budget.againMillis(), budget.againMemory()), threads);
        List<CompletableFuture<Sourcing.Orders>> orders = more.stream().map(f -> orders(f.choice(), threads)).toList();
        for (int n = 0; n < more.size(); n++) {
            take(more.get(n).choice(), orders.get(n).join());
        }
    }

    /** Exact orders of each week; beside them, from the orders of before, the exact program over all weeks. */
    private void settle(ExecutorService threads) {
        if (budget.windowMillis() + budget.windowNodes() == 0) {
            return;
        }
        listener.doing("orders to the last pack");
        Sourcing sourcing = new Sourcing(problem, localWorth);
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

    private WeekSolver.Solved solved(int[] menu, Sourcing.Orders found) {
        Workload work = Workload.of(problem, menu);
        Buying buying = Buying.of(problem, work.needMg(), found.packs());
        boolean complete = new MissingMusts(Names.IDS, problem, menu, found.packs(), work, buying).list().isEmpty();
        return new WeekSolver.Solved(menu, found, complete, bound, "");
    }
}
