package croftboard.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvidenceTest {
    private static final double STEP = 1e-5;

    private static double slopeByDifference(Evidence e, double m, double r) {
        return (e.log(m * Math.exp(STEP), r) - e.log(m * Math.exp(-STEP), r)) / (2 * STEP);
    }

    @ParameterizedTest
    @CsvSource({"30, 20, 12", "30, 45, 8", "12, 12, 1000", "5, 30, 3", "200, 90, 15", "1, 4, 2", "40, 8, 6"})
    void slope_isThatOfTheLikelihood(int sold, double m, double r) {
        for (Evidence e : List.of(new Evidence.All(sold), new Evidence.Until(sold, 0.6), new Evidence.AtLeast(sold))) {
            assertThat(e.slope(m, r)).as("%s", e).isCloseTo(slopeByDifference(e, m, r), offset(1e-4));
            assertThat(e.bend(m, r)).as("%s", e).isPositive();
        }
    }

    /** Only the mean's part of the likelihood is kept, so chances are compared by their differences between two means. */
    @ParameterizedTest
    @CsvSource({"30, 20, 12", "30, 45, 8", "5, 30, 3", "90, 60, 25"})
    void atLeast_isTheChanceOfTheDistribution(int sold, double m, double r) {
        Demand demand = Demand.ofDay(m, Math.sqrt(1 / m + 1 / r));
        assertThat(Math.exp(new Evidence.AtLeast(sold).log(m, r))).isCloseTo(1 - demand.atMost(sold - 1), offset(1e-9));
    }

    /** Sold at the very end of the day says what a day that did not run out says. */
    @Test
    void untilTheEnd_isAll() {
        assertThat(new Evidence.Until(30, 1).slope(25, 9)).isCloseTo(new Evidence.All(30).slope(25, 9), offset(1e-12));
    }

    @Test
    void earlier_meansMore() {
        Evidence atOne = new Evidence.Until(30, 0.5);
        assertThat(atOne.slope(60, 10)).isCloseTo(0, offset(1e-12));
        assertThat(new Evidence.Until(30, 0.75).slope(40, 10)).isCloseTo(0, offset(1e-12));
    }

    @Test
    void kinds_areToldByWhatIsWritten() {
        DayCurve curve = DayCurve.even(LocalTime.of(10, 0), LocalTime.of(20, 0));
        LocalDate day = LocalDate.of(2027, 8, 16);
        assertThat(Evidence.of(new Observation(day, "a", "b", 40, 38, Optional.empty(), Optional.empty()), curve))
                .isEqualTo(new Evidence.All(38));
        assertThat(Evidence.of(new Observation(day, "a", "b", 40, 40, Optional.empty(), Optional.empty()), curve))
                .isEqualTo(new Evidence.AtLeast(40));
        assertThat(Evidence.of(new Observation(day, "a", "b", 40, 39, Optional.of(LocalTime.of(15, 0)), Optional.empty()), curve))
                .isEqualTo(new Evidence.Until(39, 0.5));
        assertThat(Evidence.of(new Observation(day, "a", "b", 40, 40, Optional.of(LocalTime.of(20, 30)), Optional.empty()), curve))
                .isEqualTo(new Evidence.AtLeast(40));
    }

    @Test
    void curve_ofTheRegister_leansOnWhatWasBelieved_whileLittleIsSeen() {
        DayCurve even = DayCurve.even(LocalTime.of(10, 0), LocalTime.of(14, 0));
        assertThat(even.by(LocalTime.of(9, 0))).isZero();
        assertThat(even.by(LocalTime.of(11, 30))).isEqualTo(0.375);
        DayCurve little = DayCurve.seen(java.util.Map.of(10, 10L), even, 90);
        assertThat(little.by(LocalTime.of(11, 0))).isCloseTo((10 + 22.5) / 100, offset(1e-12));
        assertThat(little.by(LocalTime.of(23, 59))).isCloseTo(1, offset(1e-12));
    }
}
