package croftboard.plan;

import croftboard.need.WeekProblem;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * Searches in turns, each longer than the one before and from another seed, and beside them all one bound that goes on
 * tightening, until the best plan is proved within one in a thousand of the best there can be, or the time ends, or
 * someone ends it. By the clock only.
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
    private volatile WeekSolver.Solved best;
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
        search(start, seed, slice, true);
        if (!over()) {
            BooleanSupplier enough = () -> stop.getAsBoolean() || proved(best);
            TighterBound bounding = new TighterBound(problem, best, left(), 0, enough);
            for (int turn = 1; !over(); turn++) {
                listener.doing("proving, turn " + turn);
                slice += slice / 2;
                search(best.choice(), seed + 7_919L * turn, Math.min(slice, left()), false);
                if (bounding.done()) {
                    bound(bounding);
                }
            }
            bound(bounding);
        }
        return best;
    }

    private boolean over() {
        return proved(best) || left() < LAST_MILLIS || stop.getAsBoolean();
    }

    private void bound(TighterBound bounding) {
        bounding.join().boundCents().ifPresent(b -> bound = Optional.of(Math.min(b, bound.orElse(b))));
        best = withBound(best);
    }

    /** Whether no plan is worth more than a thousandth more. */
    static boolean proved(WeekSolver.Solved solved) {
        return solved.complete() && solved.bestAtAll().filter(b -> proved(solved.orders().valueCents(), b)).isPresent();
    }

    /** Whether a plan worth that much is proved by that bound. */
    public static boolean proved(long valueCents, long boundCents) {
        return (boundCents - valueCents) * 1000 <= Math.abs(valueCents) * PROMILLE;
    }

    private void search(int[] start, long from, long millis, boolean withBound) {
        WeekSolver solver = new WeekSolver(problem, Budget.of(Duration.ofMillis(millis), OptionalLong.empty()), from,
                new WeekSolver.Listener() {
                    @Override
                    public void doing(String what) {
                        listener.doing(what);
                    }

                    @Override
                    public void better(WeekSolver.Solved solved) {
                        take(solved);
                    }
                }, stop);
        take((withBound ? solver : solver.withoutBound()).solve(start));
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
