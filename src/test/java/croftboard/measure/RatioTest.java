package croftboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatioTest {
    @Test
    void lowestTerms_positiveDenominator() {
        assertThat(Ratio.of(6, 4)).isEqualTo(Ratio.of(3, 2)).hasToString("3/2");
        assertThat(Ratio.of(3, -4)).isEqualTo(Ratio.of(-3, 4)).hasToString("-3/4");
        assertThat(Ratio.of(0, 7)).isEqualTo(Ratio.ZERO);
        assertThat(Ratio.of(8, 4)).hasToString("2");
    }

    @Test
    void denominatorZero_isRefused() {
        assertThatThrownBy(() -> Ratio.of(1, 0)).isInstanceOf(ArithmeticException.class).hasMessageContaining("1/0");
        assertThatThrownBy(() -> Ratio.ONE.over(Ratio.ZERO)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Ratio.ONE.over(0)).isInstanceOf(ArithmeticException.class);
    }

    @ParameterizedTest(name = "{0}: floor {1}, nearest {2}, ceil {3}")
    @CsvSource({"2.4, 2, 2, 3", "2.5, 2, 3, 3", "2.6, 2, 3, 3", "3, 3, 3, 3", "0, 0, 0, 0", "-2.4, -3, -2, -2",
        "-2.5, -3, -2, -2", "-2.6, -3, -3, -2", "-3, -3, -3, -3"})
    void rounding(String value, long floor, long round, long ceil) {
        Ratio r = Ratio.decimal(value);
        assertThat(r.floor()).isEqualTo(floor);
        assertThat(r.round()).isEqualTo(round);
        assertThat(r.ceil()).isEqualTo(ceil);
    }

    @ParameterizedTest(name = "{0} to quarters: {1}, up: {2}")
    @CsvSource({"1, 1, 1", "1.12, 1, 1.25", "1.125, 1.25, 1.25", "1.13, 1.25, 1.25", "1.26, 1.25, 1.5"})
    void steps(String value, String nearest, String up) {
        Ratio quarter = Ratio.of(1, 4);
        assertThat(Ratio.decimal(value).roundTo(quarter)).isEqualTo(Ratio.decimal(nearest));
        assertThat(Ratio.decimal(value).ceilTo(quarter)).isEqualTo(Ratio.decimal(up));
    }

    @Test
    void toDecimal_roundsHalfUp() {
        assertThat(Ratio.of(1, 8).toDecimal(2)).isEqualTo(new BigDecimal("0.13"));
        assertThat(Ratio.of(1, 3).toDecimal(4)).isEqualTo(new BigDecimal("0.3333"));
    }

    @Test
    void decimal_readsScientificAndPlain_alike() {
        assertThat(Ratio.of(new BigDecimal("2E3"))).isEqualTo(Ratio.of(2000));
        assertThat(Ratio.decimal("0.0250")).isEqualTo(Ratio.of(1, 40));
    }

    @Test
    void longOverflow_isAnError_notAWrongNumber() {
        assertThatThrownBy(() -> Ratio.of(Long.MAX_VALUE).times(2).floor()).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void arithmetic_keepsTheLawsOfNumbers() {
        Random g = new Random(11);
        for (int n = 0; n < 500; n++) {
            Ratio a = some(g);
            Ratio b = some(g);
            Ratio c = some(g);
            assertThat(a.plus(b)).isEqualTo(b.plus(a));
            assertThat(a.times(b).times(c)).isEqualTo(a.times(b.times(c)));
            assertThat(a.times(b.plus(c))).isEqualTo(a.times(b).plus(a.times(c)));
            assertThat(a.minus(b).plus(b)).isEqualTo(a);
            assertThat(a.compareTo(b)).isEqualTo(a.minus(b).signum());
            assertThat(a.max(b).plus(a.min(b))).isEqualTo(a.plus(b));
            if (b.signum() != 0) {
                assertThat(a.over(b).times(b)).isEqualTo(a);
            }
        }
    }

    private static Ratio some(Random g) {
        return Ratio.of(g.nextInt(2001) - 1000, 1 + g.nextInt(60));
    }
}
