package croftboard.plan.check;

import java.util.ArrayList;
import java.util.List;

/**
 * The distribution of portions asked for over several independent days. Each day is negative binomial by mean and
 * coefficient of variation, or Poisson when cv squared is at most 1 / mean. Built for the sum of the days at once by the
 * recurrence n p(n) = sum over k of c(k) p(n - k), where c(k) sums r q^k over the days (r successes, q = mean / (mean + r))
 * and a Poisson day adds its mean to c(1): the logarithmic derivative of the generating function.
 */
final class AskedFor {
    private static final double BIG = 1e200;
    private final List<Double> weight = new ArrayList<>();
    private double sum;

    /** @param days mean and coefficient of variation of each */
    AskedFor(List<double[]> days) {
        List<double[]> nonzero = days.stream().filter(d -> d[0] > 0).toList();
        double mean = nonzero.stream().mapToDouble(d -> d[0]).sum();
        List<Double> c = new ArrayList<>(List.of(0.0));
        weight.add(1.0);
        sum = 1;
        for (int n = 1; !nonzero.isEmpty() && (n <= mean || weight.get(n - 1) > 1e-18 * sum); n++) {
            c.add(coefficient(nonzero, n));
            double p = 0;
            for (int k = 1; k <= n; k++) {
                p += c.get(k) * weight.get(n - k);
            }
            weight.add(p / n);
            sum += p / n;
            if (sum > BIG) {
                shrink();
            }
        }
    }

    private static double coefficient(List<double[]> days, int k) {
        double c = 0;
        for (double[] day : days) {
            double excess = day[1] * day[1] - 1 / day[0];
            if (excess > 0) {
                double r = 1 / excess;
                c += r * Math.pow(day[0] / (day[0] + r), k);
            } else {
                c += k == 1 ? day[0] : 0;
            }
        }
        return c;
    }

    /** Weights are relative until the end: far from the middle they may grow beyond any number. */
    private void shrink() {
        weight.replaceAll(w -> w / BIG);
        sum = weight.stream().mapToDouble(w -> w).sum();
    }

    private double chance(int portions) {
        return portions < weight.size() ? weight.get(portions) / sum : 0;
    }

    double atMost(int portions) {
        double total = 0;
        for (int k = 0; k <= portions; k++) {
            total += chance(k);
        }
        return total;
    }

    /** The smallest number of portions that is enough with at least that chance. */
    int enough(double chance) {
        double total = chance(0);
        int portions = 0;
        while (total < chance && portions < weight.size()) {
            portions++;
            total += chance(portions);
        }
        return portions;
    }

    /** Portions sold on average when so many are made: each demand below sells itself, each other sells all. */
    double sold(int made) {
        double below = 0;
        double sold = 0;
        for (int k = 0; k < made; k++) {
            sold += k * chance(k);
            below += chance(k);
        }
        return sold + made * (1 - below);
    }
}
