package croftboard.plan.work;

import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One making of a recipe on one day.
 *
 * @param lastServed last day on which what is made of it is served
 * @param batches standard batches
 * @param portions of a dish; empty for a component
 * @param service of a dish: where and when it is served; empty for a component
 * @param items in the order of addition
 */
public record Making(Recipe recipe, LocalDate day, LocalDate lastServed, LocalDate useBy, Ratio batches,
        Optional<Integer> portions, Optional<Service> service, List<Item> items) {
    /** Stands for the station of recipes whose steps occupy nobody. */
    public static final String NOBODY = "";

    /**
     * @param slot as the plan names it
     * @param first day of service that this making covers
     */
    public record Service(String slot, String line, LocalDate first) { }

    /**
     * One line of the recipe, scaled.
     *
     * @param id an ingredient, or a recipe that is made here
     * @param amount as the recipe writes it
     * @param ep grams of the edible portion, or of the component
     * @param ap grams as purchased; for components equal to {@code ep}
     * @param ahead days before the making on which it is needed: to be thawed or cut
     * @param cutAhead days before the making on which it is cut
     * @param insteadOf name of the recipe's own ingredient
     */
    public record Item(String id, Optional<String> cut, Amount amount, Ratio ep, Ratio ap, boolean component, int ahead,
            int cutAhead, boolean frozen, Optional<String> insteadOf, Optional<String> note) { }

    /** Active minutes at a station, rounded up once as in the plan. */
    public long minutesAt(String station) {
        return recipe.steps().stream().filter(s -> s.station().filter(station::equals).isPresent())
                .map(s -> s.activeMinutes().times(batches).plus(s.perPortionMinutes().times(portions.orElse(0))))
                .reduce(Ratio.ZERO, Ratio::plus).ceil();
    }

    /** Minutes of a batch that occupy nobody. */
    public Ratio unattended() {
        return recipe.steps().stream().map(Recipe.Step::unattendedMinutes).reduce(Ratio.ZERO, Ratio::plus);
    }

    /** Grams ready to serve. */
    public Ratio grams() {
        return recipe.makes().base().times(batches);
    }

    /** Ids, in the order of the steps; {@link #NOBODY} alone when no step occupies anybody. */
    public List<String> stations() {
        List<String> named = recipe.steps().stream().flatMap(s -> s.station().stream()).distinct().toList();
        return named.isEmpty() ? List.of(NOBODY) : named;
    }
}
