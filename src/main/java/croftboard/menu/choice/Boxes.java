package croftboard.menu.choice;

import java.util.Arrays;

/** Rows sorted into boxes by their units of a few limits, to find those that lie just below given units. */
final class Boxes {
    private final int[] limits;
    private final int[] least;
    private final int[] width;
    private final int[] boxes;
    private final int[] start;
    private final double[] free;
    private int[] from = new int[64];
    private int[] to = new int[64];
    private int ranges;
    /** Row numbers in the order of the boxes. */
    final int[] row;

    /**
     * @param limits by which rows are sorted; none: all rows lie in one box
     * @param width of a box in each, units; made wider where there would be far more boxes than rows
     */
    Boxes(Rows rows, int[] limits, int[] width) {
        this.limits = limits;
        this.width = width.clone();
        least = new int[limits.length];
        boxes = new int[limits.length];
        free = new double[limits.length];
        measure(rows);
        start = new int[count() + 1];
        row = new int[rows.size()];
        int[] box = new int[rows.size()];
        for (int i = 0; i < box.length; i++) {
            for (int t = 0; t < limits.length; t++) {
                box[i] = box[i] * boxes[t] + (rows.units(i, limits[t]) - least[t]) / this.width[t];
            }
            start[box[i] + 1]++;
        }
        for (int b = 1; b < start.length; b++) {
            start[b] += start[b - 1];
        }
        int[] next = start.clone();
        for (int i = 0; i < box.length; i++) {
            row[next[box[i]]++] = i;
        }
    }

    private void measure(Rows rows) {
        int[] greatest = new int[limits.length];
        Arrays.fill(least, Integer.MAX_VALUE);
        Arrays.fill(greatest, Integer.MIN_VALUE);
        for (int i = 0; i < rows.size(); i++) {
            for (int t = 0; t < limits.length; t++) {
                least[t] = Math.min(least[t], rows.units(i, limits[t]));
                greatest[t] = Math.max(greatest[t], rows.units(i, limits[t]));
            }
        }
        long most = 4L * rows.size() + 1_000;
        int widest;
        do {
            widest = 0;
            for (int t = 0; t < limits.length; t++) {
                boxes[t] = rows.size() == 0 ? 1 : (greatest[t] - least[t]) / width[t] + 1;
                widest = boxes[t] > boxes[widest] ? t : widest;
            }
            if (count() > most) {
                width[widest] *= 2;
            }
        } while (count() > most);
    }

    private int count() {
        long count = 1;
        for (int b : boxes) {
            count = Math.min(count * b, Integer.MAX_VALUE / 2);
        }
        return (int) count;
    }

    /**
     * Finds the rows between two corners; they stand at {@code row[from(n)] .. row[to(n) - 1]} for each range n.
     *
     * @param price of a unit by which a row stays below {@code high}, by place; 0 for none
     * @param budget of those prices together; boxes that cost more are left out
     * @return number of ranges; rows at their edges may lie outside
     */
    int find(int[] low, int[] high, double[] price, double budget) {
        ranges = 0;
        walk(0, 0, low, high, price, budget);
        return ranges;
    }

    int find(int[] low, int[] high) {
        return find(low, high, free, 1);
    }

    int from(int range) {
        return from[range];
    }

    int to(int range) {
        return to[range];
    }

    private void walk(int t, int before, int[] low, int[] high, double[] price, double budget) {
        if (t == limits.length) {
            add(start[before], start[before + 1]);
            return;
        }
        int bottom = price[t] > 0 ? Math.max(low[t], (int) Math.ceil(high[t] - budget / price[t] - 1e-9)) : low[t];
        int first = Math.max(0, Math.floorDiv(bottom - least[t], width[t]));
        int last = Math.min(boxes[t] - 1, Math.floorDiv(high[t] - least[t], width[t]));
        if (t == limits.length - 1) {
            if (first <= last) {
                add(start[before * boxes[t] + first], start[before * boxes[t] + last + 1]);
            }
            return;
        }
        for (int b = last; b >= first; b--) {
            int below = Math.max(0, high[t] - (least[t] + (b + 1) * width[t] - 1));
            walk(t + 1, before * boxes[t] + b, low, high, price, budget - price[t] * below);
        }
    }

    private void add(int first, int end) {
        if (first == end) {
            return;
        }
        if (ranges == from.length) {
            from = Arrays.copyOf(from, 2 * ranges);
            to = Arrays.copyOf(to, 2 * ranges);
        }
        from[ranges] = first;
        to[ranges++] = end;
    }
}
