package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.FoodBook;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Recipes printed for 50 and 100 servings: what doubles exactly, what was rounded apart, what is a slip. */
class StandardRecipeOutsideTest {
    /** The sum of amounts written {@code 6 lb + 4 oz}, in grams or millilitres. */
    private static Ratio sum(String text) {
        Ratio sum = Ratio.ZERO;
        for (String part : text.split(" \\+ ")) {
            sum = sum.plus(FoodBook.amount(part).base());
        }
        return sum;
    }

    private static Ratio scaled(String text, Ratio factor) {
        Ratio sum = Ratio.ZERO;
        for (String part : text.split(" \\+ ")) {
            sum = sum.plus(FoodBook.amount(part).times(factor).base());
        }
        return sum;
    }

    /** Creamy coleslaw, USDA Recipe for Schools, marketing guide (theicn.org/cnrb), 50 to 100 servings. */
    @ParameterizedTest(name = "{0}: {1} doubles to {2}")
    @CsvSource({"carrots, 1 lb, 2 lb", "green onions, 10 oz, 1 lb + 4 oz", "green cabbage, 3 lb + 2 oz, 6 lb + 4 oz",
        "purple cabbage, 10 oz, 1 lb + 4 oz"})
    void coleslaw_doublesExactly(String purchase, String for50, String for100) {
        assertThat(scaled(for50, Ratio.of(2))).isEqualTo(sum(for100));
    }

    /** Beef stew, University of Alaska Fairbanks Extension FNH-00414, 50 to 100 servings, weights and volumes. */
    @ParameterizedTest(name = "{0}: {1} doubles to {2}")
    @CsvSource({
        "oil, 10 oz, 1 lb + 4 oz", "oil, 1-1/4 cups, 2-1/2 cups",
        "celery and onion, 2 lb + 10 oz, 5 lb + 4 oz", "celery and onion and carrot, 8-3/4 cups, 17-1/2 cups",
        "carrot, 3 lb + 5 oz, 6 lb + 10 oz",
        "tomato paste, 2 lb + 1 oz, 4 lb + 2 oz", "tomato paste, 3 cups, 6 cups",
        "salt, 1-1/4 tsp, 2-1/2 tsp"})
    void stew_50To100_doublesExactly(String ingredient, String for50, String for100) {
        assertThat(scaled(for50, Ratio.of(2))).isEqualTo(sum(for100));
    }

    /** The same stew, 20 to 50: volumes of diced vegetables scale exactly by 2.5. */
    @Test
    void stew_20To50_volumesScaleExactly() {
        assertThat(scaled("3-1/2 cups", Ratio.of(50, 20))).isEqualTo(sum("8-3/4 cups"));
    }

    /**
     * The same stew, 20 to 50: printed weights were rounded apart; exact 2.5 times is within 5 percent of
     * them.
     */
    @ParameterizedTest(name = "{0}: {1} to {2}")
    @CsvSource({"celery and onion, 1 lb, 2 lb + 10 oz", "carrot, 1 lb + 5 oz, 3 lb + 5 oz",
        "tomato paste, 13 oz, 2 lb + 1 oz", "oil, 4 oz, 10 oz"})
    void stew_20To50_weightsAreWithinFivePercent(String ingredient, String for20, String for50) {
        assertThat(percentOff(scaled(for20, Ratio.of(5, 2)), sum(for50))).isLessThanOrEqualTo(new BigDecimal("5.0"));
    }

    /**
     * The stew's salt row is a slip: 1 1/2 tsp for 20 servings, but 1 1/4 tsp for 50. Scaling never makes
     * less of more.
     */
    @Test
    void stewSaltRow_isNotProportional() {
        assertThat(sum("1-1/2 tsp")).isGreaterThan(sum("1-1/4 tsp"));
        assertThat(FoodBook.amount("1-1/2 tsp").times(Ratio.of(5, 2)).value())
                .isEqualTo(Amount.number("3-3/4").orElseThrow());
    }

    /** Vegetarian spaghetti sauce, 50 and 100 servings (kidchenexpedition.com): rows that double exactly. */
    @ParameterizedTest(name = "{0}: {1} doubles to {2}")
    @CsvSource({"olive oil, 2/3 cup, 1-1/3 cups", "oregano, 1/3 cup, 2/3 cup",
        "water, 1 qt + 1-1/2 cups, 2 qt + 3 cups"})
    void sauce_doublesExactly(String ingredient, String for50, String for100) {
        assertThat(scaled(for50, Ratio.of(2))).isEqualTo(sum(for100));
    }

    /** The same sauce: columns rounded apart; the exact double is printed beside, and is within 2.5 percent. */
    @ParameterizedTest(name = "{0}: {1} doubles to {3}, printed {2}")
    @CsvSource({"onions, 2 qt + 3 cups, 1-1/4 gal + 2-1/4 cups, 22 cups",
        "zucchini, 1 qt + 3 cups, 3 qt + 1-3/4 cups, 14 cups", "tomato sauce, 44 oz, 90 oz, 88 oz"})
    void sauce_roundedRows_areWithinTwoAndAHalfPercent(String ingredient, String for50, String printed, String exact) {
        Ratio doubled = scaled(for50, Ratio.of(2));
        assertThat(doubled).isEqualTo(sum(exact)).isNotEqualTo(sum(printed));
        assertThat(percentOff(doubled, sum(printed))).isLessThanOrEqualTo(new BigDecimal("2.5"));
    }

    /** The same sauce prints 16 cloves and 33: one clove, 3.1 percent, more than the other rows are off. */
    @Test
    void sauceGarlic_isOneCloveOff() {
        Ratio doubled = scaled("16 cloves", Ratio.of(2));
        assertThat(sum("33 cloves").minus(doubled)).isEqualTo(Ratio.ONE);
        assertThat(percentOff(doubled, sum("33 cloves"))).isGreaterThan(new BigDecimal("2.5"));
    }

    /**
     * Bean burgers, Vegan Quantity Recipes for School Lunch Programs (doczz.net/doc/2027988), 50 and 100
     * servings.
     */
    @ParameterizedTest(name = "{0}: {1} doubles to {2}")
    @CsvSource({"black beans, 1 can, 2 cans", "black beans, 1 qt, 2 qt",
        "sweet potato, 1 qt + 3 cups, 3 qt + 2 cups", "tomato paste, 1/2 cup, 1 cup", "oats, 1 cup, 2 cups"})
    void burgers_doubleExactly(String ingredient, String for50, String for100) {
        assertThat(scaled(for50, Ratio.of(2))).isEqualTo(sum(for100));
    }

    /** The same burgers print a third of a cup more or less: 5 tbsp as 1/3 cup, 6 tbsp as 1/3 cup + 1 tbsp. */
    @ParameterizedTest(name = "{0}: {1} doubles to {3}, printed {2}")
    @CsvSource({"soy sauce, 2-1/2 tbsp, 1/3 cup, 5 tbsp", "cumin, 3 tbsp, 1/3 cup + 1 tbsp, 6 tbsp"})
    void burgers_printedThirds_areATeaspoonOver(String ingredient, String for50, String printed, String exact) {
        assertThat(scaled(for50, Ratio.of(2))).isEqualTo(sum(exact));
        assertThat(sum(printed).minus(sum(exact))).isEqualTo(sum("1/3 tbsp"));
    }

    private static BigDecimal percentOff(Ratio exact, Ratio printed) {
        Ratio off = printed.minus(exact).over(exact).times(100);
        return off.max(off.negate()).toDecimal(3).setScale(3, RoundingMode.UNNECESSARY);
    }
}
