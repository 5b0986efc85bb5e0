package croftboard.paper.served;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The ingredients of a packed dish as its label lists them (21 CFR 101.4): common names in descending order of weight as put
 * in, water too. What the kitchen makes itself is merged into the one list by weight; bought compound food stands by its name
 * with its own ingredients in brackets. What is at most 2 % may stand last, behind "contains 2% or less of".
 */
final class IngredientList {
    /** The largest threshold that the rule allows. */
    static final Ratio TAIL = Ratio.of(2, 100);
    private final Map<String, Ratio> grams = new LinkedHashMap<>();

    private IngredientList() { }

    /** @param grams what was put in */
    record Entry(String name, Ratio grams) { }

    static IngredientList of(Book book, Recipe dish, Map<String, String> swaps) {
        IngredientList list = new IngredientList();
        list.collect(book, new RecipeTree(book), dish, Ratio.ONE, swaps);
        return list;
    }

    private void collect(Book book, RecipeTree tree, Recipe recipe, Ratio batches, Map<String, String> swaps) {
        for (RecipeTree.Weighed w : tree.lines(recipe)) {
            Recipe part = w.isRecipe() ? book.recipe(w.line().item()) : null;
            if (part != null) {
                collect(book, tree, part, batches.times(w.ep()).over(part.makes().base()), swaps);
                continue;
            }
            Ingredient own = book.ingredient(w.line().item());
            String use = w.line().planSubstitute() ? swaps.getOrDefault(own.id(), own.id()) : own.id();
            Ratio ratio = own.substitutes().stream().filter(s -> s.use().equals(use)).map(Ingredient.Substitute::ratio)
                    .findFirst().orElse(Ratio.ONE);
            add(book.ingredient(use), w.ep().times(batches).times(use.equals(own.id()) ? Ratio.ONE : ratio));
        }
    }

    private void add(Ingredient used, Ratio weight) {
        grams.merge(used.label() + used.madeOf().map(m -> " (" + m + ")").orElse(""), weight, Ratio::plus);
    }

    /** In descending weight; equal weights by name. */
    List<Entry> entries() {
        return grams.entrySet().stream().map(e -> new Entry(e.getKey(), e.getValue()))
                .sorted(Comparator.comparing(Entry::grams).reversed().thenComparing(Entry::name)).toList();
    }

    private Ratio total() {
        return grams.values().stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    /** What may stand in the tail. */
    List<Entry> tail() {
        Ratio most = total().times(TAIL);
        return entries().stream().filter(e -> e.grams().compareTo(most) <= 0).toList();
    }

    /** {@code Ingredients: pasta, tomato, oil, basil, contains 2% or less of: salt, pepper.} */
    String sentence() {
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
