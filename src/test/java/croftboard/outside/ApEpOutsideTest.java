package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.FoodBook;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.RecipeTree;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** As purchased and edible portion, through the recipe tree that also plans the orders. */
class ApEpOutsideTest {
    private static final String DISH = "dish";

    /** One line of one food whose cut has that yield. */
    private static RecipeTree.Weighed weighed(String line, Ratio yield) {
        Book book = new FoodBook().food(FoodBook.food("food").cut("cut", yield))
                .recipe(DISH, "1 lb", line + " food, cut")
                .build();
        return new RecipeTree(book).lines(book.recipe(DISH)).get(0);
    }

    private static Ratio pounds(String sum) {
        Ratio grams = Ratio.ZERO;
        for (String part : sum.split(" \\+ ")) {
            grams = grams.plus(FoodBook.grams(part));
        }
        return grams.over(Unit.POUND.base());
    }

    /** Bakery and Business Math ch. 25 (openwa.pressbooks.pub): zucchini 95 percent, strawberries 87 percent. */
    @ParameterizedTest(name = "{0} at {1} is {2}")
    @CsvSource({"3 lb, 0.95, 2.85 lb", "5000 g, 0.87, 4350 g"})
    void edible_isPurchasedTimesYield(String purchased, String yield, String edible) {
        assertThat(weighed(purchased + " AP", Ratio.decimal(yield)).ep()).isEqualTo(FoodBook.grams(edible));
    }

    /** The same chapter: 32 oz of pears needed at 78 percent: 41.03 oz to buy. */
    @Test
    void purchased_isEdibleOverYield() {
        Ratio ounces = weighed("32 oz", Ratio.decimal("0.78")).ap().over(Unit.OUNCE.base());
        assertThat(ounces.toDecimal(2)).isEqualByComparingTo("41.03");
    }

    /**
     * TM 10-412 card A-6, pared cucumbers (A-7 has the same for sweet cherries): factor 1.19, 3 lb EP is 3.57
     * lb AP.
     */
    @Test
    void factor119_isAYieldOf1Over119() {
        Ratio yield = Ratio.ONE.over(Ratio.decimal("1.19"));
        RecipeTree.Weighed bought = weighed("3 lb", yield);
        assertThat(bought.ap()).isEqualTo(FoodBook.grams("3.57 lb"));
        Ratio ounces = bought.ap().minus(FoodBook.grams("3 lb")).over(Unit.OUNCE.base());
        assertThat(ounces.round()).isEqualTo(9);                      // printed: 3 lb 9 oz
        assertThat(weighed("3.57 lb AP", yield).ep()).isEqualTo(FoodBook.grams("3 lb"));
        assertThat(yield.toDecimal(4)).isEqualByComparingTo("0.8403");       // sweet cherries in the yields' table
    }

    /**
     * Pairs printed on 100-portion cards of TM 10-412; the fraction is the one listed for the pair, four
     * decimals.
     */
    @ParameterizedTest(name = "{1} {0} is {2}: {3}")
    @CsvSource({
        "'cabbage, finely shredded, M-9', 15 lb, 12 lb, 0.8",
        "'cabbage, slaw', 13 lb + 2 oz, 10 lb + 8 oz, 0.8",
        "'carrots, slaw', 3 lb + 8 oz, 2 lb + 14 oz, 0.8214",
        "'summer squash, Q06400', 25 lb + 3 oz, 24 lb, 0.9529",
        "'onions, Q06400', 1 lb + 7 oz, 1 lb + 5 oz, 0.913",
        "'celery, Q06400', 8 oz, 6 oz, 0.75",
        "'peppers, P02000', 1 lb + 11 oz, 1 lb + 6 oz, 0.8148",
        "'carrots, P02000', 1 lb + 4 oz, 1 lb, 0.8",
        "'cooking apples, P02000', 1 lb + 15 oz, 1 lb + 8 oz, 0.7742",
        "'cantaloupe, M03509', 17 lb + 2 oz, 8 lb + 12 oz, 0.5109",
        "'grapes, M03509', 8 lb + 7 oz, 7 lb + 8 oz, 0.8889",
        "'acorn squash, Q06100', 40 lb, 34 lb + 12 oz, 0.8688",
        "'hubbard squash, Q06100', 32 lb + 8 oz, 29 lb, 0.8923"})
    void cardPair_isBoughtBackExactly(String food, String purchased, String edible, BigDecimal fraction) {
        Ratio yield = pounds(edible).over(pounds(purchased));
        assertThat(yield.toDecimal(4)).isEqualByComparingTo(fraction);
        Ratio ounces = pounds(edible).times(16);
        assertThat(weighed(ounces + " oz", yield).ap()).isEqualTo(pounds(purchased).times(Unit.POUND.base()));
        assertThat(weighed(pounds(purchased).times(16) + " oz AP", yield).ep())
                .isEqualTo(ounces.times(Unit.OUNCE.base()));
    }

    /** Card A-6's factor 1.25 for trimmed and cored cabbage is card M-9's pair 15 lb to 12 lb. */
    @Test
    void cabbageFactor_isTheCardsPair() {
        assertThat(weighed("12 lb", Ratio.ONE.over(Ratio.decimal("1.25"))).ap()).isEqualTo(FoodBook.grams("15 lb"));
    }

    /**
     * As Purchased vs Edible Portion (slideplayer 13321894): 10 lb potatoes at 80 percent, 3 oz portions:
     * 42.67, so 42.
     */
    @Test
    void potatoes_10lb_are42WholePortions() {
        Ratio edible = weighed("10 lb AP", Ratio.decimal("0.80")).ep();
        assertThat(edible).isEqualTo(FoodBook.grams("8 lb")).isEqualTo(FoodBook.grams("128 oz"));
        Ratio portions = edible.over(FoodBook.grams("3 oz"));
        assertThat(portions.toDecimal(2)).isEqualByComparingTo("42.67");
        assertThat(portions.floor()).isEqualTo(42);
    }

    /**
     * The same slides: green beans at 88 percent, 5 guests x 3 oz = 15 oz EP; AP not printed, 17.05 oz is a
     * check.
     */
    @Test
    void greenBeans_forFiveGuests() {
        Ratio needed = FoodBook.amount("3 oz").times(Ratio.of(5)).base();
        assertThat(needed).isEqualTo(FoodBook.grams("15 oz"));
        Ratio ounces = weighed("15 oz", Ratio.decimal("0.88")).ap().over(Unit.OUNCE.base());
        assertThat(ounces.toDecimal(2)).isEqualByComparingTo("17.05");
    }

    /** Textbook excerpt without a title: 20 lb green beans at 88 percent: 17.6 lb. */
    @Test
    void greenBeans_20lb() {
        assertThat(weighed("20 lb AP", Ratio.decimal("0.88")).ep()).isEqualTo(FoodBook.grams("17.6 lb"));
    }

    /**
     * The same excerpt: 20 lb shredded cabbage at 79 percent "at least 25.3 lb". 25.316 is needed, so 25.3
     * falls just short: what must suffice is rounded up, to 25.4.
     */
    @Test
    void cabbage_nearestTenthFallsShort_soRoundUp() {
        Ratio yield = Ratio.decimal("0.79");
        Ratio needed = weighed("20 lb", yield).ap().over(Unit.POUND.base());
        assertThat(needed.toDecimal(3)).isEqualByComparingTo("25.316");
        assertThat(needed.toDecimal(1)).isEqualByComparingTo("25.3");
        assertThat(weighed("25.3 lb AP", yield).ep()).isLessThan(FoodBook.grams("20 lb"));
        assertThat(needed.ceilTo(Ratio.of(1, 10))).isEqualTo(Ratio.decimal("25.4"));
    }
}
