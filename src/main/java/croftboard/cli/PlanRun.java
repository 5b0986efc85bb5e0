package croftboard.cli;

import croftboard.plan.PlanAnswer;
import croftboard.plan.RotationKept;
import croftboard.plan.WeekPlan;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Waits for a plan beside a thread that makes it. When a person ends the search, the maker is given a moment to end by
 * itself; after that the best plan so far is taken.
 */
final class PlanRun {
    private static final long TICK_MILLIS = 200;
    private static final long GRACE_MILLIS = 3_000;
    private final ProgressLine progress;
    private final StopSignal stop;

    PlanRun(ProgressLine progress, StopSignal stop) {
        this.progress = progress;
        this.stop = stop;
    }

    /** @param plan empty: ended before there was one */
    record Outcome(Optional<WeekPlan> plan, boolean stopped, Optional<RotationKept> kept) {
        Outcome(Optional<WeekPlan> plan, boolean stopped) {
            this(plan, stopped, Optional.empty());
        }
    }

    /** @throws WrongUse when the request makes no sense */
    Outcome run(Callable<PlanAnswer> maker) {
        FutureTask<PlanAnswer> task = new FutureTask<>(maker);
        Thread thread = new Thread(task, "planner");
        thread.setDaemon(true);
        thread.start();
        try {
            long left = GRACE_MILLIS;
            while (left > 0) {
                try {
                    return outcome(task.get(TICK_MILLIS, TimeUnit.MILLISECONDS));
                } catch (TimeoutException e) {
                    progress.tick();
                    left -= stop.asked() ? TICK_MILLIS : 0;
                }
            }
            return new Outcome(progress.best(), true);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException known ? known
                    : new IllegalStateException("the plan could not be made: " + e.getCause(), e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Outcome(progress.best(), true);
        } finally {
            progress.clear();
        }
    }

    private static Outcome outcome(PlanAnswer answer) {
        return answer.fold(planned -> new Outcome(Optional.of(planned.plan()), planned.stopped(), planned.kept()), refused -> {
            throw new WrongUse(refused.faults());
        });
    }
}
