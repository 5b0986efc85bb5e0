package croftboard.plan;

import croftboard.book.Book;
import croftboard.menu.MenuSearch;
import croftboard.need.WeekProblem;
import croftboard.sourcing.JointRelaxation;
import croftboard.sourcing.Natives;
import croftboard.sourcing.Relaxation;
import croftboard.sourcing.Sourcing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Makes one week's plan: a greedy menu with its orders at once; then what local money is worth and a bound over all
 * menus; several menu searches, each with its orders; exact orders for the best; at every moment the best plan so far
 * can be had. With steps in place of time the same inputs give the same plan, byte for byte.
 */
public final class Planner {
    private static final int FIRST_ROUNDS = 400;
    private static final int SIDE_BY_SIDE = 2;
    private final Book book;
    private final Optional<LocalDateTime> now;

    /** @param now in the kitchen's zone: deliveries whose cut-off is before it are gone; empty: none is */
    public Planner(Book book, Optional<LocalDateTime> now) {
        this.book = book;
        this.now = now;
    }

    /** @throws IllegalStateException only for a fault of our own */
    public PlanAnswer plan(PlanRequest request) {
        Natives.startLoading();
        ProblemBuilder.Built built = ProblemBuilder.build(book, request.week(), request.keep(), request.given(), now);
        if (!built.keptFaults().isEmpty()) {
            return new PlanAnswer.Refused(built.keptFaults());
        }
        return new Making(request, built).run();
    }

    /** One plan being made. */
    private final class Making {
        private final PlanRequest request;
        private final ProblemBuilder.Built built;
        private final WeekProblem problem;
        private final Budget budget;
        private double localWorth;
        private Optional<Long> bound = Optional.empty();
        private String how = "";
        private int[] choice;
        private Sourcing.Orders orders;
        private WeekPlan best;

        Making(PlanRequest request, ProblemBuilder.Built built) {
            this.request = request;
            this.built = built;
            this.problem = built.problem();
            this.budget = Budget.of(request.time(), request.steps());
            this.localWorth = problem.prices().localPrice().toDouble() / 2;
        }

        PlanAnswer run() {
            request.progress().doing("first menu");
            int[] start = StartMenu.of(problem, request.from());
            MenuSearch.Found greedy = new MenuSearch(problem, localWorth).greedy(start);
            take(greedy.choice(), new Sourcing(problem, localWorth).search(greedy.choice(), request.seed(), FIRST_ROUNDS,
                    () -> false));
            if (!request.stop().getAsBoolean()) {
                request.progress().doing("what no plan can pass");
                relax();
                if (EveryMenu.suits(problem)) {
                    tryEveryMenu();
                } else {
                    searchMenus(greedy.choice());
                }
            }
            if (!request.stop().getAsBoolean()) {
                request.progress().doing("orders to the last pack");
                settle();
            }
            return new PlanAnswer.Planned(plan(choice, orders), request.stop().getAsBoolean());
        }

        private void relax() {
            Optional<Relaxation> relaxed = JointRelaxation.of(problem);
            relaxed.ifPresent(r -> {
                localWorth = r.localWorth();
                bound = Optional.of(r.boundCents());
            });
            how = relaxed.isPresent() ? "" : "no proof can be run on this machine: the orders are complete, "
                    + "found by search, and nothing is proved about them";
        }

        private void tryEveryMenu() {
            request.progress().doing("every menu");
            EveryMenu all = new EveryMenu(problem, new Sourcing(problem, localWorth), request.seed(), choice, orders,
                    best.complete());
            all.run(request.stop());
            take(all.menu(), all.orders());
        }

        private void searchMenus(int[] start) {
            ExecutorService threads = Executors.newFixedThreadPool(SIDE_BY_SIDE, r -> {
                Thread t = new Thread(r, "menu-search");
                t.setDaemon(true);
                return t;
            });
            try {
                List<Future<Run>> runs = new ArrayList<>();
                for (int n = 0; n < budget.runs(); n++) {
                    long seed = request.seed() + 1_000L * n;
                    runs.add(threads.submit(() -> run(start, seed)));
                }
                for (int n = 0; n < runs.size(); n++) {
                    request.progress().doing("menus, search " + (n + 1) + " of " + runs.size());
                    Run run = runs.get(n).get();
                    take(run.choice, run.orders);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } catch (ExecutionException e) {
                throw new IllegalStateException("a menu search failed: " + e.getCause(), e.getCause());
            } finally {
                threads.shutdownNow();
            }
        }

        private record Run(int[] choice, Sourcing.Orders orders) { }

        private Run run(int[] start, long seed) {
            MenuSearch.Effort effort = new MenuSearch.Effort(budget.tries(), budget.menuMillis(), budget.memory());
            MenuSearch.Found menu = new MenuSearch(problem, localWorth).search(start, seed, effort, request.stop());
            return new Run(menu.choice(), new Sourcing(problem, localWorth)
                    .search(menu.choice(), seed, budget.rounds(), () -> false));
        }

        private void settle() {
            Sourcing sourcing = new Sourcing(problem, localWorth);
            if (budget.exactMillis() > 0 || budget.nodes() > 0) {
                take(choice, sourcing.exact(choice, orders, budget.exactMillis(), budget.nodes()));
            }
            Sourcing.Orders fresher = sourcing.fresher(choice, orders);
            if (fresher.complete() && fresher.valueCents() >= orders.valueCents()) {
                orders = fresher;
            }
        }

        /** Keeps the better of two plans: a complete one before any other, then the one worth more, then the one proved. */
        private void take(int[] menu, Sourcing.Orders found) {
            WeekPlan plan = plan(menu, found);
            boolean better = best == null || plan.complete() && !best.complete()
                    || plan.complete() == best.complete() && plan.value() > best.value();
            boolean proved = best != null && plan.value() == best.value() && plan.complete() == best.complete()
                    && found.bestForMenu().isPresent();
            if (better || proved) {
                choice = menu;
                orders = found;
                best = plan;
            }
            if (better) {
                request.progress().better(plan);
            }
        }

        private WeekPlan plan(int[] menu, Sourcing.Orders packs) {
            Optional<String> from = request.from().map(p -> p.week().toString());
            WeekPlan.Inputs inputs = new WeekPlan.Inputs(request.seed(), budget.tries(), budget.rounds(), budget.nodes(),
                    new TreeMap<>(request.keep()), from);
            WeekPlan.Proof proof = new WeekPlan.Proof(packs.bestForMenu(),
                    bound.map(b -> packs.complete() ? Math.max(b, packs.valueCents()) : b), how);
            return new PlanAssembler(book, request.week(), built, menu, packs.packs()).assemble(inputs, proof);
        }
    }
}
