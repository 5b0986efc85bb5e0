package croftboard.paper.served;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import croftboard.safety.DishStatement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The ingredients of a packed dish as its label lists them (21 CFR 101.4): common names in descending order of weight as put
 * in, water too. What the kitchen makes itself is merged into the one list by weight; bought compound food stands by its name
 * with its own ingredients in brackets. What is at most 2 % may stand last, behind "contains 2% or less of". Added water counts
 * as far as it stays: what a recipe loses in cooking is taken from its water first (FDA's food labeling guide says that water
 * is an ingredient unless it is removed again, from memory).
 */
public final class IngredientList {
    /** The largest threshold that the rule allows. */
    static final Ratio TAIL = Ratio.of(2, 100);
    private final Map<String, Ratio> grams = new LinkedHashMap<>();

    private IngredientList() { }

    /** @param grams what was put in */
    public record Entry(String name, Ratio grams) { }

    public static IngredientList of(Book book, Recipe dish, Map<String, String> swaps) {
        IngredientList list = new IngredientList();
        list.collect(book, new RecipeTree(book), dish, true, Ratio.ONE, swaps);
        return list;
    }

    private void collect(Book book, RecipeTree tree, Recipe recipe, boolean dish, Ratio batches,
            Map<String, String> swaps) {
        List<RecipeTree.Weighed> lines = tree.lines(recipe);
        Ratio stays = waterThatStays(book, recipe, lines);
        for (RecipeTree.Weighed w : lines) {
            Recipe part = w.isRecipe() ? book.recipe(w.line().item()) : null;
            if (part != null) {
                collect(book, tree, part, false, batches.times(w.ep()).over(part.makes().base()), swaps);
            } else {
                Ingredient own = book.ingredient(w.line().item());
                add(book, w, own, DishStatement.used(w.line(), dish, swaps), batches.times(own.free() ? stays : Ratio.ONE));
            }
        }
    }

    /** Share of the recipe's added water that is still there when it is done. */
    private static Ratio waterThatStays(Book book, Recipe recipe, List<RecipeTree.Weighed> lines) {
        Ratio all = lines.stream().map(RecipeTree.Weighed::ep).reduce(Ratio.ZERO, Ratio::plus);
        Ratio water = lines.stream().filter(w -> !w.isRecipe() && book.ingredient(w.line().item()).free())
                .map(RecipeTree.Weighed::ep).reduce(Ratio.ZERO, Ratio::plus);
        Ratio left = water.minus(all.times(recipe.loss())).max(Ratio.ZERO);
        return water.signum() == 0 ? Ratio.ONE : left.over(water);
    }

    private void add(Book book, RecipeTree.Weighed w, Ingredient own, String use, Ratio times) {
        Ratio ratio = own.substitutes().stream().filter(s -> s.use().equals(use)).map(Ingredient.Substitute::ratio)
                .findFirst().filter(r -> !use.equals(own.id())).orElse(Ratio.ONE);
        add(book.ingredient(use), w.ep().times(times).times(ratio));
    }

    /** Nothing of it: nothing is said of it. */
    private void add(Ingredient used, Ratio weight) {
        if (weight.signum() <= 0) {
            return;
        }
        grams.merge(used.label() + used.madeOf().map(m -> " (" + m + ")").orElse(""), weight, Ratio::plus);
    }

    /** In descending weight; equal weights by name. */
    public List<Entry> entries() {
        return grams.entrySet().stream().map(e -> new Entry(e.getKey(), e.getValue()))
                .sorted(Comparator.comparing(Entry::grams).reversed().thenComparing(Entry::name)).toList();
    }

    private Ratio total() {
        return grams.values().stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    /** What may stand in the tail. */
    public List<Entry> tail() {
        Ratio most = total().times(TAIL);
        return entries().stream().filter(e -> e.grams().compareTo(most) <= 0).toList();
    }

    /** {@code Ingredients: pasta, tomato, oil, basil, contains 2% or less of: salt, pepper.} */
    public String sentence() {
        List<Entry> head = new ArrayList<>(entries());
        List<Entry> tail = tail();
        head.removeAll(tail);
        String list = names(head);
        if (!tail.isEmpty()) {
            list += (head.isEmpty() ? "" : ", ") + "contains 2% or less of: " + names(tail);
        }
        return "Ingredients: " + list + ".";
    }

    private static String names(List<Entry> entries) {
        return entries.stream().map(Entry::name).collect(Collectors.joining(", "));
    }
}
