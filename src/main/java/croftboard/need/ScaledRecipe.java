package croftboard.need;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One recipe of a scaled tree: everything exact, nothing rounded. Scaling by a and then by b is scaling by ab.
 *
 * @param batches standard batches, any fraction
 * @param grams ready to serve
 * @param portions of a dish; empty for components
 * @param wholeSteps the smallest number of batches in whole batch steps that is enough
 * @param loads equipment, in the kitchen's order
 * @param garlicInOil garlic stands in more oil than everything else together
 */
public record ScaledRecipe(Recipe recipe, Ratio batches, Ratio grams, Optional<Ratio> portions, Ratio wholeSteps,
        List<Line> lines, List<Load> loads, boolean garlicInOil) {

    /**
     * @param amount as the recipe writes it, scaled
     * @param ep grams of the edible portion, or of the component
     * @param ap grams as purchased; for components equal to {@code ep}
     */
    public record Line(Recipe.Line written, boolean isRecipe, Amount amount, Ratio ep, Ratio ap) { }

    /** @param units of the equipment, all steps together */
    public record Load(Kitchen.Equipment equipment, Ratio units) {
        /** What the equipment can do: units a day, or a week where it is limited by the week. */
        public int limit() {
            return equipment.perDay().or(equipment::perWeek).orElse(0);
        }

        /** Days (or weeks) of the whole equipment that this fills, rounded up. */
        public long loads() {
            return limit() == 0 ? 0 : units.over(limit()).ceil();
        }
    }

    /**
     * The recipe and every recipe under it, each once with all that the others use of it; what is used comes first.
     *
     * @param batches standard batches of {@code recipe}, above 0
     */
    public static List<ScaledRecipe> tree(Book book, Recipe recipe, Ratio batches) {
        RecipeTree tree = new RecipeTree(book);
        List<String> usersFirst = new ArrayList<>();
        order(book, recipe.id(), usersFirst);
        Map<String, Ratio> wanted = new LinkedHashMap<>();
        wanted.put(recipe.id(), batches);
        List<ScaledRecipe> all = new ArrayList<>();
        for (String id : usersFirst) {
            ScaledRecipe one = of(book, tree, book.recipe(id), wanted.get(id));
            for (Line line : one.lines) {
                if (line.isRecipe) {
                    Ratio part = line.ep.over(book.recipe(line.written.item()).makes().base());
                    wanted.merge(line.written.item(), part, Ratio::plus);
                }
            }
            all.add(0, one);
        }
        return List.copyOf(all);
    }

    /** Depth first, then turned round: no recipe stands before one that uses it. */
    private static void order(Book book, String recipe, List<String> usersFirst) {
        List<String> partsFirst = new ArrayList<>();
        visit(book, recipe, partsFirst);
        for (String id : partsFirst) {
            usersFirst.add(0, id);
        }
    }

    private static void visit(Book book, String recipe, List<String> partsFirst) {
        for (Recipe.Line line : book.recipe(recipe).ingredients()) {
            if (book.recipes().containsKey(line.item()) && !partsFirst.contains(line.item())) {
                visit(book, line.item(), partsFirst);
            }
        }
        partsFirst.add(recipe);
    }

    private static ScaledRecipe of(Book book, RecipeTree tree, Recipe recipe, Ratio batches) {
        List<Line> lines = tree.lines(recipe).stream().map(w -> new Line(w.line(), w.isRecipe(),
                w.line().amount().times(batches), w.ep().times(batches), w.ap().times(batches))).toList();
        return new ScaledRecipe(recipe, batches, recipe.makes().base().times(batches),
                recipe.isDish() ? Optional.of(recipe.portionsPerBatch().times(batches)) : Optional.empty(),
                batches.ceilTo(recipe.batchStep()), lines, loads(book, recipe, batches),
                garlicInOil(tree.edible(recipe)));
    }

    private static List<Load> loads(Book book, Recipe recipe, Ratio batches) {
        List<Load> loads = new ArrayList<>();
        for (Kitchen.Equipment e : book.kitchen().equipment()) {
            Ratio units = recipe.steps().stream().map(s -> s.uses().getOrDefault(e.id(), Ratio.ZERO))
                    .reduce(Ratio.ZERO, Ratio::plus).times(batches);
            if (units.signum() > 0) {
                loads.add(new Load(e, units));
            }
        }
        return loads;
    }

    private static boolean garlicInOil(Map<String, Ratio> edible) {
        Ratio all = edible.values().stream().reduce(Ratio.ZERO, Ratio::plus);
        Ratio oil = sum(edible, "oil");
        return sum(edible, "garlic").signum() > 0 && oil.times(2).compareTo(all) > 0;
    }

    /** Grams of every ingredient that has the word in its id. */
    private static Ratio sum(Map<String, Ratio> grams, String word) {
        return grams.entrySet().stream().filter(e -> Arrays.asList(e.getKey().split("-")).contains(word))
                .map(Map.Entry::getValue).reduce(Ratio.ZERO, Ratio::plus);
    }

    /** Standard batches for so many portions of a dish. @throws java.util.NoSuchElementException for a component */
    public static Ratio batchesForPortions(Recipe dish, Ratio portions) {
        return portions.over(dish.portionsPerBatch());
    }

    /**
     * Standard batches that use up what is on hand of an ingredient (grams as purchased) or a component, through the
     * whole tree; empty when the recipe has none of it.
     */
    public static Optional<Ratio> batchesFromOnHand(Book book, Recipe recipe, String item, Ratio grams) {
        Ratio perBatch = book.ingredients().containsKey(item)
                ? new RecipeTree(book).purchased(recipe).getOrDefault(item, Ratio.ZERO)
                : tree(book, recipe, Ratio.ONE).stream()
                        .filter(r -> r.recipe.id().equals(item) && !item.equals(recipe.id()))
                        .map(ScaledRecipe::grams).findFirst().orElse(Ratio.ZERO);
        return perBatch.signum() == 0 ? Optional.empty() : Optional.of(grams.over(perBatch));
    }
}
