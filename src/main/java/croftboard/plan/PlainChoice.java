package croftboard.plan;

import croftboard.menu.choice.ChoiceSearch;
import croftboard.need.WeekProblem;
import croftboard.sourcing.JointRoot;
import croftboard.sourcing.Relaxation;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;

/**
 * Weeks in which nothing is bought: a search made for plain choices, and beside it on the other core the exact program,
 * which proves what the search found where the week is small.
 */
final class PlainChoice {
    /** Tries before the exact program starts from the best of them. */
    private static final int FIRST_TRIES = 4;
    private static final long STEPS_A_TRY = 300;
    private static final int LEAST_TRIES = 16;
    private static final int MOST_TRIES = 300;
    /** By steps the exact program gets so many nodes, less for each dish; where that is few it proves nothing. */
    private static final long DISH_NODES = 1_000_000;
    private static final long LEAST_NODES = 1_250;
    private static final int SIDE_BY_SIDE = 2;
    private final WeekProblem problem;
    private final ChoiceSearch search;
    private final Budget budget;
    private final long seed;
    private final BooleanSupplier stop;
    private volatile long bound;

    private PlainChoice(WeekProblem problem, ChoiceSearch search, Budget budget, long seed, BooleanSupplier stop) {
        this.problem = problem;
        this.search = search;
        this.budget = budget;
        this.seed = seed;
        this.stop = stop;
    }

    /** Empty when the week is of another kind. */
    static Optional<PlainChoice> of(WeekProblem problem, Budget budget, long seed, BooleanSupplier stop) {
        return ChoiceSearch.of(problem).map(s -> new PlainChoice(problem, s, budget, seed, stop));
    }

    /** The best menu so far and its worth. */
    private static final class Best {
        private int[] menu;
        private volatile long cents;
    }

    /**
     * @param start a menu to start from
     * @param startCents its worth; {@link Long#MIN_VALUE} when it breaks a must
     * @param worth of a menu, cents
     * @param better hears each better menu; called by this thread
     * @return no menu is worth more
     */
    long run(int[] start, long startCents, Relaxation relaxed, ToLongFunction<int[]> worth, Consumer<int[]> better) {
        bound = relaxed.boundCents();
        Best best = new Best();
        best.menu = start;
        best.cents = startCents;
        Consumer<int[]> hear = menu -> {
            best.menu = menu;
            best.cents = worth.applyAsLong(menu);
            better.accept(menu);
        };
        boolean timed = budget.tries() == 0;
        long millis = timed ? budget.boundMillis(SIDE_BY_SIDE) : 0;
        long began = System.nanoTime();
        search.search(start, relaxed.unitCents(), seed,
                new ChoiceSearch.Effort(Math.min(tries(), FIRST_TRIES), millis), () -> done(best), hear);
        if (done(best)) {
            return bound;
        }
        long left = timed ? Math.max(1, millis - (System.nanoTime() - began) / 1_000_000) : 0;
        int[] known = best.menu;
        CompletableFuture<JointRoot.Found> exact = CompletableFuture.supplyAsync(() -> prove(known, best, left));
        search.search(known, relaxed.unitCents(), seed + 1, new ChoiceSearch.Effort(timed ? 0 : tries(), left),
                () -> done(best) || timed && proved(exact, best, worth), hear);
        JointRoot.Found found = exact.join();
        found.boundCents().ifPresent(b -> bound = Math.min(b, bound));
        found.menu().filter(m -> worth.applyAsLong(m) > best.cents).ifPresent(hear);
        return bound;
    }

    private int tries() {
        if (budget.tries() == 0) {
            return FIRST_TRIES;
        }
        return (int) Math.max(budget.nodes() == 0 ? 1 : LEAST_TRIES,
                Math.min(MOST_TRIES, budget.tries() / STEPS_A_TRY));
    }

    private boolean done(Best best) {
        return stop.getAsBoolean() || best.cents >= bound;
    }

    private JointRoot.Found prove(int[] known, Best best, long millis) {
        long dishes = problem.slots().stream().mapToLong(s -> s.candidates().size()).sum();
        long nodes = millis > 0 ? 0 : DISH_NODES / Math.max(1, dishes);
        if (millis == 0 && (nodes < LEAST_NODES || budget.nodes() == 0)) {
            return new JointRoot.Found(OptionalLong.empty(), Optional.empty());
        }
        return JointRoot.look(problem, known, new int[problem.offers().size()], millis, nodes,
                () -> stop.getAsBoolean() || millis > 0 && best.cents >= bound);
    }

    /** Whether the exact program is done and what it proved is at hand. */
    private static boolean proved(CompletableFuture<JointRoot.Found> exact, Best best, ToLongFunction<int[]> worth) {
        if (!exact.isDone() || exact.isCompletedExceptionally()) {
            return false;
        }
        JointRoot.Found found = exact.join();
        long most = Math.max(best.cents, found.menu().map(worth::applyAsLong).orElse(Long.MIN_VALUE));
        return found.boundCents().isPresent() && found.boundCents().getAsLong() <= most;
    }
}
