package croftboard.plan.check;

import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.Optional;

/** Exact grams behind what a book writes. Edible portion = as purchased x yield of the cut. */
final class Weights {
    private Weights() { }

    /** Grams as purchased of an ingredient line. */
    static Ratio purchased(Recipe.Line line, Ingredient ingredient) {
        return isPurchased(line, ingredient) ? written(line, ingredient)
                : written(line, ingredient).over(ingredient.yieldOf(line.cut()));
    }

    /** Grams of edible portion of an ingredient line. */
    static Ratio edible(Recipe.Line line, Ingredient ingredient) {
        return isPurchased(line, ingredient) ? written(line, ingredient).times(ingredient.yieldOf(line.cut()))
                : written(line, ingredient);
    }

    private static boolean isPurchased(Recipe.Line line, Ingredient ingredient) {
        return line.asPurchased() || !isMass(line.amount()) && measure(line, ingredient).asPurchased();
    }

    private static Ratio written(Recipe.Line line, Ingredient ingredient) {
        return isMass(line.amount()) ? line.amount().base() : byMeasure(line.amount(), measure(line, ingredient));
    }

    private static Ingredient.Measure measure(Recipe.Line line, Ingredient ingredient) {
        return ingredient.measureFor(line.amount().unit(), line.cut()).orElseThrow();
    }

    private static Ratio byMeasure(Amount amount, Ingredient.Measure measure) {
        return measure.weighs().base().times(amount.base()).over(measure.measure().base());
    }

    private static boolean isMass(Amount amount) {
        return amount.unit().kind() == Unit.Kind.MASS;
    }

    /** Grams of a component, by weight or by the cup. */
    static Ratio component(Amount amount, Recipe component) {
        return isMass(amount) ? amount.base()
                : component.cup().map(c -> c.base().times(amount.base()).over(Unit.CUP.base())).orElse(Ratio.ZERO);
    }

    /** Grams as purchased of a pack or of counted stock: a measure of it as purchased comes before any other. */
    static Ratio held(Ingredient ingredient, Amount amount) {
        if (isMass(amount)) {
            return amount.base();
        }
        Optional<Ingredient.Measure> own = ingredient.measures().stream().filter(Ingredient.Measure::asPurchased)
                .filter(m -> m.measure().unit().converts(amount.unit())).findFirst();
        return byMeasure(amount, own.or(() -> ingredient.measureFor(amount.unit(), Optional.empty())).orElseThrow());
    }

    /** Whole milligrams, rounded down: what is there. */
    static long mgDown(Ratio grams) {
        return grams.times(1000).floor();
    }

    /** Whole milligrams, rounded up: what is needed. */
    static long mgUp(Ratio grams) {
        return grams.times(1000).ceil();
    }
}
