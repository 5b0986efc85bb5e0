package croftboard.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.gamma.LogGamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published smoothing figures; stands here and not under {@code outside}, because smoothing is known to this room only. */
class SmoothingOutsideTest {
    /** NIST/SEMATECH e-Handbook 6.4.3.6, itl.nist.gov/div898/handbook/pmc/section4/pmc436.htm: six years of quarters. */
    private static final double[] QUARTERS = {362, 385, 432, 341, 382, 409, 498, 387, 473, 513, 582, 474, 544, 582, 681, 557,
        628, 707, 773, 592, 627, 725, 854, 661};

    private static double meanSquare(double[] expected, int from) {
        double sum = 0;
        for (int i = from; i < QUARTERS.length; i++) {
            sum += Math.pow(QUARTERS[i] - expected[i], 2);
        }
        return sum / (QUARTERS.length - from);
    }

    /** scribd.com/document/478748477: weight 0.45: mean squared error 6,909.8, next 714; 0.05: 29,367.2 and 524. */
    @ParameterizedTest
    @CsvSource({"0.45, 6909.8, 714", "0.05, 29367.2, 524"})
    void singleSmoothing_hasThePublishedErrorAndNextFigure(double weight, double error, double next) {
        double[] expected = Smoothing.expected(QUARTERS, weight);
        assertThat(meanSquare(expected, 1)).isCloseTo(error, offset(0.05));
        assertThat(expected[QUARTERS.length]).isCloseTo(next, offset(0.5));
    }

    /**
     * The learner on the same figures, quarters as weekdays and years as weeks. scribd.com/document/478748477 prints the
     * share of each quarter in its year's average, and their means over the six years: 0.92, 1.01, 1.16, 0.92.
     */
    @Test
    void learner_findsThePublishedSharesOfTheQuarters() {
        DayOfWeek[] days = {DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY};
        Map<DayOfWeek, Double> flat = new EnumMap<>(DayOfWeek.class);
        List.of(days).forEach(d -> flat.put(d, 500.0));
        Prior prior = new Prior(Map.of("sales", new Prior.Line(0.1, flat)), Map.of("it", new Prior.Dish(1, "a", "b", "c")), w -> 1);
        IsoWeek first = new IsoWeek(2027, 1);
        List<Observation> seen = new ArrayList<>();
        for (int i = 0; i < QUARTERS.length; i++) {
            seen.add(new Observation(first.plusWeeks(i / 4).day(days[i % 4]), "sales", "it", 10_000, (int) QUARTERS[i],
                    Optional.empty(), Optional.empty()));
        }
        Learning learned = new Learner(prior, DayCurve.even(LocalTime.of(10, 0), LocalTime.of(20, 0))).learn(seen, first.plusWeeks(6));
        double average = 0;
        for (DayOfWeek day : days) {
            average += learned.mean("sales", day, "it") / 4;
        }
        double[] published = {0.92, 1.01, 1.16, 0.92};
        for (int q = 0; q < 4; q++) {
            assertThat(learned.mean("sales", days[q], "it") / average).as("quarter %d", q + 1).isCloseTo(published[q], offset(0.025));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.01", "0.5", "1", "2.5", "7", "33.3", "1000", "1e6"})
    void logGamma_isThatOfCommonsNumbers(double x) {
        assertThat(croftboard.forecast.LogGamma.of(x)).isCloseTo(LogGamma.value(x), offset(1e-11 * Math.max(1, Math.abs(LogGamma.value(x)))));
    }
}
