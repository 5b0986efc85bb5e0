package croftboard.safety;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.RandomBook;
import croftboard.book.Recipe;
import croftboard.safety.DishStatement.Known;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A statement is never stronger than its weakest ingredient, in every recipe of several hundred random books. */
class StatementOnRandomBooksTest {
    private static final int BOOKS = 400;
    private static final List<String> WORDS = List.of("milk", "egg", "wheat", "soy", "sesame", "walnut",
            "fish", "fish-cod",
            "peanut");

    private interface Check {
        void of(DishStatement statement, Set<Ingredient> leaves);
    }

    private static void eachRecipe(Check check) {
        int recipes = 0;
        for (int seed = 1; seed <= BOOKS; seed++) {
            Book book = RandomBook.of(seed);
            for (Recipe recipe : book.recipes().values()) {
                check.of(DishStatement.of(book, recipe.id()), leaves(book, recipe));
                recipes++;
            }
        }
        assertThat(recipes).isGreaterThan(10 * BOOKS);
    }

    private static Set<Ingredient> leaves(Book book, Recipe top) {
        Set<Ingredient> leaves = new LinkedHashSet<>();
        Deque<Recipe> open = new ArrayDeque<>(List.of(top));
        while (!open.isEmpty()) {
            for (Recipe.Line line : open.pop().ingredients()) {
                if (book.recipes().containsKey(line.item())) {
                    open.push(book.recipe(line.item()));
                } else {
                    leaves.add(book.ingredient(line.item()));
                }
            }
        }
        return leaves;
    }

    private static Known absence(Ingredient leaf, String word) {
        return DishStatement.ofIngredients(List.of(leaf)).lists(word);
    }

    @Test
    void everyKnownAllergenOfEveryPart_isPrinted() {
        eachRecipe((statement, leaves) -> {
            Set<String> known = leaves.stream().flatMap(i -> i.allergens().contains().stream())
                    .collect(Collectors.toSet());
            assertThat(statement.contains()).containsExactlyInAnyOrderElementsOf(known);
            for (String word : known) {
                String spoken = word.startsWith("fish-") ? word.substring(5) : word;
                assertThat(statement.sentence()).contains(spoken);
                assertThat(statement.lists(word)).isEqualTo(Known.YES);
            }
        });
    }

    @Test
    void everyPartNotWhollyStated_isNamed() {
        eachRecipe((statement, leaves) -> {
            Set<String> open = leaves.stream().filter(i -> !i.allergens().othersKnown()).map(Ingredient::name)
                    .collect(Collectors.toSet());
            assertThat(statement.notStated()).containsExactlyInAnyOrderElementsOf(open);
            open.forEach(name -> assertThat(statement.sentence()).contains("not stated").contains(name));
        });
    }

    @Test
    void absence_isClaimedOnlyWhenEveryPartClaimsIt() {
        eachRecipe((statement, leaves) -> {
            for (String word : WORDS) {
                boolean all = leaves.stream().allMatch(i -> absence(i, word) == Known.NO);
                boolean some = leaves.stream().anyMatch(i -> absence(i, word) == Known.YES);
                assertThat(statement.lists(word)).isEqualTo(some ? Known.YES : all ? Known.NO : Known.UNKNOWN);
            }
        });
    }

    @Test
    void diet_isClaimedOnlyWhenEveryPartClaimsIt() {
        eachRecipe((statement, leaves) -> {
            List<Known> parts = leaves.stream().map(i -> DishStatement.ofIngredients(List.of(i)).vegan()).toList();
            assertThat(statement.vegan()).isEqualTo(weakest(parts));
            List<Known> vegetarian = leaves.stream()
                    .map(i -> DishStatement.ofIngredients(List.of(i)).vegetarian()).toList();
            assertThat(statement.vegetarian()).isEqualTo(weakest(vegetarian));
        });
    }

    private static Known weakest(List<Known> parts) {
        return parts.contains(Known.NO) ? Known.NO : parts.contains(Known.UNKNOWN) ? Known.UNKNOWN : Known.YES;
    }

    @Test
    void vegan_isAlsoVegetarian() {
        eachRecipe((statement, leaves) -> {
            if (statement.vegan() == Known.YES) {
                assertThat(statement.vegetarian()).isEqualTo(Known.YES);
            }
        });
    }
}
