package croftboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({"6, 6, 1", "2.5, 5, 2", "1/2, 1, 2", "1-1/2, 3, 2", "0, 0, 1", "12-3/8, 99, 8", "0.125, 1, 8"})
    void number_isReadExactly(String text, long num, long den) {
        assertThat(Amount.number(text)).contains(Ratio.of(num, den));
    }

    @ParameterizedTest(name = "[{0}]")
    @ValueSource(strings = {"", "-1", "+1", "1e3", "1,000", "1.", ".5", "1/0", "1-1/0", "1 1/2", "one", "1-",
            "1/2/3", "½"})
    void number_elseIsRefused(String text) {
        assertThat(Amount.number(text)).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"1-1/2 cups, 3/2, cup", "25 lb, 25, lb", "12 cloves, 12, clove", "3 bunches, 3, bunch",
            "2 loaves, 2, loaf",
        "1 quart, 1, qt", "2 gallons, 2, gal", "4 days, 4, day", "45 min, 45, min", "2 litres, 2, L", "250 mL, 250, ml",
        "3 dry-pt, 3, dry-pt"})
    void amount_hasItsUnit_singularOrPlural(String text, String value, String unit) {
        Amount amount = Amount.parse(text).orElseThrow();
        assertThat(amount.value()).hasToString(value);
        assertThat(amount.unit()).hasToString(unit);
    }

    @ParameterizedTest(name = "[{0}]")
    @ValueSource(strings = {"25", "lb", "25lb", "25 pounders", "-3 lb", "1 1/2 cups", "3 handfuls", "25 lb sack", ""})
    void amount_elseIsRefused(String text) {
        assertThat(Amount.parse(text)).isEmpty();
    }

    @Test
    void conversion_isExact_thereAndBack() {
        Amount cups = Amount.parse("7 cups").orElseThrow();
        assertThat(cups.in(Unit.GALLON).value()).isEqualTo(Ratio.of(7, 16));
        assertThat(cups.in(Unit.GALLON).in(Unit.CUP)).isEqualTo(cups);
    }

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource({"1 lb, cup", "1 cup, oz", "3 cloves, can", "3 cloves, each", "2 h, lb"})
    void conversion_acrossKinds_isRefused(String amount, String unit) {
        Amount from = Amount.parse(amount).orElseThrow();
        Unit to = Unit.named(unit).orElseThrow();
        assertThatThrownBy(() -> from.in(to)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(from.unit().name()).hasMessageContaining(unit);
    }

    @Test
    void fluidOunce_isNotTheOunce() {
        assertThat(Unit.FLUID_OUNCE.converts(Unit.OUNCE)).isFalse();
        assertThat(Unit.named("fl-oz")).contains(Unit.FLUID_OUNCE);
        assertThat(Unit.named("oz")).contains(Unit.OUNCE);
    }

    @Test
    void times_scalesTheValue_andKeepsTheUnit() {
        assertThat(Amount.parse("3 lb").orElseThrow().times(Ratio.of(3, 4))).hasToString("9/4 lb");
    }

    @Test
    void everyUnit_isFoundByItsOwnNameAndPlural() {
        for (String name : Unit.names()) {
            Unit unit = Unit.named(name).orElseThrow();
            assertThat(unit.name()).isEqualTo(name);
            assertThat(Unit.named(unit.plural())).contains(unit);
            assertThat(unit.base().signum()).isPositive();
        }
    }
}
