package croftboard.menu.choice;

import java.util.Arrays;

/** A growing table: units of each limit, and a loss. */
final class Rows {
    final int width;
    private int[] units;
    private double[] loss;
    private int size;

    Rows(int width, int expected) {
        this.width = width;
        units = new int[width * expected];
        loss = new double[expected];
    }

    int size() {
        return size;
    }

    int units(int row, int limit) {
        return units[row * width + limit];
    }

    double loss(int row) {
        return loss[row];
    }

    void add(int[] of, double lost) {
        makeRoom();
        System.arraycopy(of, 0, units, size * width, width);
        loss[size++] = lost;
    }

    /** A row that has {@code put} in place of {@code taken}. */
    void addChanged(int row, int[] put, int[] taken, double lost) {
        makeRoom();
        for (int r = 0; r < width; r++) {
            units[size * width + r] = units[row * width + r] + put[r] - taken[r];
        }
        loss[size++] = lost;
    }

    void addSum(Rows a, int x, Rows b, int y) {
        makeRoom();
        for (int r = 0; r < width; r++) {
            units[size * width + r] = a.units[x * width + r] + b.units[y * width + r];
        }
        loss[size++] = a.loss[x] + b.loss[y];
    }

    private void makeRoom() {
        if (size == loss.length) {
            units = Arrays.copyOf(units, 2 * units.length + width);
            loss = Arrays.copyOf(loss, 2 * size + 1);
        }
    }

    double mean(int limit) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += units(i, limit);
        }
        return sum / size;
    }

    /** How far rows lie from the mean, squared, on average. */
    double variance(int limit, double mean) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += (units(i, limit) - mean) * (units(i, limit) - mean);
        }
        return sum / size;
    }
}
