package croftboard.outside;

import static croftboard.book.FoodBook.food;
import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.FoodBook;
import croftboard.book.Ingredient.Origin;
import croftboard.safety.DishStatement.Known;
import croftboard.safety.DishStatement;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The Contains line: 21 U.S.C. 343(w), FDA questions and answers, edition 5 of the guidance (6 January 2025). */
class AllergenOutsideTest {
    private static DishStatement dish(FoodBook.Food... foods) {
        FoodBook book = new FoodBook();
        String[] lines = new String[foods.length];
        for (int i = 0; i < foods.length; i++) {
            book.food(foods[i]);
            lines[i] = "1 lb " + foods[i].build().id();
        }
        Book built = book.recipe("dish", "1 lb", lines).build();
        return DishStatement.of(built, "dish");
    }

    private static DishStatement published() {
        return dish(food("butter").from(Origin.DAIRY).contains("milk"), food("wheat-flour").contains("wheat"),
                food("walnuts").contains("walnut"), food("cod").from(Origin.FISH).contains("fish-cod"),
                food("shrimp").from(Origin.SHELLFISH).contains("shellfish-shrimp"), food("coconut"));
    }

    /** Appendix I (pennstatefoodsafety) and FDA Q&A: milk, wheat, walnuts, cod, shrimp, all of them, once. */
    @Test
    void contains_namesAllByKind() {
        assertThat(published().sentence()).isEqualTo("Contains cod, milk, shrimp, walnut, wheat.");
    }

    /**
     * The same: coconut was dropped from the tree nuts in edition 5; nuts, fish and crustaceans are never
     * named bare.
     */
    @ParameterizedTest(name = "no {0}")
    @ValueSource(strings = {"coconut", "tree nut", "nuts", "fish", "shellfish", "crustacean", "dairy"})
    void contains_namesNoGroupAndNoCoconut(String word) {
        assertThat(published().sentence().toLowerCase(Locale.ROOT)).doesNotContain(word);
    }

    /** FDA Q&A: a Contains line names all major allergens of the food, also those of parts of parts. */
    @Test
    void contains_reachesThroughEveryPart() {
        Book book = new FoodBook().food(food("tahini").contains("sesame"))
                .food(food("soy-sauce").contains("soy", "wheat"))
                .food(food("kale")).recipe("paste", "1 lb", "1 lb tahini")
                .recipe("dressing", "2 lb", "1 lb paste", "1 lb soy-sauce")
                .recipe("salad", "3 lb", "1 lb dressing", "2 lb kale").build();
        assertThat(DishStatement.of(book, "salad").sentence()).isEqualTo("Contains sesame, soy, wheat.");
    }

    /** The nine of FALCPA (P.L. 108-282) and FASTER (P.L. 117-11): each is printed and each is found. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"milk, milk", "egg, egg", "fish-trout, trout", "shellfish-crab, crab", "almond, almond", "wheat, wheat",
        "peanut, peanut", "soy, soy", "sesame, sesame", "pine-nut, pine nut", "brazil-nut, brazil nut"})
    void eachOfTheNine_isSpoken(String word, String spoken) {
        DishStatement statement = dish(food("thing").contains(word));
        assertThat(statement.sentence()).isEqualTo("Contains " + spoken + ".");
        assertThat(statement.lists(word)).isEqualTo(Known.YES);
    }

    /** Edition 5, 6 January 2025 (FDA FAQ): milk of other ruminants and eggs of other birds count and are named by animal. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"milk-goat, goat milk, milk", "milk-sheep, sheep milk, milk", "egg-duck, duck egg, egg"})
    void otherAnimals_areNamed_andCountAsTheGroup(String word, String spoken, String group) {
        DishStatement statement = dish(food("thing").from(Origin.DAIRY).contains(word));
        assertThat(statement.sentence()).isEqualTo("Contains " + spoken + ".");
        assertThat(statement.lists(group)).isEqualTo(Known.YES);
        assertThat(statement.vegan()).isEqualTo(Known.NO);
    }

    /**
     * What is not stated is said beside what is; absence is never claimed then (design: unknown is never
     * "free of").
     */
    @Test
    void unknown_isSaid_andClaimsNothing() {
        DishStatement statement = dish(food("butter").from(Origin.DAIRY).contains("milk"),
                food("wheat-flour").contains("wheat"), food("curry-powder").othersNotStated());
        assertThat(statement.sentence()).isEqualTo("Contains milk, wheat. Other allergens not stated: curry powder.");
        assertThat(statement.lists("milk")).isEqualTo(Known.YES);
        assertThat(statement.lists("sesame")).isEqualTo(Known.UNKNOWN);
    }

    /**
     * ISO 23662:2021 as listed: ovo-lacto vegetarian allows milk, eggs and bee products; vegan allows none of
     * them.
     */
    @ParameterizedTest(name = "{0}: vegan {1}, vegetarian {2}")
    @CsvSource({"PLANT, YES, YES", "FUNGUS, YES, YES", "MINERAL, YES, YES", "MICROBE, YES, YES", "DAIRY, NO, YES",
        "EGG, NO, YES", "HONEY, NO, YES", "MEAT, NO, NO", "POULTRY, NO, NO", "FISH, NO, NO", "SHELLFISH, NO, NO",
        "UNKNOWN, UNKNOWN, UNKNOWN"})
    void diet_followsTheOrigin(Origin origin, Known vegan, Known vegetarian) {
        DishStatement statement = dish(food("kale"), food("thing").from(origin));
        assertThat(statement.vegan()).isEqualTo(vegan);
        assertThat(statement.vegetarian()).isEqualTo(vegetarian);
    }

    /** Vegan is never an allergen statement: a vegan dish may hold wheat, soy, sesame and nuts. */
    @Test
    void veganDish_stillContainsItsAllergens() {
        DishStatement statement = dish(food("bun").contains("wheat"), food("cashew-cream").contains("cashew"));
        assertThat(statement.vegan()).isEqualTo(Known.YES);
        assertThat(statement.sentence()).isEqualTo("Contains cashew, wheat.");
    }
}
