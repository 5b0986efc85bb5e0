package croftboard.forecast;

/**
 * The distribution of portions asked for on one or more days: negative binomial by mean and coefficient of variation,
 * Poisson when cv squared is at most 1 / mean; several days are independent and add up.
 */
public final class Demand {
    private static final double TAIL = 1e-12;
    private final double[] probability;
    private final double mean;

    private Demand(double[] probability, double mean) {
        this.probability = probability;
        this.mean = mean;
    }

    /**
     * @param mean portions, 0 or more
     * @param cv standard deviation / mean, 0 or more
     */
    public static Demand ofDay(double mean, double cv) {
        if (mean <= 0) {
            return new Demand(new double[] {1}, 0);
        }
        double[] p = cv * cv <= 1 / mean ? poisson(mean) : negativeBinomial(mean, 1 / (cv * cv - 1 / mean));
        return new Demand(p, mean);
    }

    private static double[] poisson(double mean) {
        double[] p = new double[room(mean, Math.sqrt(mean))];
        double log = -mean;
        for (int k = 0; k < p.length; k++) {
            p[k] = Math.exp(log);
            log += Math.log(mean) - Math.log(k + 1);
        }
        return p;
    }

    /**
     * In terms of mean / r, which stays exact enough where r is huge: cv squared above 1 / mean by a rounding error only.
     *
     * @param r the number of successes; variance = mean + mean squared / r
     */
    private static double[] negativeBinomial(double mean, double r) {
        double[] p = new double[room(mean, Math.sqrt(mean + mean * mean / r))];
        double log = -r * Math.log1p(mean / r);
        for (int k = 0; k < p.length; k++) {
            p[k] = Math.exp(log);
            log += Math.log(mean) + Math.log1p((k - mean) / (r + mean)) - Math.log(k + 1);
        }
        return p;
    }

    /** Enough portions that what lies above is less likely than one in a million, up to a coefficient of variation of 1. */
    private static int room(double mean, double deviation) {
        return (int) Math.ceil(mean + 14 * deviation + 40);
    }

    /** Demand of both together, independent. */
    public Demand plus(Demand other) {
        double[] a = probability;
        double[] b = other.probability;
        double[] sum = new double[a.length + b.length - 1];
        for (int i = 0; i < a.length; i++) {
            if (a[i] > TAIL * TAIL) {
                for (int j = 0; j < b.length; j++) {
                    sum[i + j] += a[i] * b[j];
                }
            }
        }
        return new Demand(sum, mean + other.mean);
    }

    public double mean() {
        return mean;
    }

    /** Chance that at most {@code portions} are asked for. */
    public double atMost(int portions) {
        double sum = 0;
        for (int k = 0; k <= Math.min(portions, probability.length - 1); k++) {
            sum += probability[k];
        }
        return Math.min(1, sum);
    }

    public double standardDeviation() {
        double variance = 0;
        for (int k = 0; k < probability.length; k++) {
            variance += (k - mean) * (k - mean) * probability[k];
        }
        return Math.sqrt(variance);
    }

    /** The smallest number of portions that meets all demand with at least that chance. @param chance 0 to below 1 */
    public int quantile(double chance) {
        double sum = 0;
        for (int k = 0; k < probability.length; k++) {
            sum += probability[k];
            if (sum >= chance) {
                return k;
            }
        }
        return probability.length - 1;
    }

    /** Expected portions sold when {@code portions} are made: E[min(D, portions)]. */
    public double expectedSales(int portions) {
        double sold = 0;
        double below = 0;
        for (int k = 0; k < portions; k++) {
            below += k < probability.length ? probability[k] : 0;
            sold += Math.max(0, 1 - below);
        }
        return Math.min(sold, mean);
    }
}
