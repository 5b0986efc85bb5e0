package croftboard.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DemandTest {
    private static final double E2 = Math.exp(-2);

    @Test
    void poissonOfTwo_byHand() {
        Demand two = Demand.ofDay(2, 0.5);                   // cv squared 0.25 is below 1/2
        assertThat(two.atMost(0)).isCloseTo(E2, offset(1e-12));
        assertThat(two.atMost(1)).isCloseTo(3 * E2, offset(1e-12));
        assertThat(two.atMost(2)).isCloseTo(5 * E2, offset(1e-12));
        assertThat(two.expectedSales(1)).isCloseTo(1 - E2, offset(1e-12));
        assertThat(two.expectedSales(2)).isCloseTo(2 - 4 * E2, offset(1e-12));
    }

    @Test
    void geometricOfMeanOne_byHand() {
        Demand one = Demand.ofDay(1, Math.sqrt(2));          // r = 1: chance of k is a half to the k + 1
        assertThat(one.atMost(0)).isCloseTo(0.5, offset(1e-12));
        assertThat(one.atMost(2)).isCloseTo(0.875, offset(1e-12));
        assertThat(one.expectedSales(2)).isCloseTo(0.75, offset(1e-12));
        assertThat(one.quantile(0.74)).isEqualTo(1);
        assertThat(one.quantile(0.76)).isEqualTo(2);
    }

    @ParameterizedTest(name = "mean {0}, cv {1}: deviation {2}")
    @CsvSource({"16, 0.25, 4", "16, 0.2, 4", "16, 0.5, 8", "40, 0.35, 14", "1, 2, 2", "9, 0, 3"})
    void spread_isThatOfTheBook_neverBelowPoisson(double mean, double cv, double deviation) {
        assertThat(Demand.ofDay(mean, cv).standardDeviation()).isCloseTo(deviation, offset(1e-4));
    }

    @Test
    void nobodyComes_whenTheMeanIsZero() {
        Demand none = Demand.ofDay(0, 0.4);
        assertThat(none.mean()).isZero();
        assertThat(none.quantile(0.99)).isZero();
        assertThat(none.expectedSales(5)).isZero();
        assertThat(none.atMost(0)).isEqualTo(1);
    }

    @Test
    void days_addTheirMeansAndVariances() {
        Demand both = Demand.ofDay(30, 0.4).plus(Demand.ofDay(20, 0.5));
        assertThat(both.mean()).isEqualTo(50);
        assertThat(both.standardDeviation()).isCloseTo(Math.sqrt(144 + 100), offset(1e-6));
    }

    @Test
    void noneAdded_changesNothing() {
        Demand day = Demand.ofDay(17, 0.3);
        Demand sum = Demand.ofDay(0, 1).plus(day);
        for (int q = 0; q < 60; q++) {
            assertThat(sum.atMost(q)).isEqualTo(day.atMost(q));
        }
    }

    @Test
    void anyDemand_isADistribution_andItsSalesRunUpToTheMean() {
        Random g = new Random(5);
        for (int n = 0; n < 300; n++) {
            double mean = 0.1 + 120 * g.nextDouble();
            Demand d = Demand.ofDay(mean, n % 3 == 0 ? Math.sqrt(1 / mean) : g.nextDouble());
            int end = (int) (mean + 60 * d.standardDeviation() + 100);
            assertThat(d.atMost(end)).isCloseTo(1, offset(1e-6));
            assertThat(d.expectedSales(end)).isCloseTo(mean, offset(1e-3));
            double before = 0;
            for (int q = 1; q < end; q++) {
                double sold = d.expectedSales(q);
                assertThat(sold).isBetween(before, Math.min(q, mean));
                before = sold;
            }
        }
    }

    @Test
    void quantity_isTheSmallestThatReachesTheRatio() {
        Random g = new Random(6);
        for (int n = 0; n < 300; n++) {
            Demand d = Demand.ofDay(1 + 60 * g.nextDouble(), 0.1 + g.nextDouble());
            double ratio = 0.02 + 0.96 * g.nextDouble();
            int q = Newsvendor.quantity(d, ratio);
            assertThat(d.atMost(q)).isGreaterThanOrEqualTo(ratio);
            assertThat(q == 0 || d.atMost(q - 1) < ratio).isTrue();
        }
    }

    @Test
    void ratio_weighsShortAgainstLeft_andStaysBelowOne() {
        assertThat(Newsvendor.ratio(300, 100)).isEqualTo(0.75);
        assertThat(Newsvendor.ratio(300, -50)).as("what a left portion brings may exceed its food")
                .isEqualTo(300.0 / 301);
        assertThat(Newsvendor.ratio(-20, 100)).as("a dish that loses money").isEqualTo(1.0 / 101);
    }
}
