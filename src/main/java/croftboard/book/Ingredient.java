package croftboard.book;

import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Something that is bought and used in recipes.
 *
 * @param name as a cook says it
 * @param label as a label says it
 * @param shelf name of the file it stands in
 * @param origins animal or plant origin; several for compound food; UNKNOWN among them when not wholly known
 * @param allergens what it is known to contain and whether that is all
 * @param glutenGrains staff information only, never a claim
 * @param keepsDays usable on delivery day + 0 .. + keepsDays
 * @param thawDays days before use it leaves the freezer; 0 when it does not
 * @param keepWorth share of cost that surplus is worth when still good after the week; empty: the kitchen's default
 * @param par staples only: assumed on hand unless counted; AP amount
 * @param free never bought (water)
 * @param salt share of weight, for the salt check
 * @param cuts by name; empty map: used as it comes
 * @param measures what household measures weigh
 * @param madeOf bought compound food: its own ingredients as its label lists them, in descending weight
 */
public record Ingredient(String id, String name, String label, String shelf, Set<Origin> origins,
        Statement allergens, Statement glutenGrains, Tcs tcs, Storage storage, int keepsDays, int thawDays,
        Optional<Ratio> keepWorth, Optional<Amount> par, boolean free, Ratio salt, Map<String, Cut> cuts,
        List<Measure> measures, List<Substitute> substitutes, Optional<String> madeOf) {

    /** An ingredient whose own ingredients are not written down. */
    public Ingredient(String id, String name, String label, String shelf, Set<Origin> origins, Statement allergens,
            Statement glutenGrains, Tcs tcs, Storage storage, int keepsDays, int thawDays, Optional<Ratio> keepWorth,
            Optional<Amount> par, boolean free, Ratio salt, Map<String, Cut> cuts, List<Measure> measures,
            List<Substitute> substitutes) {
        this(id, name, label, shelf, origins, allergens, glutenGrains, tcs, storage, keepsDays, thawDays, keepWorth, par,
                free, salt, cuts, measures, substitutes, Optional.empty());
    }

    public enum Origin {
        PLANT, FUNGUS, MINERAL, MICROBE, DAIRY, EGG, HONEY, MEAT, POULTRY, FISH, SHELLFISH, UNKNOWN
    }

    /** Time/temperature control for safety (Food Code 1-201.10). UNKNOWN is treated as needing control. */
    public enum Tcs { NO, BY_NATURE, WHEN_CUT, WHEN_COOKED, UNKNOWN }

    public enum Storage { WALK_IN, DRY, FREEZER }

    /**
     * What a food is known to contain.
     *
     * @param contains known parts, in the book's words; always printed
     * @param othersKnown true when nothing else is in it; false: others are not stated. Unknown replaces only absence
     */
    public record Statement(Set<String> contains, boolean othersKnown) {
        public static final Statement UNKNOWN = new Statement(Set.of(), false);
    }

    /** @param yield edible portion / as purchased, above 0, at most 1 */
    public record Cut(String name, Ratio yield, String source) { }

    /**
     * @param measure for example 1 cup, 1 clove
     * @param cut the cut it holds for; empty: every cut without its own
     * @param asPurchased weight is AP, not EP
     * @param weighs a mass
     */
    public record Measure(Amount measure, Optional<String> cut, boolean asPurchased, Amount weighs, String source) { }

    /** @param ratio grams of {@code use} that replace one gram (EP) of this */
    public record Substitute(String use, Optional<String> cut, Ratio ratio) { }

    public boolean isStaple() {
        return par.isPresent();
    }

    /** EP per AP of the cut; 1 when it is used as it comes. */
    public Ratio yieldOf(Optional<String> cut) {
        return cut.map(c -> cuts.get(c).yield()).orElse(Ratio.ONE);
    }

    /** The measure that tells what {@code unit} of this cut weighs: one for the cut itself before a general one. */
    public Optional<Measure> measureFor(Unit unit, Optional<String> cut) {
        Optional<Measure> own = cut.isEmpty() ? Optional.empty()
                : measures.stream().filter(m -> m.measure().unit().converts(unit) && m.cut().equals(cut)).findFirst();
        return own.isPresent() ? own
                : measures.stream().filter(m -> m.measure().unit().converts(unit) && m.cut().isEmpty()).findFirst();
    }
}
