package croftboard.forecast;

/**
 * What one day says of the mean m of a day's demand, when demand is negative binomial with shape r (variance m + m squared / r).
 *
 * <p>Three kinds of days. Nothing ran out: so many were asked for. It ran out, nobody knows when: at least so many were. It
 * ran out when a share of the day's asking had come: the day is a shorter one with that share of the mean, ended by its last
 * portion. All three are exact likelihoods when people come independently at the day's own rate.
 */
sealed interface Evidence {
    /** Slope of the log likelihood by log m. */
    double slope(double m, double r);

    /** How sharply it bends there: minus the second derivative by log m, or what is expected of it; above 0. */
    double bend(double m, double r);

    /** Log likelihood, but for what depends on neither m nor r. */
    double log(double m, double r);

    /** Standard deviations between what was seen and what m says; 0 where only a bound is known. */
    default double far(double m, double r) {
        return 0;
    }

    /** @param sold all that were asked for */
    record All(int sold) implements Evidence {
        @Override
        public double slope(double m, double r) {
            return r * (sold - m) / (r + m);
        }

        @Override
        public double bend(double m, double r) {
            return r * m / (r + m);
        }

        @Override
        public double log(double m, double r) {
            return shape(sold, r) - r * StrictMath.log1p(m / r) + sold * StrictMath.log(m / (r + m));
        }

        @Override
        public double far(double m, double r) {
            return (sold - m) / Math.sqrt(m + m * m / r);
        }
    }

    /** @param sold went while the share {@code part} of the day's asking came. @param part above 0, at most 1 */
    record Until(int sold, double part) implements Evidence {
        @Override
        public double slope(double m, double r) {
            return r * (sold - m * part) / (r + m * part);
        }

        @Override
        public double bend(double m, double r) {
            double mean = m * part;
            return (sold + r) * r * mean / ((r + mean) * (r + mean));
        }

        @Override
        public double log(double m, double r) {
            double mean = m * part;
            return shape(sold, r) - r * StrictMath.log1p(mean / r) + sold * StrictMath.log(mean / (r + mean));
        }
    }

    /** @param sold at least so many were asked for; 1 or more */
    record AtLeast(int sold) implements Evidence {
        @Override
        public double slope(double m, double r) {
            double lastLog = shape(sold, r) - LogGamma.of(sold + 1.0) - r * StrictMath.log1p(m / r)
                    + sold * StrictMath.log(m / (r + m));
            return sold * StrictMath.exp(lastLog - log(m, r));
        }

        @Override
        public double bend(double m, double r) {
            double share = m / (r + m);
            double slope = slope(m, r);
            return Math.max(1e-9, slope * (slope - sold * (1 - share) + r * share));
        }

        /** Summed from the side on which less of the distribution lies. */
        @Override
        public double log(double m, double r) {
            double share = m / (r + m);
            double top = shape(sold, r) - LogGamma.of(sold + 1.0) - r * StrictMath.log1p(m / r)
                    + sold * StrictMath.log(share);
            double term = 1;
            double sum = 0;
            if (sold > m) {
                for (int k = sold; term > 1e-16 * sum; k++) {
                    sum += term;
                    term *= share * (k + r) / (k + 1);
                }
                return top + StrictMath.log(sum);
            }
            for (int k = sold; k > 0; k--) {
                term *= k / (share * (k - 1 + r));
                sum += term;
            }
            return StrictMath.log1p(-Math.min(1 - 1e-15, StrictMath.exp(top) * sum));
        }
    }

    private static double shape(int sold, double r) {
        return LogGamma.of(sold + r) - LogGamma.of(r);
    }

    /** @param curve of the day on that line */
    static Evidence of(Observation seen, DayCurve curve) {
        if (!seen.soldOut() || seen.sold() == 0) {
            return new All(seen.sold());
        }
        double part = seen.ranOut().map(curve::by).orElse(1.0);
        return part <= LEAST_PART || part > MOST_PART ? new AtLeast(seen.sold()) : new Until(seen.sold(), part);
    }

    /** Before this share of the day the hour says more of the curve than of the day. */
    double LEAST_PART = 0.05;
    double MOST_PART = 0.995;
}
