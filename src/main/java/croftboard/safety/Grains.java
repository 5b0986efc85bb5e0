package croftboard.safety;

import croftboard.book.Ingredient;
import croftboard.safety.DishStatement.Known;
import java.util.Collection;
import java.util.List;

/**
 * Whether a recipe lists wheat, rye or barley: for the staff's grid only, in these words. It is no claim: a claim needs a
 * person's word on source, contact and 20 parts per million (21 CFR 101.91).
 */
public final class Grains {
    private static final List<String> LISTED = List.of("wheat", "rye", "barley");

    private Grains() { }

    /** UNKNOWN when none is listed but something is not stated. */
    public static Known listed(Collection<Ingredient> ingredients) {
        boolean any = ingredients.stream().anyMatch(i -> i.allergens().contains().contains("wheat")
                || LISTED.stream().anyMatch(i.glutenGrains().contains()::contains));
        boolean all = ingredients.stream().allMatch(i -> i.glutenGrains().othersKnown() && i.allergens().othersKnown());
        return any ? Known.YES : all ? Known.NO : Known.UNKNOWN;
    }
}
