package croftboard.paper.served;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.CookAmounts;
import croftboard.measure.HouseholdAmounts;
import croftboard.measure.Ratio;
import croftboard.need.ScaledRecipe;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.Data;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.safety.Caution;
import croftboard.safety.DishStatement;
import croftboard.safety.FoodCode;
import croftboard.safety.file.FoodCodes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Sheet 9: dishes for a household, scaled to a few servings in household measures. It is the recipe as the book has it: a
 * household buys its own food, so the plan's substitutes are not in it.
 */
public final class HomeCards implements SheetMaker {
    /** When nobody says how many. */
    public static final int SERVINGS = 4;
    private final int servings;
    private final Optional<String> dish;

    public HomeCards() {
        this(SERVINGS, Optional.empty());
    }

    /**
     * @param servings above 0
     * @param dish only this one, whether the week has it or not; empty: the dishes of the week
     */
    public HomeCards(int servings, Optional<String> dish) {
        this.servings = servings;
        this.dish = dish;
    }

    @Override
    public SheetKind kind() {
        return SheetKind.HOME_CARD;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        if (context.filters().vendor().isPresent()) {
            return List.of();
        }
        Book book = context.book();
        return dish.map(List::of).orElseGet(() -> new OnOffer(context).dishes()).stream()
                .filter(d -> book.recipes().containsKey(d) && book.recipe(d).isDish()
                        && !book.recipe(d).ingredients().isEmpty())
                .map(d -> sheet(book, book.recipe(d))).toList();
    }

    private Sheet sheet(Book book, Recipe recipe) {
        Ratio batches = ScaledRecipe.batchesForPortions(recipe, Ratio.of(servings));
        List<ScaledRecipe> tree = ScaledRecipe.tree(book, recipe, batches);
        DishFacts facts = DishFacts.of(book, recipe.id(), Map.of());
        FoodCode code = FoodCodes.of(book.kitchen().healthCodeEdition());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Notice(facts.contains() + facts.advised().map(a -> " " + a).orElse("")
                + " This is what the deli's own ingredients contain: read the labels of yours."));
        for (int i = tree.size() - 1; i >= 0; i--) {
            part(book, tree.get(i), blocks);
        }
        substitutes(book, recipe, facts, blocks);
        cautions(tree, recipe, code, blocks);
        return new Sheet(kind(), "home-card-" + recipe.id() + (servings == SERVINGS ? "" : "-for-" + servings), recipe.name(), List.of("For " + servings
                + (servings == 1 ? " serving of " : " servings of ") + CookAmounts.of(recipe.sale().orElseThrow().portion())
                + ", at home", "The steps are the deli's, for a batch of " + recipe.portionsPerBatch().toDecimal(0)
                + " portions: read \"What does not scale down\" first."), blocks, data(recipe, tree, book), Sheet.Look.PLAIN);
    }

    /** The dish first, then what goes into it. */
    private static void part(Book book, ScaledRecipe scaled, List<Block> blocks) {
        Recipe recipe = scaled.recipe();
        blocks.add(new Block.Heading(1, recipe.isDish() ? "What goes in" : recipe.name() + ": makes "
                + recipe.cup().map(c -> HouseholdAmounts.volume(scaled.grams().over(c.base()).times(croftboard.measure.Unit.CUP
                        .base()))).orElseGet(() -> HouseholdAmounts.mass(scaled.grams()))));
        List<Row> rows = scaled.lines().stream().map(l -> HouseholdLine.of(book, l)).map(l -> Row.of(l.amount(), l.what()))
                .toList();
        blocks.add(new Block.Table(List.of(Column.words("Amount", 38), Column.words("Ingredient, ready to use", 62)), rows));
        for (int i = 0; i < recipe.steps().size(); i++) {
            blocks.add(new Block.Text((i + 1) + ". " + recipe.steps().get(i).text()));
        }
        recipe.doneness().ifPresent(d -> blocks.add(new Block.Text("Done when: " + d)));
        recipe.scaling().ifPresent(s -> blocks.add(new Block.Text("On amounts: " + s)));
        recipe.holding().filter(h -> recipe.isDish()).ifPresent(h -> blocks.add(new Block.Text("Keeping: " + h)));
        recipe.caution().ifPresent(c -> blocks.add(new Block.Notice(c)));
    }

    private static void substitutes(Book book, Recipe recipe, DishFacts facts, List<Block> blocks) {
        List<String> lines = new ArrayList<>();
        for (Ingredient own : facts.ingredients()) {
            for (Ingredient.Substitute other : own.substitutes()) {
                Ingredient use = book.ingredient(other.use());
                DishStatement with = DishStatement.of(book, recipe.id(), i -> i.equals(own.id()) ? use.id() : i);
                String weight = other.ratio().equals(Ratio.ONE) ? "the same weight of "
                        : CookAmounts.times(other.ratio()) + " times its weight of ";
                lines.add("For " + own.name() + ": " + weight + use.name()
                        + other.cut().map(c -> ", " + c.replace('-', ' ')).orElse("") + "." + change(facts.statement(), with));
            }
        }
        if (!lines.isEmpty()) {
            blocks.add(new Block.Heading(1, "What may take the place of what"));
            lines.forEach(l -> blocks.add(new Block.Text(l)));
        }
    }

    /** Told whenever the statement is another one. */
    private static String change(DishStatement before, DishStatement with) {
        return before.equals(with) ? "" : " Then: " + with.sentence();
    }

    /** Leftovers within two hours: advice to households of the US Department of Agriculture, from memory. */
    private void cautions(List<ScaledRecipe> tree, Recipe recipe, FoodCode code, List<Block> blocks) {
        blocks.add(new Block.Heading(1, "What does not scale down"));
        blocks.add(new Block.Text("Pans, kettles, lots, amounts and times in the steps belong to the deli's batch."
                + " At home take a pan in which the food lies as deep as the step says. A small amount heats, browns and"
                + " dries faster: look before the time is up, and keep some water at hand. Salt, chile and strong spices: begin"
                + " with three quarters, then taste. Leavening, gelatine and thickeners: measure exactly. Amounts here are"
                + " rounded to what a spoon can measure."));
        if (tree.stream().anyMatch(r -> r.garlicInOil() || r.recipe().care().garlicInOil())) {
            blocks.add(new Block.Notice(Caution.garlicInOil(code)));
        }
        blocks.add(new Block.Text(Caution.keepingAtHome() + " Leftovers: into the refrigerator within 2 hours, in shallow"
                + " boxes."));
    }

    private static Data data(Recipe dish, List<ScaledRecipe> tree, Book book) {
        Data.Building data = Data.of("dish", "recipe", "item", "name", "household", "edible_g", "contains");
        TreeMap<String, String> contains = new TreeMap<>();
        new TreeSet<>(tree.stream().map(r -> r.recipe().id()).toList())
                .forEach(r -> contains.put(r, DishStatement.of(book, r).sentence()));
        for (int i = tree.size() - 1; i >= 0; i--) {
            ScaledRecipe scaled = tree.get(i);
            for (ScaledRecipe.Line line : scaled.lines()) {
                HouseholdLine said = HouseholdLine.of(book, line);
                data.row(dish.id(), scaled.recipe().id(), line.written().item(), said.what(), said.amount(),
                        line.ep().toDecimal(1).toPlainString(), contains.get(scaled.recipe().id()));
            }
        }
        return data.done();
    }
}
