package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import croftboard.safety.DishStatement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What one standard batch of a recipe needs in this week, with substitutes that the plan may use already put in.
 *
 * @param needs grams AP of bought items, with the days before the batch on which they are cut or thawed
 * @param parts grams of components, by component id
 * @param stapleCents exact cents of staples used directly
 * @param stations exact active minutes a batch, by station
 * @param perPortion exact minutes a portion, by station
 * @param equipment exact units a batch, by equipment id
 * @param swapped ingredients replaced by their declared substitute this week
 */
record RecipeFacts(List<ItemNeed> needs, Map<String, Ratio> parts, Ratio stapleCents, Map<String, Ratio> stations,
        Map<String, Ratio> perPortion, Map<String, Ratio> equipment, Map<String, String> swapped) {

    record ItemNeed(String item, int ahead, Ratio grams) { }

    /** Reads the facts of all recipes of a book once. */
    static final class Reader {
        private final Book book;
        private final Market market;
        private final WeekIndex index;
        private final RecipeTree tree;
        private final Map<String, Map<String, String>> forced;
        private final Map<String, RecipeFacts> known = new HashMap<>();

        /** @param forced by recipe: substitutes used on every line of the recipe itself, whatever it lets the plan do */
        Reader(Book book, Market market, WeekIndex index, Map<String, Map<String, String>> forced) {
            this.forced = forced;
            this.book = book;
            this.market = market;
            this.index = index;
            this.tree = new RecipeTree(book);
        }

        RecipeFacts of(String recipe) {
            return known.computeIfAbsent(recipe, id -> read(book.recipe(id)));
        }

        private RecipeFacts read(Recipe recipe) {
            Map<String, ItemNeed> needs = new TreeMap<>();
            Map<String, Ratio> parts = new TreeMap<>();
            Map<String, String> swapped = new TreeMap<>();
            Ratio staples = Ratio.ZERO;
            for (RecipeTree.Weighed w : tree.lines(recipe)) {
                if (w.isRecipe()) {
                    parts.merge(w.line().item(), w.ep(), Ratio::plus);
                    continue;
                }
                Bought bought = bought(w, forced.getOrDefault(recipe.id(), Map.of()), swapped);
                if (bought.ingredient.isStaple() || bought.ingredient.free()) {
                    staples = staples.plus(market.centsPerGram(bought.ingredient.id()).times(bought.grams));
                } else {
                    int ahead = Math.max(w.line().aheadDays(), bought.ingredient.thawDays());
                    needs.merge(bought.ingredient.id() + " " + ahead,
                            new ItemNeed(bought.ingredient.id(), ahead, bought.grams),
                            (a, b) -> new ItemNeed(a.item(), a.ahead(), a.grams().plus(b.grams())));
                }
            }
            return new RecipeFacts(new ArrayList<>(needs.values()), parts, staples, minutes(recipe, true),
                    minutes(recipe, false), equipment(recipe), swapped);
        }

        private record Bought(Ingredient ingredient, Ratio grams) { }

        /** The ingredient itself, or its first declared substitute where the line allows it and nobody sells it. */
        private Bought bought(RecipeTree.Weighed w, Map<String, String> mustSwap, Map<String, String> swapped) {
            Ingredient own = book.ingredient(w.line().item());
            if (mustSwap.containsKey(own.id())) {
                swapped.put(own.id() + DishStatement.EVERY_LINE, mustSwap.get(own.id()));
                return instead(w, own.substitutes().stream().filter(s -> s.use().equals(mustSwap.get(own.id()))).findFirst()
                        .orElseThrow());
            }
            boolean gone = w.line().planSubstitute() && !own.substitutes().isEmpty() && !own.isStaple()
                    && !market.reachable(index.item.get(own.id()), own.keepsDays(), 0, Calendar.DAYS - 1);
            if (!gone) {
                return new Bought(own, w.ap());
            }
            swapped.put(own.id(), own.substitutes().get(0).use());
            return instead(w, own.substitutes().get(0));
        }

        private Bought instead(RecipeTree.Weighed w, Ingredient.Substitute other) {
            Ingredient used = book.ingredient(other.use());
            return new Bought(used, w.ep().times(other.ratio()).over(used.yieldOf(other.cut())));
        }

        private static Map<String, Ratio> minutes(Recipe recipe, boolean active) {
            Map<String, Ratio> sum = new TreeMap<>();
            recipe.steps().forEach(s -> s.station().ifPresent(
                    st -> sum.merge(st, active ? s.activeMinutes() : s.perPortionMinutes(), Ratio::plus)));
            return sum;
        }

        private static Map<String, Ratio> equipment(Recipe recipe) {
            Map<String, Ratio> sum = new TreeMap<>();
            recipe.steps().forEach(s -> s.uses().forEach((e, units) -> sum.merge(e, units, Ratio::plus)));
            return sum;
        }

        /** Exact list-price food cost of one portion, through the whole tree: cheapest offers of the week, cents. */
        Ratio portionCents(Recipe dish) {
            Ratio batch = Ratio.ZERO;
            for (Map.Entry<String, Ratio> e : tree.purchased(dish).entrySet()) {
                batch = batch.plus(market.centsPerGram(e.getKey()).times(e.getValue()));
            }
            return batch.over(dish.portionsPerBatch());
        }

        /** Every swap anywhere in the recipe's tree. */
        Map<String, String> swaps(String recipe) {
            Map<String, String> all = new TreeMap<>(of(recipe).swapped());
            new TreeSet<>(of(recipe).parts().keySet()).forEach(p -> all.putAll(swaps(p)));
            return all;
        }
    }
}
