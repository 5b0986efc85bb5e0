package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.FoodBook;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scaling by hand as the US Armed Forces Recipe Service teaches it (TM 10-412, General Information card A-1). */
class ScalingOutsideTest {
    private static final Ratio QUARTER = Ratio.of(1, 4);

    private static Ratio number(String text) {
        return Amount.number(text).orElseThrow();
    }

    /**
     * Card A-1(2): 1 lb 4 oz for 100 portions, 348 wanted: factor 3.48, 4.35 lb, .35 lb = 5.60 oz, so 4 lb 5
     * 1/2 oz.
     */
    @Test
    void pounds_for348Portions_are4lb5AndAHalfOz() {
        Ratio factor = Ratio.of(348, 100);
        Amount scaled = FoodBook.amount("20 oz").times(factor).in(Unit.POUND);
        assertThat(factor.toDecimal(2)).isEqualByComparingTo("3.48");
        assertThat(scaled.value()).isEqualTo(Ratio.decimal("4.35"));
        Ratio ounces = scaled.value().minus(Ratio.of(4)).times(16);
        assertThat(ounces).isEqualTo(Ratio.decimal("5.60"));
        assertThat(ounces.roundTo(QUARTER)).isEqualTo(number("5-1/2"));
    }

    /** Card A-1(2), fractions of an ounce: .00-.12 0, .13-.37 1/4, .38-.62 1/2, .63-.87 3/4, .88-.99 1. */
    @ParameterizedTest(name = ".{0} to .{1} oz is {2} oz")
    @CsvSource({"0, 12, 0", "13, 37, 1/4", "38, 62, 1/2", "63, 87, 3/4", "88, 99, 1"})
    void fractionOfAnOunce_roundsByTheCardsScale(int from, int to, String printed) {
        for (int hundredths = from; hundredths <= to; hundredths++) {
            assertThat(Ratio.of(hundredths, 100).roundTo(QUARTER)).isEqualTo(number(printed));
        }
    }

    /**
     * Card A-1(2), ounces to decimal pounds (Wikisource, Page:TM-10-412 (2003).pdf/9); half of a hundredth
     * goes up.
     */
    @ParameterizedTest(name = "{0} oz is {1} lb")
    @CsvSource({"1, .06", "2, .13", "3, .19", "4, .25", "5, .31", "6, .38", "7, .44", "8, .50", "9, .56", "10, .63",
        "11, .69", "12, .75", "13, .81", "14, .88", "15, .94", "16, 1.00", "20, 1.25", "42, 2.63"})
    void ounces_asDecimalPounds(int ounces, BigDecimal pounds) {
        Amount scaled = new Amount(Ratio.of(ounces), Unit.OUNCE).in(Unit.POUND);
        assertThat(scaled.value().toDecimal(2)).isEqualByComparingTo(pounds);
    }

    /**
     * The same page prints the 8 oz row as "4 (1/2 lb)": its own slip. 8 oz is half a pound, 4 oz is a
     * quarter.
     */
    @Test
    void slipInTheEightOunceRow_isNotOurs() {
        assertThat(FoodBook.amount("1/2 lb").in(Unit.OUNCE).value()).isEqualTo(Ratio.of(8)).isNotEqualTo(Ratio.of(4));
    }

    /** Card A-1(3): 102 lb on hand, 30 lb for 100 portions: factor 3.40, 340 portions. */
    @Test
    void factor_forWhatIsOnHand() {
        Ratio factor = FoodBook.grams("102 lb").over(FoodBook.grams("30 lb"));
        assertThat(factor.toDecimal(2)).isEqualByComparingTo("3.40");
        assertThat(factor.times(100)).isEqualTo(Ratio.of(340));
    }

    /** Card A-1(3): 3 oz portions for the recipe's 4 oz, 348 servings: .75, 261, factor 2.61. */
    @Test
    void factor_forAnotherPortionSize() {
        Ratio size = FoodBook.grams("3 oz").over(FoodBook.grams("4 oz"));
        assertThat(size).isEqualTo(Ratio.decimal(".75"));
        assertThat(size.times(348)).isEqualTo(Ratio.of(261));
        assertThat(size.times(348).over(100).toDecimal(2)).isEqualByComparingTo("2.61");
    }

    /**
     * Card A-1(3): water for 333 portions, 19 gal 3 qt 1 pt 1 c 10 tbsp 2 3/4 tsp. The quantity for 100 was
     * not seen; 6 gal is inferred, and fits to within an eighth of a teaspoon (the scale's half step).
     */
    @Test
    void water_for333Portions_isThePrintedSum() {
        Ratio printed = Ratio.ZERO;
        for (String part : new String[] {"19 gal", "3 qt", "1 pt", "1 cup", "10 tbsp", "2-3/4 tsp"}) {
            printed = printed.plus(FoodBook.amount(part).base());
        }
        Ratio scaled = FoodBook.amount("6 gal").times(Ratio.decimal("3.33")).base();
        assertThat(scaled.over(FoodBook.amount("19.98 gal").base())).isEqualTo(Ratio.ONE);
        Ratio off = printed.minus(scaled).over(Unit.TEASPOON.base());
        assertThat(off.max(off.negate())).isLessThanOrEqualTo(Ratio.of(1, 8));
    }

    /**
     * "Adjusting Recipes" (scribd 701046145): 75 to 300 biscuits, 30 to 90 puffs; slideshare 256487518: 10 to
     * 15.
     */
    @ParameterizedTest(name = "{0} to {1}: factor {2}")
    @CsvSource({"75, 300, 4", "30, 90, 3", "10, 15, 1.5", "12, 42, 3.5"})       // the last: an exercise, 3.5 is a check
    void factor_isWantedOverMade(int made, int wanted, String printed) {
        assertThat(Ratio.of(wanted, made)).isEqualTo(number(printed));
    }
}
