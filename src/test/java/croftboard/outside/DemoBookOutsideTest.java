package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.FoodBook;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.book.file.BookReader;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.RecipeTree;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo book at the repository's root against what is printed about food, and against common practice. */
class DemoBookOutsideTest {
    private static Book book;
    private static RecipeTree tree;

    @BeforeAll
    static void read() {
        book = BookReader.read(Path.of("")).orElseThrow();
        tree = new RecipeTree(book);
    }

    private static Ratio weight(String ingredient, String cut, String amount) {
        Amount of = FoodBook.amount(amount);
        Ingredient.Measure m = book.ingredient(ingredient).measureFor(of.unit(), Optional.ofNullable(cut))
                .orElseThrow();
        return of.base().over(m.measure().base()).times(m.weighs().base());
    }

    /** USDA SR28, WEIGHT file, by NDB number. */
    @ParameterizedTest(name = "{2} of {0} {1}: {3} g, NDB {4}")
    @CsvSource({
        "salt, , 1 tbsp, 18, 02047", "olive-oil, , 1 cup, 216, 04053", "garlic, , 3 cloves, 9, 11215",
        "tomato-paste, , 1 cup, 262, 11546", "basil-dried, , 1 tbsp, 2.1, 02003", "oregano-dried, , 1 tsp, 1, 02027",
        "thyme-dried, , 1 tsp, 1, 02042", "thyme, leaves, 1 tsp, 0.8, 02049", "parsley, chopped, 1 cup, 60, 11297",
        "butter, , 1 cup, 227, 01145", "honey, , 1 cup, 339, 19296", "carrot, diced, 1 cup, 128, 11124",
        "carrot, sliced, 1 cup, 122, 11124", "carrot, grated, 1 cup, 110, 11124", "celery, diced, 1 cup, 101, 11143",
        "onion-yellow, diced, 1 cup, 160, 11282", "onion-yellow, sliced, 1 cup, 115, 11282",
        "tomato-crushed-can, , 1/2 cup, 121, 11693", "milk-whole, , 1 cup, 244, 01077", "egg, shelled, 1 each, 50, 01123"})
    void householdMeasure_weighsWhatSr28Says(String ingredient, String cut, String amount, BigDecimal grams,
            String ndb) {
        assertThat(weight(ingredient, cut, amount)).isEqualTo(Ratio.of(grams));
    }

    /** Pairs and factors of TM 10-412, the fraction to a tenth of a percent. */
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({"carrot, diced, 0.800", "carrot, grated, 0.821", "cabbage-green, shredded, 0.800",
            "celery, diced, 0.727",
        "summer-squash, sliced, 0.953", "onion-yellow, diced, 0.889"})
    void yield_isTheCards(String ingredient, String cut, BigDecimal fraction) {
        assertThat(book.ingredient(ingredient).yieldOf(Optional.of(cut)).toDecimal(3)).isEqualByComparingTo(fraction);
    }

    /**
     * No. 10 can, 6 lb to 7 lb 5 oz (K-State, ljworld.com 26 August 2009); crushed tomatoes 6 lb 6 oz
     * (docslib 4441417).
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"tomato-crushed-can", "tomato-diced-can", "tomato-paste"})
    void numberTenCan_isInItsPrintedRange(String ingredient) {
        Ratio can = tree.purchasedGrams(book.ingredient(ingredient), FoodBook.amount("1 can"));
        assertThat(can).isBetween(FoodBook.grams("96 oz"), FoodBook.grams("117 oz"));
    }

    @Test
    void crushedTomatoes_6lb6oz() {
        Ratio can = tree.purchasedGrams(book.ingredient("tomato-crushed-can"), FoodBook.amount("1 can"));
        assertThat(can).isEqualTo(FoodBook.grams("102 oz"));
    }

    /** Food Code 3-501.17: cold or hot food made on site is sold within 7 days, the day of making being day 1. */
    @Test
    void lifeOfFoodThatNeedsControl_isAtMostSevenDays() {
        assertThat(book.recipes().values().stream().filter(r -> r.hold() != Recipe.Hold.AMBIENT && r.lifeDays() > 7)
                .map(Recipe::id)).isEmpty();
    }

    /**
     * National Center for Home Food Preservation, garlic in oil (2015): no more than 4 days; an older copy
     * says 7: use 4. Held against every recipe whose own caution speaks of garlic and oil, but where they are
     * cooked into a sauce.
     */
    @Test
    void foodThatWarnsOfGarlicInOil_keepsAtMostFourDays() {
        Pattern warning = Pattern.compile("garlic[^.]*\\b(oil|oily)\\b");
        Map<String, Integer> lives = new TreeMap<>();
        for (Recipe r : book.recipes().values()) {
            String said = (r.caution().orElse("") + " " + r.holding().orElse("")).toLowerCase(Locale.ROOT);
            if (warning.matcher(said).find() && !said.contains("cooked in oil")) {
                lives.put(r.id(), r.lifeDays());
            }
        }
        assertThat(lives).hasSizeGreaterThan(5);
        assertThat(lives).allSatisfy((id, life) -> assertThat(life).as(id).isLessThanOrEqualTo(4));
    }

    /** Caterers allow 3 to 5 percent over the guarantee (studylib.net/doc/8567024). */
    @Test
    void overageOfEvents_isThreeToFivePercent() {
        assertThat(book.seasons().events()).isNotEmpty()
                .allMatch(e -> e.overage().compareTo(Ratio.of(3, 100)) >= 0
                        && e.overage().compareTo(Ratio.of(5, 100)) <= 0);
    }

    /** 21 CFR 101.91 and standards on claims: no name or step says that food is free of something. */
    @Test
    void noText_claimsThatFoodIsFreeOfSomething() {
        Pattern claim = Pattern.compile("(gluten|nut|dairy|egg|milk|wheat|soy|allergen)[- ]free|halal|kosher");
        book.recipes().values().forEach(r -> assertThat((r.id() + " " + r.name() + " " + r.caution().orElse("") + " "
                + r.steps()).toLowerCase(Locale.ROOT)).doesNotContainPattern(claim));
        book.ingredients().values().forEach(i -> assertThat((i.id() + " " + i.name() + " " + i.label())
                .toLowerCase(Locale.ROOT)).doesNotContainPattern(claim));
    }

    /** Edition 5 of the allergen guidance (6 January 2025): coconut and chestnut are no tree nuts any more. */
    @Test
    void coconutAndChestnut_areNotAmongTheAllergens() {
        book.ingredients().values().forEach(i -> assertThat(i.allergens().contains())
                .doesNotContain("coconut", "chestnut", "tree-nut", "nuts", "fish", "shellfish"));
        assertThat(book.ingredient("coconut-milk-can").allergens().contains()).isEmpty();
    }

    /**
     * Eight servings of a tomato sauce, a cup each, take about one tablespoon of salt: common practice, no
     * source.
     */
    @Test
    void marinara_hasAboutATablespoonOfSaltForEightServings() {
        Recipe marinara = book.recipe("house-marinara");
        Ratio cups = marinara.makes().base().over(marinara.cup().orElseThrow().base());
        Ratio tablespoons = tree.edible(marinara).get("salt").over(weight("salt", null, "1 tbsp"));
        assertThat(tablespoons.over(cups).times(8).toDouble()).isBetween(0.6, 1.4);
    }

    /**
     * Garlic goes in last, it burns: after the onion, for the last minute of frying. Common practice, no
     * source.
     */
    @Test
    void marinara_takesItsGarlicAfterTheOnion() {
        Recipe marinara = book.recipe("house-marinara");
        List<String> order = marinara.ingredients().stream().map(Recipe.Line::item).toList();
        assertThat(order.indexOf("garlic")).isGreaterThan(order.indexOf("onion-yellow"));
        String first = marinara.steps().get(0).text().toLowerCase(Locale.ROOT);
        assertThat(first.indexOf("garlic")).isGreaterThan(first.indexOf("onion"));
        assertThat(first).contains("last minute");
    }

    /**
     * A dried herb stands for about twice to three times its volume of fresh in a cooked dish: a half is one
     * rule, a third the other. Common practice, no source.
     */
    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource({"basil-dried, basil, chopped", "thyme-dried, thyme, leaves"})
    void driedHerb_isAThirdToAHalfOfTheFresh(String dried, String fresh, String cut) {
        Ratio byWeight = book.ingredient(fresh).substitutes().stream().filter(s -> s.use().equals(dried)).findFirst()
                .orElseThrow().ratio();
        Ratio byVolume = byWeight.times(weight(fresh, cut, "1 tbsp")).over(weight(dried, null, "1 tbsp"));
        assertThat(byVolume.toDouble()).isBetween(0.30, 0.55);
    }

    /**
     * The marinara's dried herbs, taken as half of fresh, come to a quarter cup of fresh each for ten quarts:
     * seasoning, not a mistake of units. Common practice, no source.
     */
    @Test
    void marinara_driedHerbs_areATablespoonForFiveQuarts() {
        Recipe marinara = book.recipe("house-marinara");
        Ratio quarts = marinara.makes().base().over(marinara.cup().orElseThrow().base()).over(4);
        for (String herb : List.of("oregano-dried", "basil-dried")) {
            Amount line = marinara.ingredients().stream().filter(l -> l.item().equals(herb)).findFirst()
                    .orElseThrow().amount();
            assertThat(line.in(Unit.TABLESPOON).value().over(quarts).times(5).toDouble()).isBetween(0.8, 1.2);
        }
    }
}
