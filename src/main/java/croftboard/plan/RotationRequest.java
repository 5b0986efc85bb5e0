package croftboard.plan;

import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * What a rotation is asked for.
 *
 * @param cycle so many weeks are planned and then repeated; empty: every week is chosen anew
 * @param time clock time for the whole; used when {@code steps} is empty
 * @param steps menus that each search of several weeks looks at: repeatable, byte for byte
 * @param outside what plans outside the span have decided for a week of it
 * @param served dishes that are not new; empty: nothing is known, and no dish counts as new
 * @param stop asked now and then; true ends with the best rotation so far
 */
public record RotationRequest(WeekSpan span, OptionalInt cycle, long seed, Duration time, OptionalLong steps,
        Function<IsoWeek, Given> outside, Optional<Set<String>> served, Progress progress, BooleanSupplier stop) {

    /** Listens to a rotation being made; called by the thread that asked. */
    public interface Progress {
        /** @param what what is happening now, in words */
        void doing(String what);

        /** Better than any before, of the weeks at hand. */
        void better(long cents, boolean complete);
    }
}
