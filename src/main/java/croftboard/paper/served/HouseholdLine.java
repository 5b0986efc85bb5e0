package croftboard.paper.served;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.CookAmounts;
import croftboard.measure.HouseholdAmounts;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.ScaledRecipe;
import java.util.Optional;
import java.util.Set;

/** A recipe's line as a household measures it: by the cup or the piece where the book knows what that weighs, else by weight. */
record HouseholdLine(String amount, String what) {
    private static final Ratio LEAST_COUNT = Ratio.of(1, 2);
    private static final Set<String> WHOLE_ONLY = Set.of("can", "jar", "bottle", "bag", "sheet", "loaf");

    static HouseholdLine of(Book book, ScaledRecipe.Line line) {
        Recipe.Line written = line.written();
        if (line.isRecipe()) {
            Recipe part = book.recipe(written.item());
            String amount = part.cup().map(c -> volume(line.ep().over(c.base()).times(Unit.CUP.base()), line.ep()))
                    .orElseGet(() -> HouseholdAmounts.mass(line.ep()));
            return new HouseholdLine(amount, part.name() + " (its own card below)" + note(written));
        }
        Ingredient ingredient = book.ingredient(written.item());
        String what = ingredient.name() + written.cut().map(c -> ", " + c.replace('-', ' ')).orElse("") + note(written);
        return new HouseholdLine(amount(line, ingredient), what);
    }

    private static String note(Recipe.Line written) {
        return written.note().map(n -> " (" + n + ")").orElse("");
    }

    private static String amount(ScaledRecipe.Line line, Ingredient ingredient) {
        Unit unit = line.amount().unit();
        if (unit.kind() == Unit.Kind.COUNT && counts(line)) {
            return CookAmounts.count(line.amount().value(), unit);
        }
        if (unit.kind() == Unit.Kind.VOLUME && !line.written().asPurchased()) {
            return volume(line.amount().base(), line.ep());
        }
        if (line.written().asPurchased()) {
            return HouseholdAmounts.mass(line.ap()) + " as bought";
        }
        Optional<Ingredient.Measure> cup = ingredient.measureFor(Unit.CUP, line.written().cut())
                .filter(m -> !m.asPurchased());
        return cup.map(m -> volume(line.ep().over(m.weighs().base()).times(m.measure().base()), line.ep()))
                .orElseGet(() -> HouseholdAmounts.mass(line.ep()));
    }

    private static boolean counts(ScaledRecipe.Line line) {
        Ratio value = line.amount().value();
        return value.compareTo(LEAST_COUNT) >= 0
                && (value.isWhole() || !WHOLE_ONLY.contains(line.amount().unit().name()));
    }

    /** Large enough to be weighed as well. */
    private static String volume(Ratio ml, Ratio grams) {
        String words = HouseholdAmounts.volume(ml);
        return words.endsWith("tsp") || words.endsWith("pinch") ? words : words + ", " + HouseholdAmounts.mass(grams);
    }
}
