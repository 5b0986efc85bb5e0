package croftboard.book.file;

import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.Map;
import java.util.Optional;

/** What a line of a recipe weighs, edible portion, in grams. */
final class Weigher {
    private final Map<String, Ingredient> ingredients;
    private final Map<String, Recipe> recipes;

    Weigher(Map<String, Ingredient> ingredients, Map<String, Recipe> recipes) {
        this.ingredients = ingredients;
        this.recipes = recipes;
    }

    /** Grams of edible portion; empty when no measure, cut or cup tells. */
    Optional<Ratio> grams(Recipe.Line line) {
        Ingredient ingredient = ingredients.get(line.item());
        if (ingredient != null) {
            return ofIngredient(line, ingredient);
        }
        Recipe recipe = recipes.get(line.item());
        if (recipe == null || line.amount().unit().kind() == Unit.Kind.COUNT) {
            return Optional.empty();
        }
        if (line.amount().unit().kind() == Unit.Kind.MASS) {
            return Optional.of(line.amount().base());
        }
        return recipe.cup().map(cup -> line.amount().base().over(Unit.CUP.base()).times(cup.base()));
    }

    private static Optional<Ratio> ofIngredient(Recipe.Line line, Ingredient ingredient) {
        if (line.cut().isPresent() && !ingredient.cuts().containsKey(line.cut().get())) {
            return Optional.empty();
        }
        Ratio yield = ingredient.yieldOf(line.cut());
        if (line.amount().unit().kind() == Unit.Kind.MASS) {
            return Optional.of(line.asPurchased() ? line.amount().base().times(yield) : line.amount()
                    .base());
        }
        return ingredient.measureFor(line.amount().unit(), line.cut()).map(measure -> {
            Ratio grams = by(line.amount(), measure);
            return line.asPurchased() || measure.asPurchased() ? grams.times(yield) : grams;
        });
    }

    private static Ratio by(Amount amount, Ingredient.Measure measure) {
        return amount.base().over(measure.measure().base()).times(measure.weighs().base());
    }

    /**
     * Whether an amount as purchased can be weighed: a mass, a measure of it, or any measure of
     * food used as it comes.
     */
    static boolean knowsPurchased(Ingredient ingredient, Unit unit) {
        return unit.kind() == Unit.Kind.MASS || ingredient.measures().stream()
                .anyMatch(m -> m.cut().isEmpty()
                && m.measure().unit().converts(unit) && (m.asPurchased() || ingredient.cuts().isEmpty()));
    }
}
