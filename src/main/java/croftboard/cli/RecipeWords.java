package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.RecipeTree;
import croftboard.need.ScaledRecipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recipes and amounts as a cook types them. */
final class RecipeWords {
    private static final Pattern HAVE = Pattern.compile("(\\S+)\\s+(\\S+)\\s+(.+)");
    private static final int SHOWN = 12;

    private RecipeWords() { }

    /** By id or name. @throws WrongUse when there is none, or it has no ingredients */
    static Recipe recipe(Book book, String words) {
        Recipe found = book.recipes().get(words);
        if (found == null) {
            List<Recipe> named = book.recipes().values().stream().filter(r -> r.name().equalsIgnoreCase(words)).toList();
            if (named.size() != 1) {
                throw new WrongUse("no recipe '" + words + "' -> " + near(book, words));
            }
            found = named.get(0);
        }
        if (found.worthOnly().isPresent()) {
            throw new WrongUse(found.id() + " has a worth and no ingredients: there is nothing to scale");
        }
        return found;
    }

    private static String near(Book book, String words) {
        String small = words.toLowerCase(Locale.ROOT);
        List<String> like = book.recipes().values().stream().filter(r -> List.of(small.split("[^a-z0-9]+")).stream()
                .anyMatch(w -> w.length() > 2 && (r.id().contains(w) || r.name().toLowerCase(Locale.ROOT).contains(w))))
                .map(Recipe::id).toList();
        return like.isEmpty() ? "an id of recipes/, such as "
                + book.recipes().keySet().stream().findFirst().orElse("none: the book has no recipes") : few(like);
    }

    private static String few(List<String> words) {
        return "one of " + String.join(", ", words.subList(0, Math.min(SHOWN, words.size())))
                + (words.size() > SHOWN ? ", and " + (words.size() - SHOWN) + " more" : "");
    }

    /** @param grams as purchased, or of a component. @param words what was typed, in order */
    record OnHand(String item, Ratio grams, String words) { }

    /** Reads {@code 20 lb zucchini}. @throws WrongUse when it is no amount of anything that the recipe uses */
    static OnHand onHand(Book book, Recipe recipe, String text) {
        Matcher m = HAVE.matcher(text.trim());
        Optional<Amount> amount = m.matches() ? Amount.parse(m.group(1) + " " + m.group(2)) : Optional.empty();
        if (amount.isEmpty() || amount.get().value().signum() == 0) {
            throw new WrongUse("--have \"" + text + "\" -> an amount, a unit and an item, such as \"20 lb zucchini\"");
        }
        TreeMap<String, String> used = used(book, recipe);
        String item = used.entrySet().stream().filter(e -> means(m.group(3), e.getKey(), e.getValue()))
                .map(java.util.Map.Entry::getKey).findFirst().orElseThrow(() -> new WrongUse("--have \"" + text + "\": "
                        + recipe.id() + " uses no '" + m.group(3) + "' -> " + few(new ArrayList<>(used.keySet()))));
        return new OnHand(item, grams(book, item, amount.get(), text),
                CookAmounts.of(amount.get()) + " " + used.get(item));
    }

    /** Names by id of everything in the recipe's tree. */
    private static TreeMap<String, String> used(Book book, Recipe recipe) {
        TreeMap<String, String> used = new TreeMap<>();
        for (ScaledRecipe r : ScaledRecipe.tree(book, recipe, Ratio.ONE)) {
            for (ScaledRecipe.Line line : r.lines()) {
                String id = line.written().item();
                used.put(id, line.isRecipe() ? book.recipe(id).name() : book.ingredient(id).name());
            }
        }
        return used;
    }

    private static boolean means(String words, String id, String name) {
        String small = words.trim().toLowerCase(Locale.ROOT);
        return small.equals(id) || small.equalsIgnoreCase(name) || small.replace(' ', '-').equals(id)
                || (small + "s").equalsIgnoreCase(name) || small.equalsIgnoreCase(name + "s");
    }

    private static Ratio grams(Book book, String item, Amount amount, String text) {
        try {
            Ingredient ingredient = book.ingredients().get(item);
            if (ingredient != null) {
                return new RecipeTree(book).purchasedGrams(ingredient, amount);
            }
            return amount.unit().kind() == Unit.Kind.MASS ? amount.base()
                    : amount.in(Unit.CUP).value().times(book.recipe(item).cup().orElseThrow().base());
        } catch (NoSuchElementException | IllegalArgumentException e) {
            throw new WrongUse("--have \"" + text + "\": the book does not say what 1 " + amount.unit() + " of " + item
                    + " weighs -> a weight, such as 20 lb");
        }
    }
}
