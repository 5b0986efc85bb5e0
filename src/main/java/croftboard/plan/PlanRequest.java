package croftboard.plan;

import croftboard.measure.IsoWeek;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.function.BooleanSupplier;

/**
 * What a plan is asked for.
 *
 * @param time clock time for the whole; used when {@code steps} is empty
 * @param steps menus looked at in each search run: repeatable, byte for byte
 * @param keep dish by slot id
 * @param from a plan to start from
 * @param progress told what is happening and each better plan
 * @param stop asked now and then; true ends with the best plan so far
 * @param prove go on searching and bounding in turns until the plan is proved within {@link Proving#PROMILLE} or the time ends
 * @param packs at least so many packs of a vendor's item, by {@code vendor/item}
 */
public record PlanRequest(IsoWeek week, long seed, Duration time, OptionalLong steps, SortedMap<String, String> keep,
        Optional<WeekPlan> from, Given given, Progress progress, BooleanSupplier stop, boolean prove,
        SortedMap<String, Integer> packs) {

    /** One that keeps no order lines. */
    public PlanRequest(IsoWeek week, long seed, Duration time, OptionalLong steps, SortedMap<String, String> keep,
            Optional<WeekPlan> from, Given given, Progress progress, BooleanSupplier stop, boolean prove) {
        this(week, seed, time, steps, keep, from, given, progress, stop, prove, new java.util.TreeMap<>());
    }

    /** One that ends with its time or steps. */
    public PlanRequest(IsoWeek week, long seed, Duration time, OptionalLong steps, SortedMap<String, String> keep,
            Optional<WeekPlan> from, Given given, Progress progress, BooleanSupplier stop) {
        this(week, seed, time, steps, keep, from, given, progress, stop, false);
    }

    /** Listens to a plan being made; called from several threads, one at a time. */
    public interface Progress {
        /** @param what what is happening now, in words */
        void doing(String what);

        /** A plan better than any before. */
        void better(WeekPlan plan);
    }
}
