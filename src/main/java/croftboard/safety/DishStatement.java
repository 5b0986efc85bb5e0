package croftboard.safety;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Promises;
import croftboard.book.Recipe;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Map;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What a recipe is known to contain, rolled up from every ingredient of its tree.
 *
 * @param contains allergens by kind; complete only when {@code notStated} is empty
 * @param notStated names of the ingredients whose allergens are not wholly known
 * @param vegan YES only when every ingredient is known to be of plant, fungus, mineral or microbe origin
 */
public record DishStatement(SortedSet<String> contains, SortedSet<String> notStated, Known vegan, Known vegetarian) {

    public enum Known { YES, NO, UNKNOWN }

    private static final Set<Ingredient.Origin> VEGAN = EnumSet.of(Ingredient.Origin.PLANT, Ingredient.Origin.FUNGUS,
            Ingredient.Origin.MINERAL, Ingredient.Origin.MICROBE);
    private static final Set<Ingredient.Origin> VEGETARIAN = EnumSet.of(Ingredient.Origin.PLANT,
            Ingredient.Origin.FUNGUS, Ingredient.Origin.MINERAL, Ingredient.Origin.MICROBE, Ingredient.Origin.DAIRY,
            Ingredient.Origin.EGG, Ingredient.Origin.HONEY);

    private static final List<String> FLESH = List.of("fish", "shellfish");
    private static final List<String> ANIMAL = List.of("milk", "egg", "fish", "shellfish");

    /** Ends the key of a swap that holds on every line of the dish itself: {@code basil*} to {@code basil-dried}. */
    public static final String EVERY_LINE = "*";

    /** The statement of the recipe as written. */
    public static DishStatement of(Book book, String recipe) {
        return of(book, recipe, Function.identity());
    }

    /** @param served the ingredient that is really used for one of the recipe's, for example a substitute */
    public static DishStatement of(Book book, String recipe, Function<String, String> served) {
        TreeSet<String> ingredients = new TreeSet<>();
        collect(book, recipe, served, ingredients);
        return ofIngredients(ingredients.stream().map(book::ingredient).toList());
    }

    private static void collect(Book book, String recipe, Function<String, String> served, Set<String> into) {
        for (Recipe.Line line : book.recipe(recipe).ingredients()) {
            if (book.recipes().containsKey(line.item())) {
                collect(book, line.item(), served, into);
            } else {
                into.add(served.apply(line.item()));
            }
        }
    }

    /**
     * The statement of a dish in a plan that replaces ingredients. A line that does not let the plan replace its ingredient
     * keeps it, also where another line of the same ingredient is replaced.
     *
     * @param swaps substitute by ingredient; a key that ends in {@link #EVERY_LINE} holds on every line of the dish itself,
     *     whatever the recipe lets the plan do, and on no line of its components
     */
    public static DishStatement planned(Book book, String recipe, Map<String, String> swaps) {
        return ofIngredients(plannedIngredients(book, recipe, swaps));
    }

    /** The ingredients of a dish in a plan, through its whole tree, each once. @param swaps as for {@link #planned} */
    public static List<Ingredient> plannedIngredients(Book book, String recipe, Map<String, String> swaps) {
        TreeSet<String> ingredients = new TreeSet<>();
        collectPlanned(book, recipe, true, swaps, ingredients);
        return ingredients.stream().map(book::ingredient).toList();
    }

    private static void collectPlanned(Book book, String recipe, boolean dish, Map<String, String> swaps, Set<String> into) {
        for (Recipe.Line line : book.recipe(recipe).ingredients()) {
            if (book.recipes().containsKey(line.item())) {
                collectPlanned(book, line.item(), false, swaps, into);
            } else {
                into.add(used(line, dish, swaps));
            }
        }
    }

    /**
     * The ingredient that a plan uses on a line.
     *
     * @param dish whether the line stands in the dish itself, not in a component of it
     * @param swaps as for {@link #planned}
     */
    public static String used(Recipe.Line line, boolean dish, Map<String, String> swaps) {
        String every = dish ? swaps.get(line.item() + EVERY_LINE) : null;
        if (every != null) {
            return every;
        }
        return line.planSubstitute() ? swaps.getOrDefault(line.item(), line.item()) : line.item();
    }

    /**
     * Whether food of this statement may stand for food of another without anybody being told: no allergen added, no unknown
     * added, no diet lost.
     */
    public boolean sameFor(DishStatement other) {
        return other.contains.containsAll(contains) && other.notStated.containsAll(notStated)
                && kept(other.vegan, vegan) && kept(other.vegetarian, vegetarian);
    }

    private static boolean kept(Known before, Known now) {
        return before != Known.YES || now == Known.YES;
    }

    public static DishStatement ofIngredients(Collection<Ingredient> ingredients) {
        SortedSet<String> contains = new TreeSet<>();
        SortedSet<String> notStated = new TreeSet<>();
        EnumSet<Ingredient.Origin> origins = EnumSet.noneOf(Ingredient.Origin.class);
        for (Ingredient i : ingredients) {
            contains.addAll(i.allergens().contains());
            origins.addAll(i.origins());
            if (!i.allergens().othersKnown()) {
                notStated.add(i.name());
            }
        }
        return new DishStatement(contains, notStated, against(contains, ANIMAL, allIn(origins, VEGAN)),
                against(contains, FLESH, allIn(origins, VEGETARIAN)));
    }

    /** An allergen of animal kind outweighs what an origin says. */
    private static Known against(Set<String> contains, List<String> kinds, Known diet) {
        boolean has = contains.stream().anyMatch(c -> kinds.stream().anyMatch(k -> c.equals(k) || c.startsWith(k + "-")));
        return has ? Known.NO : diet;
    }

    private static Known allIn(Set<Ingredient.Origin> origins, Set<Ingredient.Origin> allowed) {
        boolean unknown = origins.contains(Ingredient.Origin.UNKNOWN) || origins.isEmpty();
        boolean other = origins.stream().anyMatch(o -> o != Ingredient.Origin.UNKNOWN && !allowed.contains(o));
        return other ? Known.NO : unknown ? Known.UNKNOWN : Known.YES;
    }

    /**
     * Whether the recipe lists an allergen. {@code milk} asks for that word; {@code fish} for any fish by kind.
     * UNKNOWN when it is not listed but something is not stated.
     */
    public Known lists(String word) {
        if (contains.stream().anyMatch(c -> c.equals(word) || c.startsWith(word + "-"))) {
            return Known.YES;
        }
        return notStated.isEmpty() ? Known.NO : Known.UNKNOWN;
    }

    /** Whether it keeps a promise of diet and absence; unknown keeps no promise. */
    public boolean keeps(Promises.Coverage promise) {
        boolean diet = promise.diet().map(d -> (d == Promises.Diet.VEGAN ? vegan : vegetarian) == Known.YES).orElse(true);
        return diet && promise.without().stream().allMatch(w -> lists(w) == Known.NO);
    }

    /** {@code Contains milk, wheat. Other allergens not stated: curry powder.} Always complete in what is known. */
    public String sentence() {
        String known = contains.isEmpty() ? "" : "Contains " + String.join(", ", contains.stream()
                .map(DishStatement::spoken).toList()) + ".";
        if (!notStated.isEmpty()) {
            String what = contains.isEmpty() ? "Allergens not stated: " : " Other allergens not stated: ";
            return known + what + String.join(", ", notStated) + ".";
        }
        return contains.isEmpty() ? "Recipe lists none of the nine major allergens." : known;
    }

    /** {@code fish-cod} as a label says it: {@code cod}; {@code milk-goat}: {@code goat milk}. */
    public static String spoken(String word) {
        int hyphen = word.indexOf('-');
        return switch (hyphen < 0 ? "" : word.substring(0, hyphen)) {
            case "fish", "shellfish" -> word.substring(hyphen + 1).replace('-', ' ');
            case "milk", "egg" -> word.substring(hyphen + 1) + " " + word.substring(0, hyphen);
            default -> word.replace('-', ' ');
        };
    }
}
