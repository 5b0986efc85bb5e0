package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.ledger.share.DishSpread;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.CheapestPrices;
import croftboard.need.RecipeTree;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

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

    /** Cents a gram as purchased by the book's cheapest offer around that day; nothing for what costs nothing. */
    static Function<String, Optional<Ratio>> prices(Book book, LocalDate day) {
        CheapestPrices prices = new CheapestPrices(book, IsoWeek.of(day));
        return item -> book.ingredients().containsKey(item) && book.ingredient(item).free() ? Optional.of(Ratio.ZERO)
                : prices.of(item).map(CheapestPrices.Price::centsPerGram);
    }
}
