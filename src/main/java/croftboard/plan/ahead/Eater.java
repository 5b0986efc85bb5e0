package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Promises;
import croftboard.safety.DishStatement;
import croftboard.safety.DishStatement.Known;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Somebody who can eat only some of the dishes: by a diet, by what the recipe must not list, or both.
 *
 * @param without allergen words of the book
 */
public record Eater(Optional<Promises.Diet> diet, Set<String> without) {

    public Eater {
        without = java.util.Collections.unmodifiableSet(new TreeSet<>(without));
    }

    /** Vegans and vegetarians first, then everybody of whom one of the kitchen's promises speaks, in its order. */
    public static List<Eater> of(Book book) {
        Set<Eater> all = new LinkedHashSet<>();
        all.add(new Eater(Optional.of(Promises.Diet.VEGAN), Set.of()));
        all.add(new Eater(Optional.of(Promises.Diet.VEGETARIAN), Set.of()));
        book.kitchen().promises().coverage().forEach(c -> all.add(new Eater(c.diet(), c.without())));
        all.removeIf(e -> e.diet.isEmpty() && e.without.isEmpty());
        return List.copyOf(all);
    }

    public boolean isVegan() {
        return diet.equals(Optional.of(Promises.Diet.VEGAN)) && without.isEmpty();
    }

    /** YES, NO, or UNKNOWN: nothing speaks against it, but something is not stated. Unknown feeds nobody. */
    public Known eats(DishStatement dish) {
        List<Known> all = new ArrayList<>();
        diet.ifPresent(d -> all.add(d == Promises.Diet.VEGAN ? dish.vegan() : dish.vegetarian()));
        without.forEach(w -> all.add(switch (dish.lists(w)) {
            case YES -> Known.NO;
            case NO -> Known.YES;
            case UNKNOWN -> Known.UNKNOWN;
        }));
        return all.contains(Known.NO) ? Known.NO : all.contains(Known.UNKNOWN) ? Known.UNKNOWN : Known.YES;
    }

    /** {@code vegan}, {@code lists no egg, milk, wheat}. */
    public String words() {
        String listed = without.isEmpty() ? "" : "lists no " + String.join(", ", without.stream().map(DishStatement::spoken).toList());
        return diet.map(d -> d == Promises.Diet.VEGAN ? "vegan" : "vegetarian").map(d -> listed.isEmpty() ? d : d + ", " + listed)
                .orElse(listed);
    }
}
