package croftboard.book.file;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.book.Vendor;
import croftboard.measure.WeekRange;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Whether somebody sells each ingredient in each week in which a recipe in season needs it. Weeks
 * are bits 1 to 53.
 */
final class Supply {
    private static final int WEEKS = 53;
    private static final int SHOWN = 4;
    private final Notebook notebook;
    private final Book book;
    private final Map<String, Long> made = new HashMap<>();
    private final Map<String, Long> needed = new TreeMap<>();
    private final Map<String, TreeSet<String>> users = new HashMap<>();

    Supply(Notebook notebook, Book book) {
        this.notebook = notebook;
        this.book = book;
    }

    void look() {
        for (Recipe recipe : book.recipes().values()) {
            recipe.sale().ifPresent(s -> {
                if (inSeason(s) == 0) {
                    notebook.warn(notebook.spotOf(recipe), "[" + recipe.id()
                            + "] is never in season: its weeks hold none of its seasons' weeks");
                }
                spread(recipe, inSeason(s));
            });
        }
        Map<String, Long> sold = sold();
        needed.forEach((id, weeks) -> {
            Ingredient ingredient = book.ingredient(id);
            long missing = weeks & ~sold.getOrDefault(id, 0L);
            if (missing != 0 && !ingredient.free()) {
                List<String> names = List.copyOf(users.get(id));
                String more = names.size() > SHOWN ? " and " + (names.size() - SHOWN) + " more" : "";
                notebook.warn(notebook.spotOf(ingredient), "nobody sells [" + id + "] in "
                        + weeksOf(missing) + ", when "
                        + String.join(", ", names.subList(0, Math.min(SHOWN, names.size()))) + more
                        + " may need it");
            }
        });
    }

    private long inSeason(Recipe.Sale sale) {
        Seasons seasons = book.seasons();
        long named = sale.seasons().isEmpty() ? bits(WeekRange.ALL) : 0;
        for (String season : sale.seasons()) {
            named |= bits(seasons.named().get(season));
        }
        return sale.weeks().map(Supply::bits).orElse(-1L) & named;
    }

    private static long bits(WeekRange range) {
        long bits = 0;
        for (int week = 1; week <= WEEKS; week++) {
            bits |= range.holds(week) ? 1L << week : 0;
        }
        return bits;
    }

    /** Hands the weeks down to all that the recipe is made of; each recipe only when it gets new weeks. */
    private void spread(Recipe start, long weeks) {
        List<Recipe> todo = new ArrayList<>(List.of(start));
        while (!todo.isEmpty()) {
            Recipe recipe = todo.remove(todo.size() - 1);
            long before = made.getOrDefault(recipe.id(), 0L);
            if ((weeks & ~before) == 0) {
                continue;
            }
            made.put(recipe.id(), before | weeks);
            for (Recipe.Line line : recipe.ingredients()) {
                Recipe part = book.recipes().get(line.item());
                if (part != null) {
                    todo.add(part);
                } else if (!replaceable(line)) {
                    needed.merge(line.item(), weeks, (a, b) -> a | b);
                    users.computeIfAbsent(line.item(), i -> new TreeSet<>()).add(recipe.id());
                }
            }
        }
    }

    /** The plan may use something else that is sold all year. */
    private boolean replaceable(Recipe.Line line) {
        return line.planSubstitute() && book.ingredient(line.item()).substitutes().stream().limit(1)
                .anyMatch(s -> sold().getOrDefault(s.use(), 0L) == bits(WeekRange.ALL));
    }

    private Map<String, Long> sold;

    private Map<String, Long> sold() {
        if (sold == null) {
            sold = new HashMap<>();
            for (Vendor vendor : book.vendors().values()) {
                vendor.offers().forEach(o -> o.weeks()
                        .forEach(e -> sold.merge(o.item(), bits(e.weeks()), (a, b) -> a | b)));
            }
        }
        return sold;
    }

    /** {@code W01..W12, W49..W53}. */
    static String weeksOf(long bits) {
        List<String> ranges = new ArrayList<>();
        for (int first = 1; first <= WEEKS; first++) {
            if ((bits >> first & 1) == 1) {
                int last = first;
                while (last < WEEKS && (bits >> last + 1 & 1) == 1) {
                    last++;
                }
                ranges.add(new WeekRange(first, last).toString());
                first = last;
            }
        }
        return String.join(", ", ranges);
    }
}
