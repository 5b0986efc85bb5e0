package croftboard.demo;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.book.Vendor;
import croftboard.book.file.BookReader;
import croftboard.book.file.BookReading;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The book at the root of the repository, read once, and the plain questions a cook and a manager ask of
 * it.
 */
final class DemoBook {
    static final Path ROOT = root();
    static final BookReading READING = BookReader.read(ROOT);
    static final Book BOOK = READING.orElseThrow();
    static final RecipeTree TREE = new RecipeTree(BOOK);

    private DemoBook() { }

    /** The folder above (or at) the working directory that holds kitchen/ and pom.xml. */
    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        while (here != null && !(Files.exists(here.resolve("pom.xml"))
                && Files.exists(here.resolve("kitchen")))) {
            here = here.getParent();
        }
        if (here == null) {
            throw new IllegalStateException("no book above the working directory");
        }
        return here;
    }

    static Stream<Recipe> dishes() {
        return BOOK.recipes().values().stream().filter(Recipe::isDish);
    }

    static Stream<Recipe> components() {
        return BOOK.recipes().values().stream().filter(r -> !r.isDish());
    }

    static Stream<Vendor.Offer> offers(String item) {
        return BOOK.vendors().values().stream().flatMap(v -> v.offers().stream()).filter(o -> o.item()
                .equals(item));
    }

    /** Weeks 1 to 53 in which the dish stands in the calendar. */
    static Set<Integer> weeksOf(Recipe dish) {
        Recipe.Sale sale = dish.sale().orElseThrow();
        return IntStream.rangeClosed(1, 53)
                .filter(w -> sale.seasons().isEmpty()
                        || sale.seasons().stream().anyMatch(s -> BOOK.seasons().named().get(s).holds(w)))
                .filter(w -> sale.weeks().map(r -> r.holds(w)).orElse(true))
                .boxed().collect(Collectors.toCollection(TreeSet::new));
    }

    static boolean holds(List<Vendor.Expected> weeks, int week) {
        return weeks.stream().anyMatch(e -> e.packs() > 0 && e.weeks().holds(week));
    }

    /** List price of one pack, cents a gram as purchased. */
    static double centsPerGram(Vendor.Offer offer) {
        return offer.price().value()
                / TREE.purchasedGrams(BOOK.ingredient(offer.item()), offer.holds()).toDouble();
    }

    /** All ingredients through the whole tree. */
    static Set<String> ingredientsOf(Recipe recipe) {
        return new TreeSet<>(TREE.purchased(recipe).keySet());
    }

    /**
     * Grams of what goes into one standard batch, less what cooking takes away, over what the card says
     * it makes.
     */
    static double balance(Recipe recipe) {
        Ratio in = TREE.lines(recipe).stream().map(RecipeTree.Weighed::ep).reduce(Ratio.ZERO, Ratio::plus);
        return in.times(Ratio.ONE.minus(recipe.loss())).over(recipe.makes().base()).toDouble();
    }

    /** Share of salt by weight, sodium of all ingredients counted as salt. */
    static double saltShare(Recipe recipe) {
        return TREE.edible(recipe).entrySet().stream()
                .map(e -> BOOK.ingredient(e.getKey()).salt().times(e.getValue()))
                .reduce(Ratio.ZERO, Ratio::plus).over(recipe.makes().base()).toDouble();
    }

    static Ingredient ingredient(String id) {
        return BOOK.ingredient(id);
    }
}
