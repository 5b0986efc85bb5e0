package croftboard.menu;

import java.util.Arrays;

/** Batches of one component. */
final class BatchList {
    int[] day = new int[8];
    int[] last = new int[8];
    int[] steps = new int[8];
    int count;

    void add(int on, int until, int howMany) {
        if (count == day.length) {
            day = Arrays.copyOf(day, 2 * count);
            last = Arrays.copyOf(last, 2 * count);
            steps = Arrays.copyOf(steps, 2 * count);
        }
        day[count] = on;
        last[count] = until;
        steps[count++] = howMany;
    }

    boolean equalTo(BatchList other) {
        boolean same = count == other.count;
        for (int i = 0; same && i < count; i++) {
            same = day[i] == other.day[i] && steps[i] == other.steps[i];
        }
        return same;
    }
}
