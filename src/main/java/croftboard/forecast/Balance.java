package croftboard.forecast;

import java.util.Arrays;

/**
 * Unknowns that many weighted sentences speak about, each of the form "the sum of these unknowns, times their factors, is
 * so much"; the values that contradict the sentences least (least squares), and how sure they are. What is believed
 * beforehand is such a sentence too. Solved directly, so the same sentences give the same values to the last digit.
 */
final class Balance {
    private final int size;
    private final double[][] matrix;
    private final double[] right;
    private double[][] root = {};

    Balance(int size) {
        this.size = size;
        this.matrix = new double[size][];
        for (int i = 0; i < size; i++) {
            matrix[i] = new double[i + 1];
        }
        this.right = new double[size];
    }

    /** @param weight 1 / variance, above 0 */
    void add(int[] unknowns, double[] factors, double value, double weight) {
        for (int a = 0; a < unknowns.length; a++) {
            right[unknowns[a]] += weight * factors[a] * value;
            for (int b = 0; b < unknowns.length; b++) {
                if (unknowns[b] <= unknowns[a]) {
                    matrix[unknowns[a]][unknowns[b]] += weight * factors[a] * factors[b];
                }
            }
        }
    }

    /** @return a value for each unknown, each of which stands in a sentence */
    double[] solve() {
        root = new double[size][];
        for (int i = 0; i < size; i++) {
            root[i] = Arrays.copyOf(matrix[i], i + 1);
            for (int j = 0; j <= i; j++) {
                double[] other = root[j];
                double sum = root[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * other[k];
                }
                root[i][j] = i == j ? Math.sqrt(sum) : sum / other[j];
            }
        }
        double[] x = forward(right);
        for (int i = size - 1; i >= 0; i--) {
            x[i] /= root[i][i];
            for (int k = 0; k < i; k++) {
                x[k] -= root[i][k] * x[i];
            }
        }
        return x;
    }

    private double[] forward(double[] of) {
        double[] y = new double[size];
        for (int i = 0; i < size; i++) {
            double sum = of[i];
            for (int k = 0; k < i; k++) {
                sum -= root[i][k] * y[k];
            }
            y[i] = sum / root[i][i];
        }
        return y;
    }

    /** Variance of a sum of unknowns, after {@link #solve}. */
    double variance(int[] unknowns) {
        double[] of = new double[size];
        for (int u : unknowns) {
            of[u] += 1;
        }
        double sum = 0;
        for (double y : forward(of)) {
            sum += y * y;
        }
        return sum;
    }
}
