package croftboard.paper.served;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.paper.PaperContext;
import croftboard.safety.Advisory;
import croftboard.safety.Caution;
import croftboard.safety.DishStatement;
import croftboard.safety.DishStatement.Known;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What may be said of a dish as it is planned, substitutes put in. A dish that today's book no longer has, or that lists no
 * ingredients, is not stated as a whole.
 *
 * @param recipe empty when the book no longer has it
 * @param ingredients of the whole tree, each once
 */
record DishFacts(String id, String name, Optional<Recipe> recipe, DishStatement statement, Advisory advisory,
        List<Ingredient> ingredients, Map<String, String> swaps) {

    static DishFacts of(PaperContext context, String dish) {
        return of(context.book(), dish, context.plan().swaps().getOrDefault(dish, new TreeMap<>()));
    }

    /** @param swaps substitute by ingredient; those that the book no longer has leave the ingredient as written */
    static DishFacts of(Book book, String dish, Map<String, String> swaps) {
        Recipe recipe = book.recipes().get(dish);
        Map<String, String> known = new TreeMap<>(swaps);
        known.values().removeIf(use -> !book.ingredients().containsKey(use));
        List<Ingredient> all = recipe == null ? List.of() : DishStatement.plannedIngredients(book, dish, known);
        if (all.isEmpty()) {
            String name = recipe == null ? dish : recipe.name();
            return new DishFacts(dish, name, Optional.ofNullable(recipe), new DishStatement(new TreeSet<>(),
                    new TreeSet<>(Set.of(name)), Known.UNKNOWN, Known.UNKNOWN), new Advisory(Set.of()), List.of(), known);
        }
        return new DishFacts(dish, recipe.name(), Optional.of(recipe), DishStatement.ofIngredients(all),
                Advisory.of(book, dish), all, known);
    }

    /** Whether all that it contains is stated. */
    boolean complete() {
        return statement.notStated().isEmpty();
    }

    /** The Contains line, what is not stated, the advisory where it is needed. */
    String contains() {
        return statement.sentence();
    }

    Optional<String> advised() {
        return advisory.needed() ? Optional.of(advisory.disclosure() + " " + Advisory.reminder()) : Optional.empty();
    }

    /** Said where every ingredient is known, in its allergens too, and of no other diet. */
    Optional<String> diet() {
        return statement.vegan() == Known.YES && complete() && !advisory.needed() ? Optional.of("Vegan by recipe: no ingredient of animal origin. This says nothing"
                + " about allergens.") : Optional.empty();
    }

    static String caution() {
        return Caution.shared();
    }
}
