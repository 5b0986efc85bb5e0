package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import croftboard.forecast.Demand;
import croftboard.forecast.Newsvendor;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Published newsvendor answers against the ratio that sets every quantity. Costs are in cents. */
class NewsvendorOutsideTest {
    /**
     * tr.scribd.com/document/324382828 Q12.1: short 8, left 4: ratio 0.6667, z 0.44 (table, rounded up), Q
     * 235.2.
     */
    @Test
    void normalExample_ratioAndQuantity() {
        double ratio = Newsvendor.ratio(800, 400);
        assertThat(ratio).isCloseTo(0.6667, offset(0.00005));
        double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(ratio);
        assertThat(Math.ceil(z * 100) / 100).isEqualTo(0.44);
        assertThat(200 + 80 * 0.44).isCloseTo(235.2, offset(1e-9));
        double exact = NormalDistribution.of(200, 80).inverseCumulativeProbability(ratio);
        assertThat(exact).isCloseTo(234.46, offset(0.005));
    }

    /**
     * neoprimate.github.io/IEOR, discrete newsvendor: price 10, cost 4, salvage 1; demand 10, 12, 14, 14, 16,
     * 20: Q 14, as the share of demands up to 14 is 2/3 exactly. "At least" the ratio, not "more than".
     */
    @Test
    void empiricalExample_takesTheSmallestQuantityThatReachesTheRatio() {
        double ratio = Newsvendor.ratio(1000 - 400, 400 - 100);
        int[] demands = {10, 12, 14, 14, 16, 20};
        int n = 0;
        while ((double) (n + 1) / demands.length < ratio) {
            n++;
        }
        assertThat(demands[n]).isEqualTo(14);
        assertThat(ratio).isEqualTo(4.0 / 6);
    }

    /**
     * qammunity.org/6843903: mean 80, sd 30, short 60, left 110. The page prints 92.6: wrong. A ratio under
     * one half means less than the mean: 68.7.
     */
    @Test
    void trap_ratioUnderOneHalf_isLessThanTheMean() {
        double ratio = Newsvendor.ratio(60, 110);
        assertThat(ratio).isLessThan(0.5);
        double quantity = NormalDistribution.of(80, 30).inverseCumulativeProbability(ratio);
        assertThat(quantity).isCloseTo(68.7, offset(0.05)).isNotCloseTo(92.6, offset(10.0));
    }

    /** The trap's costs on the kitchen's own demand of the same mean and spread: below the mean as well. */
    @Test
    void trap_onPortionDemand_isLessThanTheMeanToo() {
        Demand demand = Demand.ofDay(80, 30.0 / 80);
        assertThat(demand.standardDeviation()).isCloseTo(30, offset(1e-6));
        assertThat(Newsvendor.quantity(demand, Newsvendor.ratio(60, 110))).isBetween(60, 70);
    }

    /** The normal example's mean and spread on portion demand: not the normal's quantity, yet near it. */
    @Test
    void normalExample_onPortionDemand_isNearTheNormalsQuantity() {
        Demand demand = Demand.ofDay(200, 80.0 / 200);
        assertThat(demand.standardDeviation()).isCloseTo(80, offset(1e-6));
        assertThat(Newsvendor.quantity(demand, Newsvendor.ratio(800, 400))).isBetween(220, 236);
    }
}
