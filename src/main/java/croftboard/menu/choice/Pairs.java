package croftboard.menu.choice;

import java.util.Arrays;

/** Pairs of rows of two tables whose sums lie within a window. */
final class Pairs {
    final Rows rows;
    private int[] first = new int[1_000];
    private int[] second = new int[1_000];

    /**
     * @param limits in which the sums are looked at
     * @param width of the window in each, units
     * @param low its lower end
     * @param most so many pairs are enough
     */
    Pairs(Rows a, Rows b, int[] limits, int[] width, int[] low, int most) {
        rows = new Rows(a.width, 1_000);
        Boxes boxes = new Boxes(b, limits, width);
        int[] from = new int[limits.length];
        int[] to = new int[limits.length];
        for (int x = 0; x < a.size() && rows.size() < most; x++) {
            for (int t = 0; t < limits.length; t++) {
                from[t] = low[t] - a.units(x, limits[t]);
                to[t] = from[t] + width[t] - 1;
            }
            int ranges = boxes.find(from, to);
            for (int n = 0; n < ranges; n++) {
                for (int i = boxes.from(n); i < boxes.to(n) && rows.size() < most; i++) {
                    int y = boxes.row[i];
                    if (within(b, y, limits, from, to)) {
                        add(a, x, b, y);
                    }
                }
            }
        }
    }

    private static boolean within(Rows b, int y, int[] limits, int[] from, int[] to) {
        for (int t = 0; t < limits.length; t++) {
            int units = b.units(y, limits[t]);
            if (units < from[t] || units > to[t]) {
                return false;
            }
        }
        return true;
    }

    private void add(Rows a, int x, Rows b, int y) {
        int n = rows.size();
        if (n == first.length) {
            first = Arrays.copyOf(first, 2 * n);
            second = Arrays.copyOf(second, 2 * n);
        }
        first[n] = x;
        second[n] = y;
        rows.addSum(a, x, b, y);
    }

    int first(int pair) {
        return first[pair];
    }

    int second(int pair) {
        return second[pair];
    }
}
