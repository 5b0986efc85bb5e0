package croftboard.safety;

import croftboard.book.Book;
import croftboard.book.Recipe;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/**
 * The consumer advisory for raw or undercooked animal food in what is served (Food Code 3-603.11): a disclosure that names
 * it and a reminder of the risk. A recipe that says it is served raw carries it into every dish above it.
 *
 * @param foods as the book names them; none: no advisory
 */
public record Advisory(Set<String> foods) {
    public Advisory {
        foods = java.util.Collections.unmodifiableSet(new TreeSet<>(foods));
    }

    public static Advisory of(Book book, String recipe) {
        Set<String> foods = new TreeSet<>();
        collect(book, book.recipe(recipe), foods);
        return new Advisory(foods);
    }

    private static void collect(Book book, Recipe recipe, Collection<String> into) {
        recipe.care().servedRaw().ifPresent(into::add);
        for (Recipe.Line line : recipe.ingredients()) {
            if (book.recipes().containsKey(line.item())) {
                collect(book, book.recipe(line.item()), into);
            }
        }
    }

    public boolean needed() {
        return !foods.isEmpty();
    }

    /** {@code Served raw or undercooked: egg yolk.} */
    public String disclosure() {
        return "Served raw or undercooked: " + String.join(", ", foods) + ".";
    }

    public static String reminder() {
        return "Eating raw or undercooked animal food raises the risk of foodborne illness, most of all for children, the"
                + " old, the pregnant and the ill.";
    }
}
