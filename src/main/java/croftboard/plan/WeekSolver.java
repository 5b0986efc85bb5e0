package croftboard.plan;

import croftboard.menu.MenuSearch;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.sourcing.JointRelaxation;
import croftboard.sourcing.JointRoot;
import croftboard.sourcing.Relaxation;
import croftboard.sourcing.Sourcing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;

/**
 * Chooses dishes and packs for one week given as numbers: a greedy menu with its orders at once; then
 * what local money is worth and a bound over all menus; menu searches, each with its orders; from each, menu and orders
 * together; exact orders for the best, and a tighter bound beside them. Each better one is told at once. Knows no book. One object solves once.
 */
final class WeekSolver {
    private static final int FIRST_ROUNDS = 400;
    private static final int SIDE_BY_SIDE = 2;
    private final WeekProblem problem;
    private final Budget budget;
    private final long seed;
    private final Listener listener;
    private final BooleanSupplier stop;
    private double localWorth;
    private Optional<Long> bound = Optional.empty();
    private String how = "";
    private Solved best;
    /** Begun with the search where a core is free for it. */
    private TighterBound early;
    private boolean bounding = true;

    /** @param stop asked now and then; true ends with the best so far */
    WeekSolver(WeekProblem problem, Budget budget, long seed, Listener listener, BooleanSupplier stop) {
        this.problem = problem;
        this.budget = JointSearch.suits(problem) ? budget : budget.menusOnly();
        this.seed = seed;
        this.listener = listener;
        this.stop = stop;
        this.localWorth = problem.prices().localPrice().toDouble() / 2;
    }

    /** Leaves the tighter bound to someone else. */
    WeekSolver withoutBound() {
        bounding = false;
        return this;
    }

    /** Hears how it goes; called by the thread that called {@link #solve}. */
    interface Listener {
        /** @param what what is happening now, in words */
        void doing(String what);

        /** Better than any before. */
        void better(Solved solved);

        /** One menu search is done. @param orders searched for its menu, not yet exact */
        default void searched(MenuSearch.Found menu, Sourcing.Orders orders) { }
    }

    /**
     * @param choice candidate of each slot, -1 for none
     * @param complete whether every must is kept
     * @param bound no menu at all is worth more, cents; empty when nothing was proved (yet)
     * @param how words on what could not be proved; empty when all could
     */
    record Solved(int[] choice, Sourcing.Orders orders, boolean complete, Optional<Long> bound, String how) {
        /** Never below the value at hand: a bound is rounded, and a plan in hand proves itself. */
        Optional<Long> bestAtAll() {
            return bound.map(b -> orders.complete() ? Math.max(b, orders.valueCents()) : b);
        }
    }

    /** @param start menu to start from, -1 where nothing is set */
    Solved solve(int[] start) {
        listener.doing("first menu");
        MenuSearch.Found greedy = new MenuSearch(problem, localWorth).greedy(start);
        Sourcing sourcing = new Sourcing(problem, localWorth);
        take(greedy.choice(), sourcing.search(greedy.choice(), seed, FIRST_ROUNDS, () -> false));
        if (!stop.getAsBoolean()) {
            listener.doing("what no plan can pass");
            Optional<Relaxation> relaxed = relax();
            Optional<PlainChoice> plain = EveryMenu.suits(problem) ? Optional.empty()
                    : relaxed.flatMap(r -> PlainChoice.of(problem, budget, seed, stop));
            if (plain.isPresent()) {
                choosePlainly(plain.get(), relaxed.get());
                return solved(best.choice, best.orders);
            }
            if (bounding && budget.exactMillis() > 0 && Runtime.getRuntime().availableProcessors() > SIDE_BY_SIDE) {
                early = new TighterBound(problem, best, budget.boundMillis(SIDE_BY_SIDE), 0, stop);
            }
            if (EveryMenu.suits(problem)) {
                tryEveryMenu();
            } else {
                searchMenus(greedy.choice());
            }
        }
        if (!stop.getAsBoolean()) {
            listener.doing("orders to the last pack");
            settle();
        }
        return solved(best.choice, best.orders);
    }

    private Optional<Relaxation> relax() {
        Optional<Relaxation> relaxed = JointRelaxation.of(problem);
        relaxed.ifPresent(r -> {
            localWorth = r.localWorth();
            bound = Optional.of(r.boundCents());
        });
        how = relaxed.isPresent() ? "" : "no proof can be run on this machine: the orders are complete, "
                + "found by search, and nothing is proved about them";
        return relaxed;
    }

    /** Nothing is bought: the orders are empty, and every menu's are exact. */
    private void choosePlainly(PlainChoice plain, Relaxation relaxed) {
        listener.doing("menus");
        Sourcing sourcing = new Sourcing(problem, localWorth);
        long known = best.complete ? best.orders.valueCents() : Long.MIN_VALUE;
        bound = Optional.of(plain.run(best.choice, known, relaxed, m -> sourcing.search(m, seed, 1, stop).valueCents(),
                m -> take(m, sourcing.search(m, seed, 1, stop))));
        take(best.choice, sourcing.exact(best.choice, best.orders, budget.exactMillis(), budget.nodes()));
    }

    private void tryEveryMenu() {
        listener.doing("every menu");
        EveryMenu all = new EveryMenu(problem, new Sourcing(problem, localWorth), seed, best.choice,
                best.orders, best.complete);
        all.run(stop);
        take(all.menu(), all.orders());
    }

    private void searchMenus(int[] start) {
        ExecutorService threads = Executors.newFixedThreadPool(SIDE_BY_SIDE, r -> {
            Thread t = new Thread(r, "menu-search");
            t.setDaemon(true);
            return t;
        });
        try {
            List<Future<Searched>> runs = new ArrayList<>();
            for (int n = 0; n < budget.runs(); n++) {
                long own = seed + 1_000L * n;
                runs.add(threads.submit(() -> run(start, own)));
            }
            List<Future<Together>> together = new ArrayList<>();
            for (int n = 0; n < budget.runs() && budget.together(); n++) {
                Future<Searched> from = runs.get(n);
                long own = seed + 1_000L * n;
                together.add(threads.submit(() -> together(from.get(), own)));
            }
            for (int n = 0; n < runs.size(); n++) {
                listener.doing("menus, search " + (n + 1) + " of " + runs.size());
                Searched run = runs.get(n).get();
                listener.searched(run.menu, run.orders);
                take(run.menu.choice(), run.orders);
            }
            listener.doing("menu and orders together");
            for (Future<Together> last : together) {
                take(last.get().choice, last.get().orders);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a menu search failed: " + e.getCause(), e.getCause());
        } finally {
            threads.shutdownNow();
        }
    }

    private record Searched(MenuSearch.Found menu, Sourcing.Orders orders) { }

    private record Together(int[] choice, Sourcing.Orders orders) { }

    private Searched run(int[] start, long own) {
        MenuSearch.Effort effort =
                new MenuSearch.Effort(budget.tries(), budget.menuMillis(), budget.memory());
        MenuSearch.Found menu = new MenuSearch(problem, localWorth).search(start, own, effort, stop);
        return new Searched(menu, new Sourcing(problem, localWorth)
                .search(menu.choice(), own, budget.rounds(), () -> false));
    }

    /** What becomes of a menu and its orders when both change together; never worse. */
    private Together together(Searched from, long own) {
        JointSearch.Found found = new JointSearch(problem, localWorth, from.menu.choice(), from.orders.packs(), own)
                .run(budget.jointTries(), budget.jointMillis(), stop);
        return new Together(found.choice(), new Sourcing(problem, localWorth)
                .better(found.choice(), found.packs(), own, budget.rounds()));
    }

    /** The last orders, and beside them on the other core the tighter bound over all menus. */
    private void settle() {
        Sourcing sourcing = new Sourcing(problem, localWorth);
        TighterBound tighter = early != null ? early : new TighterBound(problem, best,
                bounding ? budget.exactMillis() : 0, bounding ? budget.nodes() : 0, stop);
        if (budget.exactMillis() > 0 || budget.nodes() > 0) {
            take(best.choice, sourcing.exact(best.choice, best.orders, budget.exactMillis(), budget.nodes()));
        }
        JointRoot.Found joint = tighter.join();
        joint.boundCents().ifPresent(b -> bound = Optional.of(Math.min(b, bound.orElse(b))));
        joint.menu().ifPresent(m -> take(m, sourcing.search(m, seed, budget.rounds(), stop)));
        if (best.orders.bestForMenu().isEmpty() && budget.exactMillis() > 0) {
            take(best.choice, sourcing.exact(best.choice, best.orders, budget.exactMillis() / 3, 0));
        }
        Sourcing.Orders fresher = sourcing.fresher(best.choice, best.orders);
        if (fresher.complete() && fresher.valueCents() >= best.orders.valueCents()) {
            best = solved(best.choice, fresher);
        }
    }

    /** Keeps the better of two: the complete one, then the one worth more, then the one proved. */
    private void take(int[] menu, Sourcing.Orders found) {
        Solved now = solved(menu, found);
        boolean better = best == null || now.complete && !best.complete
                || now.complete == best.complete && found.valueCents() > best.orders.valueCents();
        boolean proved = best != null && found.valueCents() == best.orders.valueCents()
                && now.complete == best.complete && found.bestForMenu().isPresent();
        if (better || proved) {
            best = now;
        }
        if (better) {
            listener.better(now);
        }
    }

    private Solved solved(int[] menu, Sourcing.Orders found) {
        Workload work = Workload.of(problem, menu);
        Buying buying = Buying.of(problem, work.needMg(), found.packs());
        boolean complete = new MissingMusts(Names.IDS, problem, menu, found.packs(), work, buying)
                .list().isEmpty();
        return new Solved(menu, found, complete, bound, how);
    }
}
