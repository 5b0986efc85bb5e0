package croftboard.plan;

import croftboard.need.WeekProblem;
import croftboard.sourcing.JointRoot;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * Search and bound in turns, each turn longer than the one before and from another seed, until the best plan is proved
 * within one in a thousand of the best there can be, or the time ends, or someone ends it. By the clock only.
 */
public final class Proving {
    /** Within so many thousandths of its value a plan counts as proved. */
    public static final long PROMILLE = 1;
    private static final long FIRST_MILLIS = 20_000;
    /** Less than this is not worth another turn. */
    private static final long LAST_MILLIS = 3_000;
    private final WeekProblem problem;
    private final long end;
    private final long seed;
    private final WeekSolver.Listener listener;
    private final BooleanSupplier stop;
    private WeekSolver.Solved best;
    private Optional<Long> bound = Optional.empty();

    Proving(WeekProblem problem, Duration time, long seed, WeekSolver.Listener listener, BooleanSupplier stop) {
        this.problem = problem;
        this.end = System.nanoTime() + time.toNanos();
        this.seed = seed;
        this.listener = listener;
        this.stop = stop;
    }

    /** @param start menu to start from, -1 where nothing is set */
    WeekSolver.Solved solve(int[] start) {
        long slice = Math.min(FIRST_MILLIS, left() / 2);
        search(start, seed, slice);
        for (int turn = 1; !proved(best) && left() > LAST_MILLIS && !stop.getAsBoolean(); turn++) {
            slice += slice / 2;
            listener.doing("what no plan can pass, turn " + turn);
            bound(Math.min(slice, left()));
            if (!proved(best) && left() > LAST_MILLIS && !stop.getAsBoolean()) {
                search(best.choice(), seed + 7_919L * turn, Math.min(slice, left()));
            }
        }
        return best;
    }

    /** Whether no plan is worth more than a thousandth more. */
    static boolean proved(WeekSolver.Solved solved) {
        return solved.complete() && solved.bestAtAll().filter(b -> proved(solved.orders().valueCents(), b)).isPresent();
    }

    /** Whether a plan worth that much is proved by that bound. */
    public static boolean proved(long valueCents, long boundCents) {
        return (boundCents - valueCents) * 1000 <= Math.abs(valueCents) * PROMILLE;
    }

    private void bound(long millis) {
        OptionalLong found = JointRoot.bound(problem, best.choice(), best.orders().packs(), millis, 0);
        found.ifPresent(b -> bound = Optional.of(Math.min(b, bound.orElse(b))));
        best = withBound(best);
    }

    private void search(int[] start, long from, long millis) {
        WeekSolver.Solved found = new WeekSolver(problem, Budget.of(Duration.ofMillis(millis), OptionalLong.empty()), from,
                new WeekSolver.Listener() {
                    @Override
                    public void doing(String what) {
                        listener.doing(what);
                    }

                    @Override
                    public void better(WeekSolver.Solved solved) {
                        take(solved);
                    }
                }, stop).solve(start);
        take(found);
    }

    /** Better ones are told at once, with the best bound of all turns. */
    private void take(WeekSolver.Solved found) {
        found.bound().ifPresent(b -> bound = Optional.of(Math.min(b, bound.orElse(b))));
        boolean better = best == null || found.complete() && !best.complete() || found.complete() == best.complete()
                && found.orders().valueCents() > best.orders().valueCents();
        boolean surer = best != null && found.complete() == best.complete()
                && found.orders().valueCents() == best.orders().valueCents() && mostFor(found) < mostFor(best);
        best = withBound(better || surer ? found : best);
        if (better) {
            listener.better(best);
        }
    }

    private static long mostFor(WeekSolver.Solved solved) {
        return solved.orders().bestForMenu().orElse(Long.MAX_VALUE);
    }

    private WeekSolver.Solved withBound(WeekSolver.Solved s) {
        return new WeekSolver.Solved(s.choice(), s.orders(), s.complete(), bound, s.how());
    }

    private long left() {
        return (end - System.nanoTime()) / 1_000_000;
    }
}
