package croftboard.need;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.book.file.BookReader;
import croftboard.measure.Ratio;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ScaledRecipeTest {
    private static final Book BOOK = BookReader.read(Path.of("src/test/resources/kitchens/small")).orElseThrow();
    private static final Recipe BAKE = BOOK.recipe("lentil-bake");

    @Test
    void tree_putsWhatIsUsedBeforeWhatUsesIt() {
        assertThat(ScaledRecipe.tree(BOOK, BAKE, Ratio.ONE).stream().map(r -> r.recipe().id()))
                .containsExactly("soffritto", "house-marinara", "lentil-bake");
    }

    @Test
    void scalingByAThenByB_isScalingByAb() {
        Random random = new Random(3);
        for (int i = 0; i < 50; i++) {
            Ratio a = Ratio.of(1 + random.nextInt(50), 1 + random.nextInt(20));
            Ratio b = Ratio.of(1 + random.nextInt(50), 1 + random.nextInt(20));
            List<ScaledRecipe> once = ScaledRecipe.tree(BOOK, BAKE, a.times(b));
            List<ScaledRecipe> single = ScaledRecipe.tree(BOOK, BAKE, a);
            for (int r = 0; r < once.size(); r++) {
                assertThat(single.get(r).batches().times(b)).isEqualTo(once.get(r).batches());
                for (int l = 0; l < once.get(r).lines().size(); l++) {
                    assertThat(single.get(r).lines().get(l).ap().times(b)).isEqualTo(once.get(r).lines().get(l).ap());
                }
            }
        }
    }

    @Test
    void linesOfTheTree_addUpToWhatIsBought() {
        Map<String, Ratio> sum = new TreeMap<>();
        ScaledRecipe.tree(BOOK, BAKE, Ratio.of(7, 3)).forEach(r -> r.lines().stream().filter(l -> !l.isRecipe())
                .forEach(l -> sum.merge(l.written().item(), l.ap(), Ratio::plus)));
        Map<String, Ratio> bought = new TreeMap<>();
        new RecipeTree(BOOK).purchased(BAKE).forEach((item, grams) -> bought.put(item, grams.times(Ratio.of(7, 3))));
        assertThat(sum).isEqualTo(bought);
    }

    @Test
    void portions_areBatchesTimesPortionsOfOne() {
        Ratio batches = ScaledRecipe.batchesForPortions(BAKE, Ratio.of(120));
        assertThat(batches).isEqualTo(Ratio.of(15, 4));
        List<ScaledRecipe> tree = ScaledRecipe.tree(BOOK, BAKE, batches);
        assertThat(tree.get(2).portions()).contains(Ratio.of(120));
        assertThat(tree.get(2).wholeSteps()).isEqualTo(Ratio.of(15, 4));
        assertThat(tree.get(0).wholeSteps()).isEqualTo(Ratio.ONE);
        assertThat(tree.get(0).portions()).isEmpty();
    }

    @Test
    void onHand_isUsedUpThroughTheWholeTree() {
        Ratio batches = ScaledRecipe.batchesFromOnHand(BOOK, BAKE, "carrot", Ratio.of(9_000)).orElseThrow();
        Ratio used = ScaledRecipe.tree(BOOK, BAKE, batches).stream().flatMap(r -> r.lines().stream())
                .filter(l -> l.written().item().equals("carrot")).map(ScaledRecipe.Line::ap)
                .reduce(Ratio.ZERO, Ratio::plus);
        assertThat(used).isEqualTo(Ratio.of(9_000));
    }

    @Test
    void onHandOfAComponent_isUsedUpToo() {
        Ratio batches = ScaledRecipe.batchesFromOnHand(BOOK, BAKE, "soffritto", Ratio.of(5_000)).orElseThrow();
        assertThat(ScaledRecipe.tree(BOOK, BAKE, batches).get(0).grams()).isEqualTo(Ratio.of(5_000));
    }

    @Test
    void onHandOfSomethingElse_saysNothing() {
        assertThat(ScaledRecipe.batchesFromOnHand(BOOK, BAKE, "cheddar", Ratio.of(100))).isEmpty();
        assertThat(ScaledRecipe.batchesFromOnHand(BOOK, BAKE, "lentil-bake", Ratio.of(100))).isEmpty();
    }

    @Test
    void loads_countDaysOfAllOfTheEquipment() {
        List<ScaledRecipe.Load> loads = ScaledRecipe.tree(BOOK, BAKE, Ratio.of(8)).get(2).loads();
        // 8 batches: 32 pans in ovens that take 24 a day; 128 L in kettles of 120; 32 pans on 60 of shelves
        assertThat(loads.stream().map(l -> l.equipment().id() + " " + l.units() + " " + l.loads()))
                .containsExactly("oven 32 2", "kettle 128 2", "walk-in 32 1");
    }

    @Test
    void load_thatFillsTheDayExactly_isOne() {
        assertThat(ScaledRecipe.tree(BOOK, BAKE, Ratio.of(6)).get(2).loads().get(0).loads()).isEqualTo(1);
    }

    @Test
    void garlicInMoreOilThanAllElse_isSeen() {
        assertThat(ScaledRecipe.tree(BOOK, BAKE, Ratio.ONE)).noneMatch(ScaledRecipe::garlicInOil);
        assertThat(garlicOil("1 cup olive-oil", "2 cups olive-oil")).isTrue();
        assertThat(garlicOil("2 lb tahini", "1 cup olive-oil")).isFalse();
    }

    /** A component of garlic and two other lines. */
    private static boolean garlicOil(String one, String two) {
        Recipe marinara = BOOK.recipe("house-marinara");
        List<Recipe.Line> lines = List.of(marinara.ingredients().get(2), line(one), line(two));
        Recipe oil = new Recipe("garlic-oil", "Garlic oil", Optional.empty(), marinara.makes(), Optional.empty(), Ratio.ONE,
                4, Recipe.Hold.COLD, 0, Ratio.ZERO, lines, List.of(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty());
        return ScaledRecipe.tree(with(oil), oil, Ratio.ONE).get(0).garlicInOil();
    }

    private static Recipe.Line line(String words) {
        String[] w = words.split(" ");
        return new Recipe.Line(croftboard.measure.Amount.parse(w[0] + " " + w[1]).orElseThrow(), w[2], Optional.empty(),
                false, 0, false, Optional.empty());
    }

    private static Book with(Recipe more) {
        Map<String, Recipe> recipes = new TreeMap<>(BOOK.recipes());
        recipes.put(more.id(), more);
        return new Book(BOOK.kitchen(), BOOK.ingredients(), recipes, BOOK.vendors(), BOOK.seasons(), BOOK.lists(),
                BOOK.onHand(), BOOK.fingerprint());
    }
}
