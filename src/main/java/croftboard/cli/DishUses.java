package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.ledger.share.DishSpread;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import java.util.Map;
import java.util.TreeMap;

/** What a portion takes, by the book's recipes of today. */
final class DishUses {
    private DishUses() { }

    static DishSpread.Uses of(Book book) {
        RecipeTree tree = new RecipeTree(book);
        return dish -> {
            Recipe recipe = book.recipes().get(dish);
            Map<String, Ratio> grams = new TreeMap<>();
            if (recipe != null && recipe.isDish() && recipe.worthOnly().isEmpty()) {
                tree.purchased(recipe).forEach((item, batch) -> grams.put(item, batch.over(recipe.portionsPerBatch())));
            }
            return grams;
        };
    }
}
