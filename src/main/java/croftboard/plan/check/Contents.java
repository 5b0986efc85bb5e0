package croftboard.plan.check;

import croftboard.book.Ingredient;
import croftboard.book.Promises;
import java.util.Collection;
import java.util.List;

/** What is known of a dish from its ingredients alone: a claim holds only if every single ingredient surely bears it. */
final class Contents {
    private static final List<Ingredient.Origin> VEGAN = List.of(Ingredient.Origin.PLANT, Ingredient.Origin.FUNGUS,
            Ingredient.Origin.MINERAL, Ingredient.Origin.MICROBE);
    private static final List<Ingredient.Origin> VEGETARIAN = List.of(Ingredient.Origin.PLANT, Ingredient.Origin.FUNGUS,
            Ingredient.Origin.MINERAL, Ingredient.Origin.MICROBE, Ingredient.Origin.DAIRY, Ingredient.Origin.EGG,
            Ingredient.Origin.HONEY);
    private final Collection<Ingredient> ingredients;

    private Contents(Collection<Ingredient> ingredients) {
        this.ingredients = ingredients;
    }

    static Contents of(Collection<Ingredient> ingredients) {
        return new Contents(ingredients);
    }

    boolean is(Promises.Diet diet) {
        List<Ingredient.Origin> allowed = diet == Promises.Diet.VEGAN ? VEGAN : VEGETARIAN;
        boolean animal = List.of("fish", "shellfish").stream().anyMatch(this::lists)
                || diet == Promises.Diet.VEGAN && (lists("milk") || lists("egg"));
        return !animal && ingredients.stream().anyMatch(i -> !i.origins().isEmpty())
                && ingredients.stream().allMatch(i -> allowed.containsAll(i.origins()));
    }

    private boolean lists(String word) {
        return ingredients.stream().flatMap(i -> i.allergens().contains().stream())
                .anyMatch(c -> c.equals(word) || c.startsWith(word + "-"));
    }

    /** Whether every ingredient is known to be without it. @param word {@code milk}, or {@code fish} for every kind of it */
    boolean without(String word) {
        return ingredients.stream().allMatch(i -> i.allergens().othersKnown() && i.allergens().contains().stream()
                .noneMatch(c -> c.equals(word) || c.startsWith(word + "-")));
    }

    boolean keeps(Promises.Coverage promise) {
        return (promise.diet().isEmpty() || is(promise.diet().get()))
                && promise.without().stream().allMatch(this::without);
    }
}
