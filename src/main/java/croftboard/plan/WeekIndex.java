package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Numbers for the names of a book: items, components, dishes, resources, words for variety; always in the same order. */
final class WeekIndex {
    final Map<String, Integer> item = new LinkedHashMap<>();
    final Map<String, Integer> component = new LinkedHashMap<>();
    final Map<String, Integer> dish = new LinkedHashMap<>();
    final Map<String, Integer> resource = new LinkedHashMap<>();
    final Map<String, Integer> main = new LinkedHashMap<>();
    final Map<String, Integer> method = new LinkedHashMap<>();
    final Map<String, Integer> cuisine = new LinkedHashMap<>();
    final List<String> components;

    WeekIndex(Book book) {
        for (Ingredient i : book.ingredients().values()) {
            if (!i.free()) {
                item.put(i.id(), item.size());
            }
        }
        components = parentsFirst(book);
        components.forEach(c -> component.put(c, component.size()));
        TreeSet<String> mains = new TreeSet<>();
        TreeSet<String> methods = new TreeSet<>();
        TreeSet<String> cuisines = new TreeSet<>();
        for (Recipe r : book.recipes().values()) {
            dish.put(r.id(), dish.size());
            r.sale().ifPresent(s -> {
                mains.add(s.main());
                methods.add(s.method());
                cuisines.add(s.cuisine());
            });
        }
        mains.forEach(m -> main.put(m, main.size()));
        methods.forEach(m -> method.put(m, method.size()));
        cuisines.forEach(m -> cuisine.put(m, cuisine.size()));
        book.kitchen().stations().forEach(s -> resource.put("station " + s.id(), resource.size()));
        book.kitchen().equipment().forEach(e -> resource.put("equipment " + e.id(), resource.size()));
    }

    int station(String id) {
        return resource.get("station " + id);
    }

    int equipment(String id) {
        return resource.get("equipment " + id);
    }

    /** Recipes that others use, so that none uses an earlier one. */
    private static List<String> parentsFirst(Book book) {
        Set<String> used = new TreeSet<>();
        book.recipes().values().forEach(r -> r.ingredients().stream().map(Recipe.Line::item)
                .filter(book.recipes()::containsKey).forEach(used::add));
        List<String> order = new ArrayList<>();
        Set<String> done = new HashSet<>();
        used.forEach(c -> visit(book, c, used, done, order));
        java.util.Collections.reverse(order);
        return order;
    }

    private static void visit(Book book, String recipe, Set<String> used, Set<String> done, List<String> order) {
        if (done.add(recipe)) {
            book.recipe(recipe).ingredients().stream().map(Recipe.Line::item).filter(used::contains)
                    .forEach(part -> visit(book, part, used, done, order));
            order.add(recipe);
        }
    }
}
