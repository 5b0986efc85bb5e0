package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.need.RecipeTree;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/** Grams as purchased of each item in one standard batch, through the whole recipe; reckoned once a recipe. */
final class Purchased {
    private final Book book;
    private final RecipeTree tree;
    private final Map<String, Map<String, Double>> byRecipe = new HashMap<>();

    Purchased(Book book) {
        this.book = book;
        this.tree = new RecipeTree(book);
    }

    /** Nothing for a recipe that is unknown or states no ingredients. */
    Map<String, Double> of(String recipe) {
        return byRecipe.computeIfAbsent(recipe, this::reckoned);
    }

    private Map<String, Double> reckoned(String id) {
        Map<String, Double> grams = new TreeMap<>();
        Recipe recipe = book.recipes().get(id);
        if (recipe != null && recipe.worthOnly().isEmpty()) {
            tree.purchased(recipe).forEach((item, g) -> grams.put(item, g.toDouble()));
        }
        return grams;
    }
}
