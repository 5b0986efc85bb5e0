package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.FoodBook;
import croftboard.measure.Amount;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts as they are printed on cards, against printed cards. */
class CookAmountsOutsideTest {
    private static Ratio base(String amount) {
        return FoodBook.amount(amount).base();
    }

    /** The printed words read back: {@code 4 lb 5-1/2 oz} in grams. */
    private static Ratio read(String printed) {
        String[] words = printed.split(" ");
        Ratio sum = Ratio.ZERO;
        for (int w = 0; w < words.length; w += 2) {
            sum = sum.plus(Amount.parse(words[w] + " " + words[w + 1]).orElseThrow().base());
        }
        return sum;
    }

    /**
     * TM 10-412 card A-1(2): .00-.12 -> 0, .13-.37 -> 1/4, .38-.62 -> 1/2, .63-.87 -> 3/4, .88-.99 -> 1;
     * every hundredth.
     */
    @ParameterizedTest(name = ".{0} to .{1}: {2} oz")
    @CsvSource({"0, 12, 3 lb 7 oz", "13, 37, 3 lb 7-1/4 oz", "38, 62, 3 lb 7-1/2 oz", "63, 87, 3 lb 7-3/4 oz",
        "88, 99, 3 lb 8 oz"})
    void ounces_roundByTheCardsScale(int from, int to, String printed) {
        for (int hundredths = from; hundredths <= to; hundredths++) {
            Ratio ounces = Ratio.of(3 * 16 + 7).plus(Ratio.of(hundredths, 100));
            assertThat(CookAmounts.mass(ounces.times(Unit.OUNCE.base()))).isEqualTo(printed);
        }
    }

    /** Masses printed on cards and in texts of section A to F; each is the exact amount in pounds. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "4.35 lb, 4 lb 5-1/2 oz",            // TM 10-412 A-1(2)
        "1.25 lb, 1 lb 4 oz",                // TM 10-412 A-1(2), table
        "2.625 lb, 2 lb 10 oz",              // TM 10-412 A-1(2), table, printed 2.63 lb
        "3.57 lb, 3 lb 9 oz",                // TM 10-412 A-6, pared cucumbers
        "13.125 lb, 13 lb 2 oz",             // TM 10-412, cabbage and carrot slaw
        "10.5 lb, 10 lb 8 oz",               // the same, shredded
        "6.375 lb, 6 lb 6 oz",               // No. 10 crushed tomatoes, New School Cuisine
        "7.3125 lb, 7 lb 5 oz",              // No. 10, heaviest, K-State
        "0.5 lb, 8 oz"})                     // TM 10-412 A-1(2), where the transcription slips to 4
    void mass_isPrintedAsOnTheCard(String exact, String printed) {
        assertThat(CookAmounts.of(FoodBook.amount(exact))).isEqualTo(printed);
    }

    /** TM 10-412 card A-1(3): water for 333 portions (6 gal for 100 is inferred). */
    @Test
    void water_for333Portions() {
        assertThat(CookAmounts.of(FoodBook.amount("6 gal").times(Ratio.decimal("3.33"))))
                .isEqualTo("19 gal 3 qt 1 pt 1 cup 10 tbsp 2-3/4 tsp");
    }

    /** Creamy coleslaw, USDA Recipe for Schools, 50 to 100 servings. */
    @ParameterizedTest(name = "{0} doubles to {1}")
    @CsvSource({"1 lb, 2 lb", "10 oz, 1 lb 4 oz", "3.125 lb, 6 lb 4 oz"})
    void coleslaw_for100_isPrintedAsTheMarketingGuide(String for50, String for100) {
        assertThat(CookAmounts.of(FoodBook.amount(for50).times(Ratio.of(2)))).isEqualTo(for100);
    }

    /**
     * Beef stew FNH-00414, spaghetti sauce, bean burgers: printed doubles, whatever the words, hold the same
     * volume.
     */
    @ParameterizedTest(name = "{0} doubles to {1}")
    @CsvSource({"1-1/4 cups, 2-1/2 cups", "8-3/4 cups, 17-1/2 cups", "3 cups, 6 cups", "1-1/4 tsp, 2-1/2 tsp",
        "5-1/2 cups, 2 qt 3 cups", "7 cups, 3 qt 2 cups", "2/3 cup, 1-1/3 cups"})
    void volume_printedForADouble_isTheSame(String for50, String for100) {
        String printed = CookAmounts.of(FoodBook.amount(for50).times(Ratio.of(2)));
        assertThat(read(printed)).isEqualTo(read(for100));
    }

    /** The ladder of the same card, NIST SP 430: each full unit is printed as the next larger one. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"4 qt, 1 gal", "2 pt, 1 qt", "2 cups, 1 pt", "16 tbsp, 1 cup", "3 tsp, 1 tbsp", "48 tsp, 1 cup"})
    void ladder_isClimbed(String many, String one) {
        assertThat(CookAmounts.of(FoodBook.amount(many))).isEqualTo(one);
    }

    /**
     * Food Buying Guide and the cabbage that falls just short: what is bought whole is rounded up, never to
     * the nearest.
     */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"67.114 cans, 68 cans", "16.750 cans, 17 cans", "10 cans, 10 cans", "25.316 jars, 26 jars"})
    void cans_areNeverTooFew(String exact, String printed) {
        assertThat(CookAmounts.of(FoodBook.amount(exact))).isEqualTo(printed);
    }

    /** Spaghetti sauce: 16 cloves double to 32, not to the printed 33. */
    @Test
    void cloves_doubleExactly() {
        assertThat(CookAmounts.of(FoodBook.amount("16 cloves").times(Ratio.of(2)))).isEqualTo("32 cloves");
    }

    /**
     * The card's scale has half steps of an eighth: no printed volume is farther than an eighth of a teaspoon
     * off.
     */
    @Test
    void volume_isNeverFartherThanAnEighthOfATeaspoon() {
        Random g = new Random(3);
        Ratio eighth = base("1 tsp").over(8);
        for (int n = 0; n < 2000; n++) {
            Ratio exact = base("1 tsp").times(Ratio.of(125 + g.nextInt(3_000_000), 1000));
            Ratio off = read(CookAmounts.volume(exact)).minus(exact);
            assertThat(off.max(off.negate())).isLessThanOrEqualTo(eighth);
        }
    }
}
