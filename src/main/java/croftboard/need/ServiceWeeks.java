package croftboard.need;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The weeks of a problem: each from a Monday on, the first and the last those in which a slot starts. Deliveries before
 * the first Monday belong to no week.
 */
public final class ServiceWeeks {
    private static final int WEEK = 7;
    private final int firstMonday;
    private final int[] weekOfSlot;
    private final int count;

    public ServiceWeeks(WeekProblem problem) {
        int monday = Math.floorMod(1 - problem.firstDay().getDayOfWeek().getValue(), WEEK);
        int[] starts = problem.slots().stream().mapToInt(WeekProblem.Slot::startDay).toArray();
        int first = Arrays.stream(starts).map(d -> Math.floorDiv(d - monday, WEEK)).min().orElse(0);
        firstMonday = monday + WEEK * first;
        weekOfSlot = Arrays.stream(starts).map(d -> (d - firstMonday) / WEEK).toArray();
        count = 1 + Arrays.stream(weekOfSlot).max().orElse(0);
    }

    public int count() {
        return count;
    }

    /** Day of the Monday of a week, the one after the last included; below 0 when the problem starts later. */
    public int monday(int week) {
        return firstMonday + WEEK * week;
    }

    public int ofSlot(int slot) {
        return weekOfSlot[slot];
    }

    /** Slots of the weeks from the first to before the second. */
    public int[] slots(int from, int until) {
        return IntStream.range(0, weekOfSlot.length).filter(s -> from <= weekOfSlot[s] && weekOfSlot[s] < until).toArray();
    }
}
