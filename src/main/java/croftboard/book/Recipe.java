package croftboard.book;

import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.WeekRange;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A dish that is sold or a component that other recipes use.
 *
 * @param makes yield of one standard batch, a mass, ready to serve
 * @param cup what one cup of it weighs, so that others may use it by the cup
 * @param sale what makes it a dish; empty for components
 * @param batchStep smallest fraction of the standard batch worth making, above 0, at most 1
 * @param lifeDays use-by: the day of making is day 1; 1 or more
 * @param leadDays days before its first use it must be made; 0 or 1
 * @param loss share of weight lost in cooking, 0 to below 1
 * @param worthOnly books of the kind "worth only" (docs/book.md): a fixed worth and equipment units, no ingredients
 */
public record Recipe(String id, String name, Optional<Sale> sale, Amount makes, Optional<Amount> cup,
        Ratio batchStep, int lifeDays, Hold hold, int leadDays, Ratio loss, List<Line> ingredients,
        List<Step> steps, Optional<String> scaling, Optional<String> doneness, Optional<String> holding,
        Optional<String> caution, Optional<WorthOnly> worthOnly, Care care) {

    /** A recipe of which no more is said than how it is made and sold. */
    public Recipe(String id, String name, Optional<Sale> sale, Amount makes, Optional<Amount> cup, Ratio batchStep,
            int lifeDays, Hold hold, int leadDays, Ratio loss, List<Line> ingredients, List<Step> steps,
            Optional<String> scaling, Optional<String> doneness, Optional<String> holding, Optional<String> caution,
            Optional<WorthOnly> worthOnly) {
        this(id, name, sale, makes, cup, batchStep, lifeDays, hold, leadDays, loss, ingredients, steps, scaling, doneness,
                holding, caution, worthOnly, Care.NONE);
    }

    public enum Hold { HOT, COLD, AMBIENT }

    /**
     * What labels and cautions rest on.
     *
     * @param garlicInOil garlic, herbs or vegetables kept in oil: four days at most
     * @param servedRaw animal food that reaches the plate raw or undercooked, in words; carried by every dish above
     * @param netWeight least weight of a packed portion, as declared; empty: each is weighed
     * @param itemNumber the store's five-digit number for the packed dish at its registers
     */
    public record Care(boolean garlicInOil, Optional<String> servedRaw, Optional<Amount> netWeight,
            Optional<String> itemNumber) {
        public static final Care NONE = new Care(false, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * @param fits courses or line ids
     * @param seasons names from the seasons file; empty set: all the year
     * @param weeks narrower than the seasons
     * @param portion a mass
     * @param draw how well it sells against the line's mean
     * @param main main ingredient, with {@code method} and {@code cuisine} the words for variety
     */
    public record Sale(Set<String> fits, Set<String> seasons, Optional<WeekRange> weeks, Amount portion,
            Cents price, Ratio draw, String main, String method, String cuisine) { }

    /**
     * One line of the ingredient list.
     *
     * @param amount as written
     * @param item an ingredient or a recipe
     * @param cut the ingredient's cut; empty when it is used as it comes or is a recipe
     * @param asPurchased the amount is weighed as purchased
     * @param aheadDays this cut is made so many days before the batch
     * @param planSubstitute the plan may use the first declared substitute when this cannot be had
     */
    public record Line(Amount amount, String item, Optional<String> cut, boolean asPurchased, int aheadDays,
            boolean planSubstitute, Optional<String> note) { }

    /**
     * @param station empty: nobody's hands
     * @param activeMinutes per standard batch
     * @param perPortionMinutes added for each portion of a dish
     * @param uses equipment units per standard batch, by equipment id
     */
    public record Step(String text, Optional<String> station, Ratio activeMinutes, Ratio perPortionMinutes,
            Ratio unattendedMinutes, Map<String, Ratio> uses) { }

    /** @param uses equipment units when the dish is chosen */
    public record WorthOnly(Cents worth, Map<String, Ratio> uses) { }

    public boolean isDish() {
        return sale.isPresent();
    }

    /** Exact number of portions in one standard batch. */
    public Ratio portionsPerBatch() {
        return makes.base().over(sale.orElseThrow().portion().base());
    }

    /** Whether the calendar lets the dish stand in that week. */
    public boolean inSeason(IsoWeek week, Seasons seasons) {
        Sale s = sale.orElseThrow();
        boolean named = s.seasons().isEmpty() || s.seasons().stream().anyMatch(n -> seasons.named().get(n).holds(week));
        return named && s.weeks().map(w -> w.holds(week)).orElse(true);
    }
}
