package croftboard.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import croftboard.forecast.Demand;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.distribution.PascalDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

class AskedForTest {
    @Test
    void poissonDays_addUpToPoisson() {
        AskedFor sum = new AskedFor(List.of(new double[] {7, 0.1}, new double[] {5, 0.2}, new double[] {0, 1}));
        PoissonDistribution twelve = PoissonDistribution.of(12);
        for (int k = 0; k < 40; k++) {
            assertThat(sum.atMost(k)).isCloseTo(twelve.cumulativeProbability(k), within(1e-12));
        }
    }

    /** Mean m and variance m + m * m / r: r successes of chance r / (r + m); days of one chance add their successes. */
    @Test
    void negativeBinomialDays_addUpToNegativeBinomial() {
        double mean = 12;
        int r = 3;
        double cv = Math.sqrt(1 / mean + 1.0 / r);
        AskedFor sum = new AskedFor(List.of(new double[] {mean, cv}, new double[] {mean, cv}));
        PascalDistribution two = PascalDistribution.of(2 * r, r / (r + mean));
        double sold = 0;
        for (int k = 0; k < 120; k++) {
            assertThat(sum.atMost(k)).isCloseTo(two.cumulativeProbability(k), within(1e-12));
            assertThat(sum.sold(k)).isCloseTo(sold, within(1e-9));
            sold += 1 - two.cumulativeProbability(k);
        }
    }

    /** The plan's own distribution is summed another way; both must say the same. */
    @Test
    void anyDays_agreeWithTheForecast() {
        Random g = new Random(5);
        for (int n = 0; n < 200; n++) {
            List<double[]> days = new ArrayList<>();
            Demand demand = Demand.ofDay(0, 1);
            for (int d = 0; d <= g.nextInt(3); d++) {
                double[] day = {g.nextInt(4) == 0 ? g.nextDouble() : 200 * g.nextDouble(), 0.05 + 0.8 * g.nextDouble()};
                days.add(day);
                demand = demand.plus(Demand.ofDay(day[0], day[1]));
            }
            AskedFor asked = new AskedFor(days);
            double chance = 0.05 + 0.9 * g.nextDouble();
            assertThat(asked.enough(chance)).isEqualTo(demand.quantile(chance));
            int made = g.nextInt(300);
            assertThat(asked.sold(made)).isCloseTo(demand.expectedSales(made), within(1e-7));
        }
    }

    @Test
    void largeMeans_doNotFallBelowTheSmallestNumber() {
        AskedFor asked = new AskedFor(List.of(new double[] {1500, 0.01}, new double[] {1500, 0.02}));
        assertThat(asked.enough(0.5)).isBetween(2990, 3010);
        assertThat(asked.sold(100)).isCloseTo(100, within(1e-9));
    }

    @Test
    void nothingAskedFor_nothingSold() {
        AskedFor none = new AskedFor(List.of(new double[] {0, 0.3}));
        assertThat(none.enough(0.99)).isZero();
        assertThat(none.sold(10)).isZero();
    }
}
