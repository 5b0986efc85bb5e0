package croftboard.book;

import croftboard.measure.IsoWeek;
import java.util.List;
import java.util.Map;

/**
 * One kitchen's whole book, free of faults.
 *
 * @param ingredients by id, in id order
 * @param recipes by id, in id order; an id is never both an ingredient and a recipe
 * @param vendors by id, in id order
 * @param lists this week's availability lists, by week
 * @param fingerprint hex digest of all files read, independent of their order
 */
public record Book(Kitchen kitchen, Map<String, Ingredient> ingredients, Map<String, Recipe> recipes,
        Map<String, Vendor> vendors, Seasons seasons, Map<IsoWeek, List<ListedOffer>> lists, List<OnHand> onHand,
        String fingerprint) {

    public Ingredient ingredient(String id) {
        return known(ingredients, id);
    }

    public Recipe recipe(String id) {
        return known(recipes, id);
    }

    public Vendor vendor(String id) {
        return known(vendors, id);
    }

    private static <T> T known(Map<String, T> map, String id) {
        T found = map.get(id);
        if (found == null) {
            throw new IllegalStateException("no [" + id + "] in a book that was read without faults");
        }
        return found;
    }
}
