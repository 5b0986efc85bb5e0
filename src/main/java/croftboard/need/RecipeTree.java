package croftboard.need;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The exact weights behind a recipe's lines. EP is the edible portion of the cut, AP what must be bought for it:
 * AP = EP / yield. Nothing is rounded here.
 */
public final class RecipeTree {
    private final Book book;

    public RecipeTree(Book book) {
        this.book = book;
    }

    /**
     * One line of one standard batch.
     *
     * @param ep grams of the edible portion, or of the component
     * @param ap grams to buy; equal to {@code ep} for components
     */
    public record Weighed(Recipe.Line line, boolean isRecipe, Ratio ep, Ratio ap) { }

    /** The lines of one standard batch, in the book's order. */
    public List<Weighed> lines(Recipe recipe) {
        List<Weighed> all = new ArrayList<>();
        for (Recipe.Line line : recipe.ingredients()) {
            all.add(weigh(line));
        }
        return all;
    }

    private Weighed weigh(Recipe.Line line) {
        Recipe part = book.recipes().get(line.item());
        if (part != null) {
            Ratio grams = gramsOf(line.amount(), part);
            return new Weighed(line, true, grams, grams);
        }
        Ingredient ingredient = book.ingredient(line.item());
        Ratio yield = ingredient.yieldOf(line.cut());
        boolean ap = line.asPurchased();
        Ratio grams = line.amount().base();
        if (line.amount().unit().kind() != Unit.Kind.MASS) {
            Ingredient.Measure measure = ingredient.measureFor(line.amount().unit(), line.cut()).orElseThrow();
            grams = grams.over(measure.measure().base()).times(measure.weighs().base());
            ap = ap || measure.asPurchased();
        }
        return ap ? new Weighed(line, false, grams.times(yield), grams)
                : new Weighed(line, false, grams, grams.over(yield));
    }

    private static Ratio gramsOf(Amount amount, Recipe part) {
        return amount.unit().kind() == Unit.Kind.MASS ? amount.base()
                : amount.base().over(Unit.CUP.base()).times(part.cup().orElseThrow().base());
    }

    /** What a measure of an ingredient as purchased weighs in grams, for packs and counted stock. */
    public Ratio purchasedGrams(Ingredient ingredient, Amount amount) {
        if (amount.unit().kind() == Unit.Kind.MASS) {
            return amount.base();
        }
        Ingredient.Measure m = ingredient.measures().stream()
                .filter(x -> x.measure().unit().converts(amount.unit()) && x.asPurchased()).findFirst()
                .or(() -> ingredient.measureFor(amount.unit(), java.util.Optional.empty())).orElseThrow();
        return amount.base().over(m.measure().base()).times(m.weighs().base());
    }

    /** AP grams of every ingredient through the whole tree for one standard batch, no batch rounding. */
    public Map<String, Ratio> purchased(Recipe recipe) {
        Map<String, Ratio> sum = new LinkedHashMap<>();
        collect(recipe, Ratio.ONE, false, sum);
        return sum;
    }

    /** EP grams of every ingredient through the whole tree for one standard batch, no batch rounding. */
    public Map<String, Ratio> edible(Recipe recipe) {
        Map<String, Ratio> sum = new LinkedHashMap<>();
        collect(recipe, Ratio.ONE, true, sum);
        return sum;
    }

    private void collect(Recipe recipe, Ratio batches, boolean edible, Map<String, Ratio> sum) {
        for (Weighed w : lines(recipe)) {
            if (w.isRecipe()) {
                Recipe part = book.recipe(w.line().item());
                collect(part, batches.times(w.ep()).over(part.makes().base()), edible, sum);
            } else {
                sum.merge(w.line().item(), (edible ? w.ep() : w.ap()).times(batches), Ratio::plus);
            }
        }
    }
}
