package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import croftboard.forecast.Demand;
import org.apache.commons.statistics.distribution.DiscreteDistribution;
import org.apache.commons.statistics.distribution.PascalDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Demand distributions against commons-statistics-distribution 1.3. */
class DemandOutsideTest {
    private static void same(Demand ours, DiscreteDistribution theirs) {
        double before = 0;
        int end = (int) (theirs.getMean() + 10 * Math.sqrt(theirs.getVariance()));
        for (int k = 0; k <= end; k++) {
            double upTo = ours.atMost(k);
            assertThat(upTo - before).as("chance of %d", k).isCloseTo(theirs.probability(k), offset(1e-11));
            assertThat(upTo).as("chance of at most %d", k).isCloseTo(theirs.cumulativeProbability(k), offset(1e-10));
            before = upTo;
        }
        for (int percent = 1; percent < 100; percent++) {
            double chance = percent / 100.0 + 0.00123;
            assertThat(ours.quantile(chance)).as("quantile %s", chance)
                    .isEqualTo(theirs.inverseCumulativeProbability(chance));
        }
        assertThat(ours.standardDeviation()).isCloseTo(Math.sqrt(theirs.getVariance()), offset(1e-6));
    }

    /** Coefficient of variation 0.1: cv squared is at most 1 / mean up to a mean of 99. */
    @ParameterizedTest(name = "Poisson of mean {0}")
    @ValueSource(doubles = {0.3, 1, 2, 7.5, 25, 60, 99})
    void lowVariation_isPoisson(double mean) {
        same(Demand.ofDay(mean, 0.1), PoissonDistribution.of(mean));
    }

    /** Whole r successes at p = r / (r + mean): cv squared is 1 / mean + 1 / r. */
    @ParameterizedTest(name = "negative binomial of mean {0}, r {1}")
    @CsvSource({"4, 1", "12, 2", "38, 3", "44, 8", "52, 12", "120, 5", "9, 40", "30, 400", "260, 20"})
    void highVariation_isNegativeBinomial(double mean, int r) {
        same(Demand.ofDay(mean, Math.sqrt(1 / mean + 1.0 / r)), PascalDistribution.of(r, r / (r + mean)));
    }

    /**
     * A run of days: the sum of equal negative binomials is one of the sum of the r; of Poissons one of the
     * sum of means.
     */
    @ParameterizedTest(name = "{0} days")
    @ValueSource(ints = {2, 3, 6})
    void days_addUp(int days) {
        double cv = Math.sqrt(1 / 20.0 + 1 / 5.0);
        Demand run = Demand.ofDay(20, cv);
        Demand calm = Demand.ofDay(20, 0.1);
        for (int d = 1; d < days; d++) {
            run = run.plus(Demand.ofDay(20, cv));
            calm = calm.plus(Demand.ofDay(20, 0.1));
        }
        same(run, PascalDistribution.of(5 * days, 5 / 25.0));
        same(calm, PoissonDistribution.of(20.0 * days));
    }

    /** Where 1 / mean and cv squared differ by a rounding error only, it is the Poisson all the same. */
    @ParameterizedTest(name = "mean {0}, cv {1}")
    @CsvSource({"25, 0.2", "100, 0.1", "6.25, 0.4", "11.11111111111111, 0.3", "400, 0.05"})
    void justAboveTheBorder_isStillADistribution(double mean, double cv) {
        same(Demand.ofDay(mean, cv), PoissonDistribution.of(mean));
    }
}
