package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.FoodBook;
import croftboard.book.Ingredient;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.RecipeTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cans hold, through the function that weighs packs and counted stock. */
class CanSizeOutsideTest {
    /** Grams of that many cans when a can weighs so much. */
    private static Ratio cans(String count, String weighs) {
        Ingredient food = FoodBook.food("canned").purchasedMeasure("1 can", weighs).build();
        Book book = new FoodBook().build();
        return new RecipeTree(book).purchasedGrams(food, FoodBook.amount(count + " cans"));
    }

    private static Ratio ounces(Ratio grams) {
        return grams.over(Unit.OUNCE.base());
    }

    /**
     * No. 10 can: 6 lb to 7 lb 5 oz, K-State Research and Extension (ljworld.com, 26 August 2009). Products:
     * a quarter of the 4-can weights on card Q-G-1(1), Armed Forces Recipe Service 1986; tomatoes from New
     * School Cuisine, lentil soup.
     */
    @ParameterizedTest(name = "No. 10 of {0}: {1} oz")
    @CsvSource({"green beans, 101", "beets, 104", "carrots, 105", "corn, 106", "potatoes, 102", "spinach, 98",
        "crushed tomatoes, 102"})
    void numberTen_holds6lbTo7lb5oz(String product, int ounces) {
        assertThat(ounces(cans("1", ounces + " oz"))).isBetween(Ratio.of(96), Ratio.of(117));
        assertThat(ounces(cans("4", ounces + " oz"))).isEqualTo(Ratio.of(4L * ounces));
    }

    /**
     * Weights in SR28: 29 oz can of tomato puree 822 g (NDB 11547), 6 oz can of tomato paste 170 g (NDB
     * 11546).
     */
    @ParameterizedTest(name = "{0} is {1} g")
    @CsvSource({"29 oz, 822", "6 oz, 170"})
    void can_weighsWhatItsOuncesSay(String contents, int grams) {
        assertThat(cans("1", contents).round()).isEqualTo(grams);
    }

    /** No. 2-1/2 can: 26 to 30 oz, 3 1/2 cups (K-State): the 28 and the 29 oz can are both of that size. */
    @ParameterizedTest(name = "{0} is a No. 2-1/2")
    @CsvSource({"28 oz", "29 oz"})
    void numberTwoAndAHalf_covers28And29Ounces(String contents) {
        assertThat(cans("1", contents)).isBetween(FoodBook.grams("26 oz"), FoodBook.grams("30 oz"));
    }

    /** 28 oz has no row in SR28: 793.8 g by definition, 3.18 cups of puree at 250 g a cup (check only). */
    @Test
    void can28Ounces_is793Point8Grams_3Point18CupsOfPuree() {
        Ratio grams = cans("1", "28 oz");
        assertThat(grams.toDecimal(1)).isEqualByComparingTo("793.8");
        assertThat(grams.over(250).toDecimal(2)).isEqualByComparingTo("3.18");
    }

    /**
     * No. 300 can, 14 oz, Food Buying Guide 2-1: artichoke bottoms 7.7 oz drained in 1 3/8 cups, hearts 8.0
     * oz in 1 1/8.
     */
    @ParameterizedTest(name = "{0}: {1} oz drained, {2} cups")
    @CsvSource({"bottoms, 7.7, 1-3/8", "hearts, 8.0, 1-1/8"})
    void number300_drained(String product, String drained, String cups) {
        Ratio yield = Ratio.decimal(drained).over(14);
        Book book = new FoodBook().food(FoodBook.food("artichoke").cut("drained", yield)
                .purchasedMeasure("1 can", "14 oz")
                .measure("1 cup", Ratio.decimal(drained).over(FoodBook.amount(cups + " cups").value())
                        .toDecimal(6) + " oz"))
                .recipe("by-can", "1 lb", "2 cans artichoke, drained")
                .recipe("by-cup", "1 lb", cups + " cups artichoke, drained").build();
        RecipeTree tree = new RecipeTree(book);
        RecipeTree.Weighed byCan = tree.lines(book.recipe("by-can")).get(0);
        assertThat(ounces(byCan.ep())).isEqualTo(Ratio.decimal(drained).times(2));
        assertThat(ounces(byCan.ap())).isEqualTo(Ratio.of(28));
        // A can's cups ask for one can, but for the sixth decimal of a cup's weight.
        assertThat(ounces(tree.lines(book.recipe("by-cup")).get(0).ap()).toDecimal(3)).isEqualByComparingTo("14.000");
    }
}
