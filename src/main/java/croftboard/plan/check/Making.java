package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** What one standard batch of a recipe takes this week, line by line, with the substitutes that the plan may use. */
final class Making {
    private final Book book;
    private final Offered offered;
    private final SortedMap<String, SortedMap<String, String>> everyLine;

    /** @param everyLine by dish: substitutes that a change under way put on every line of the dish itself */
    Making(Book book, Offered offered, SortedMap<String, SortedMap<String, String>> everyLine) {
        this.book = book;
        this.offered = offered;
        this.everyLine = everyLine;
    }

    /** One ingredient of a batch. @param ahead days before the batch on which it is cut or thawed */
    record Taken(Ingredient ingredient, int ahead, Ratio grams) {
        /** Bought by need; staples are costed by use and water is free. */
        boolean byNeed() {
            return !ingredient.isStaple() && !ingredient.free();
        }
    }

    List<Taken> ingredients(Recipe recipe) {
        List<Taken> all = new ArrayList<>();
        for (Recipe.Line line : recipe.ingredients()) {
            if (!isRecipe(line)) {
                Ingredient own = book.ingredient(line.item());
                Ingredient used = used(recipe, line);
                Ratio grams = used == own ? Weights.purchased(line, own) : replaced(line, own, used);
                all.add(new Taken(used, Math.max(line.aheadDays(), used.thawDays()), grams));
            }
        }
        return all;
    }

    private boolean isRecipe(Recipe.Line line) {
        return book.recipes().containsKey(line.item());
    }

    private static Ratio replaced(Recipe.Line line, Ingredient own, Ingredient used) {
        Ingredient.Substitute s = own.substitutes().stream().filter(x -> x.use().equals(used.id())).findFirst().orElseThrow();
        return Weights.edible(line, own).times(s.ratio()).over(used.yieldOf(s.cut()));
    }

    /** The first declared substitute where the line lets the plan use it and nobody sells the ingredient this week. */
    private Ingredient used(Recipe recipe, Recipe.Line line) {
        Ingredient own = book.ingredient(line.item());
        String forced = everyLine.getOrDefault(recipe.id(), new TreeMap<>()).get(line.item());
        if (forced != null) {
            return book.ingredient(forced);
        }
        boolean replaced = line.planSubstitute() && !own.isStaple() && !own.substitutes().isEmpty()
                && !offered.sold(own.id());
        return replaced ? book.ingredient(own.substitutes().get(0).use()) : own;
    }

    /** Grams of each component in a standard batch. */
    SortedMap<String, Ratio> components(Recipe recipe) {
        SortedMap<String, Ratio> grams = new TreeMap<>();
        for (Recipe.Line line : recipe.ingredients()) {
            if (isRecipe(line)) {
                grams.merge(line.item(), Weights.component(line.amount(), book.recipe(line.item())), Ratio::plus);
            }
        }
        return grams;
    }

    /** Days that it lasts, the day of making included: its own life, or what a component made just in time leaves it. */
    int lasts(Recipe recipe) {
        int days = recipe.lifeDays();
        for (String part : components(recipe).keySet()) {
            days = Math.min(days, lasts(book.recipe(part)) - book.recipe(part).leadDays());
        }
        return days;
    }

    /** Cents of the staples in a standard batch, components not counted. */
    Ratio stapleCents(Recipe recipe) {
        Ratio cents = Ratio.ZERO;
        for (Taken t : ingredients(recipe)) {
            if (t.ingredient().isStaple()) {
                cents = cents.plus(offered.centsPerGram(t.ingredient().id()).times(t.grams()));
            }
        }
        return cents;
    }

    /** List-price cost of everything in a standard batch, components and all, as the recipes are written. */
    Ratio listCents(Recipe recipe) {
        Ratio cents = Ratio.ZERO;
        for (Recipe.Line line : recipe.ingredients()) {
            if (isRecipe(line)) {
                Recipe part = book.recipe(line.item());
                cents = cents.plus(listCents(part).times(Weights.component(line.amount(), part))
                        .over(part.makes().base()));
            } else {
                Ingredient own = book.ingredient(line.item());
                cents = cents.plus(offered.centsPerGram(own.id()).times(Weights.purchased(line, own)));
            }
        }
        return cents;
    }

    /** Every ingredient that is really in it, through the whole tree. */
    Set<Ingredient> everything(Recipe recipe) {
        Set<Ingredient> all = new LinkedHashSet<>();
        for (Recipe.Line line : recipe.ingredients()) {
            if (isRecipe(line)) {
                all.addAll(everything(book.recipe(line.item())));
            } else {
                all.add(used(recipe, line));
            }
        }
        return all;
    }

    /** Ingredients replaced anywhere in the tree, with what replaces them. */
    SortedMap<String, String> swaps(Recipe recipe) {
        SortedMap<String, String> all = new TreeMap<>();
        for (Recipe.Line line : recipe.ingredients()) {
            if (isRecipe(line)) {
                all.putAll(swaps(book.recipe(line.item())));
            } else if (everyLine.getOrDefault(recipe.id(), new TreeMap<>()).containsKey(line.item())) {
                all.put(line.item() + "*", used(recipe, line).id());
            } else if (!used(recipe, line).id().equals(line.item())) {
                all.put(line.item(), used(recipe, line).id());
            }
        }
        return all;
    }

    /** Minutes at a station for a making of so many standard batches and portions; whole, rounded up once. */
    static long minutes(Recipe recipe, String station, Ratio batches, int portions) {
        Ratio minutes = Ratio.ZERO;
        for (Recipe.Step step : recipe.steps()) {
            if (step.station().isPresent() && step.station().get().equals(station)) {
                minutes = minutes.plus(step.activeMinutes().times(batches))
                        .plus(step.perPortionMinutes().times(portions));
            }
        }
        return minutes.ceil();
    }

    /** Units of equipment for a making of so many standard batches; whole, rounded up once. */
    static long units(Recipe recipe, String equipment, Ratio batches) {
        Ratio units = recipe.worthOnly().isPresent()
                ? recipe.worthOnly().get().uses().getOrDefault(equipment, Ratio.ZERO) : Ratio.ZERO;
        for (Recipe.Step step : recipe.steps()) {
            units = units.plus(step.uses().getOrDefault(equipment, Ratio.ZERO).times(batches));
        }
        return units.ceil();
    }
}
