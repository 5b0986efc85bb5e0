package croftboard.book;

import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the kitchen wants to hold and pays for when it does not: breaking a promise is a known cost, never a failure to plan.
 *
 * @param emptySlot cents for each slot without a dish
 * @param localShare dollars for each dollar of local food missing to the season's target
 * @param foodCost at most this share of expected sales
 * @param evennessPerMinute cents for each minute of a station's busiest day above its average prep day
 * @param change cents for a change against a posted plan
 */
public record Promises(Cents emptySlot, List<Coverage> coverage, List<Variety> variety, Ratio localShare,
        Optional<FoodCost> foodCost, Ratio evennessPerMinute, Cents change) {

    /**
     * On each open day at least {@code atLeast} dishes that fit.
     *
     * @param mark one letter for the sheets
     * @param course only dishes of that course; empty: any line
     * @param diet vegan or vegetarian
     * @param without allergen words that the recipe must not list; unknown keeps no promise
     * @param price cents a day, for each dish that is missing
     */
    public record Coverage(String id, String say, String mark, Optional<String> course, Optional<Diet> diet,
            Set<String> without, int atLeast, Cents price) { }

    public enum Diet { VEGAN, VEGETARIAN }

    public enum Trait { MAIN, METHOD, CUISINE }

    /** DAY: all lines on one day. NEXT_DAY: the same line on the following service day (another run). */
    public enum Within { DAY, NEXT_DAY }

    /** @param price cents for each dish above {@code atMost} */
    public record Variety(Trait of, Within within, int atMost, Cents price) { }

    /** @param price dollars for each dollar over */
    public record FoodCost(Ratio atMost, Ratio price) { }
}
