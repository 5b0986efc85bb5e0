package croftboard.need;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Scaling by a and then by b is scaling by ab, through the whole recipe tree, to the last fraction of a gram. */
class ScalingOnRandomBooksTest {
    private static final int BOOKS = 300;

    private static Recipe scaled(Recipe r, Ratio factor) {
        List<Recipe.Line> lines = r.ingredients().stream().map(l -> new Recipe.Line(l.amount().times(factor), l.item(),
                l.cut(), l.asPurchased(), l.aheadDays(), l.planSubstitute(), l.note())).toList();
        return new Recipe(r.id(), r.name(), r.sale(), r.makes().times(factor), r.cup(), r.batchStep(), r.lifeDays(),
                r.hold(), r.leadDays(), r.loss(), lines, r.steps(), r.scaling(), r.doneness(), r.holding(), r.caution(),
                r.worthOnly());
    }

    private static Map<String, Ratio> times(Map<String, Ratio> grams, Ratio factor) {
        Map<String, Ratio> all = new TreeMap<>();
        grams.forEach((item, g) -> all.put(item, g.times(factor)));
        return all;
    }

    @Test
    void scalingTwice_isScalingByTheProduct() {
        for (int seed = 1; seed <= BOOKS; seed++) {
            Random g = new Random(seed);
            Book book = RandomBook.of(seed);
            RecipeTree tree = new RecipeTree(book);
            Ratio a = Ratio.of(1 + g.nextInt(700), 1 + g.nextInt(100));
            Ratio b = Ratio.of(1 + g.nextInt(700), 1 + g.nextInt(100));
            for (Recipe recipe : book.recipes().values()) {
                Recipe twice = scaled(scaled(recipe, a), b);
                Recipe once = scaled(recipe, a.times(b));
                assertThat(twice).isEqualTo(once);
                assertThat(tree.purchased(twice)).isEqualTo(times(tree.purchased(recipe), a.times(b)));
                assertThat(tree.edible(twice)).isEqualTo(times(tree.edible(recipe), a.times(b)));
            }
        }
    }

    @Test
    void purchased_isNeverLessThanEdible_andFollowsTheYields() {
        for (int seed = 1; seed <= BOOKS; seed++) {
            Book book = RandomBook.of(seed);
            RecipeTree tree = new RecipeTree(book);
            for (Recipe recipe : book.recipes().values()) {
                Map<String, Ratio> edible = tree.edible(recipe);
                tree.purchased(recipe).forEach((item, ap) -> {
                    Ratio yield = book.ingredient(item).cuts().isEmpty() ? Ratio.ONE
                            : book.ingredient(item).cuts().get("diced").yield();
                    assertThat(edible.get(item)).isEqualTo(ap.times(yield));
                });
            }
        }
    }
}
