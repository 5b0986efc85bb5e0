package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.measure.Cents;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.CheapestPrices;
import croftboard.need.ScaledRecipe;
import croftboard.safety.DishStatement;
import java.util.List;
import java.util.Optional;

/** A recipe and all that goes into it, scaled: amounts, batches, equipment, cost, statements, and how to handle it. */
public final class ScaleScreen implements Screen {
    private final Book book;
    private final Names names;
    private final List<ScaledRecipe> tree;
    private final ScaledRecipe asked;
    private final CheapestPrices prices;
    private final String why;

    /**
     * @param tree from {@link ScaledRecipe#tree}: what was asked for stands last
     * @param why how the size was found, a clause: {@code for 120 portions}
     */
    public ScaleScreen(Book book, List<ScaledRecipe> tree, CheapestPrices prices, String why) {
        this.book = book;
        this.names = new Names(book);
        this.tree = tree;
        this.asked = tree.get(tree.size() - 1);
        this.prices = prices;
        this.why = why;
    }

    @Override
    public String name() {
        return "scale";
    }

    @Override
    public void print(Page page) {
        page.heading(asked.recipe().name() + ", " + why);
        page.say(size(asked));
        tree.forEach(r -> recipe(page, r));
        page.gap();
        page.say("AP: as purchased. EP: edible portion, after trimming. Weights to the quarter ounce, cans whole, other"
                + " counts up to the next half.");
        new ScaleCosts(book, asked, prices).print(page);
        statements(page);
    }

    private static String size(ScaledRecipe r) {
        String whole = r.wholeSteps().equals(r.batches()) ? "" : "; in whole batch steps " + CookAmounts.times(r.wholeSteps())
                + whole(r);
        return "Makes " + CookAmounts.mass(r.grams()) + r.portions().map(p -> ", " + portions(p) + " of "
                + CookAmounts.of(r.recipe().sale().orElseThrow().portion())).orElse("") + ": "
                + CookAmounts.times(r.batches()) + " of the standard batch (" + CookAmounts.of(r.recipe().makes()) + ")"
                + whole + ".";
    }

    private static String whole(ScaledRecipe r) {
        return r.recipe().isDish()
                ? " (" + portions(r.recipe().portionsPerBatch().times(r.wholeSteps())) + ")"
                : " (" + CookAmounts.mass(r.recipe().makes().base().times(r.wholeSteps())) + ")";
    }

    private static String portions(Ratio portions) {
        long whole = portions.floor();
        return whole + (whole == 1 ? " portion" : " portions");
    }

    private void recipe(Page page, ScaledRecipe r) {
        page.subheading(r == asked ? r.recipe().name() : r.recipe().name() + " (for the above: "
                + CookAmounts.mass(r.grams()) + ")");
        if (r != asked) {
            page.say(size(r));
        }
        page.table(items(r));
        r.loads().forEach(l -> page.item("- ", load(l)));
        page.item("- ", hands(r));
        steps(page, r.recipe());
        if (r.garlicInOil()) {
            page.item("! ", "CAUTION. " + Cautions.garlicInOil(book.kitchen()));
        }
    }

    private TextTable items(ScaledRecipe r) {
        TextTable table = new TextTable(TextTable.Column.words("item"), TextTable.Column.words("cut"),
                TextTable.Column.words("measure"), TextTable.Column.figure("AP"), TextTable.Column.figure("EP"));
        for (ScaledRecipe.Line l : r.lines()) {
            boolean weighed = l.amount().unit().kind() == Unit.Kind.MASS;
            table.row(names.item(l.written().item()) + l.written().note().map(n -> " (" + n + ")").orElse(""),
                    l.isRecipe() ? "made here" : l.written().cut().orElse(""), weighed ? "" : CookAmounts.of(l.amount()),
                    l.isRecipe() ? "" : CookAmounts.mass(l.ap()), CookAmounts.mass(l.ep()));
        }
        return table;
    }

    private static String load(ScaledRecipe.Load l) {
        Kitchen.Equipment e = l.equipment();
        String units = CookAmounts.times(l.units().roundTo(Ratio.of(1, 4))) + " " + e.unit() + " of " + l.limit()
                + (e.perDay().isPresent() ? " a day" : " a week");
        return e.name() + ": " + units + (l.loads() <= 1 ? ": fits." : ": DOES NOT FIT at once, "
                + l.loads() + (e.perDay().isPresent() ? " days" : " weeks") + " of all of it.");
    }

    private String hands(ScaledRecipe r) {
        Ratio portions = r.portions().orElse(Ratio.ZERO);
        Ratio active = r.recipe().steps().stream().map(s -> s.activeMinutes().times(r.batches())
                .plus(s.perPortionMinutes().times(portions))).reduce(Ratio.ZERO, Ratio::plus);
        return "Hands: about " + CookAmounts.minutes(active) + ".";
    }

    private static void steps(Page page, Recipe recipe) {
        if (!recipe.steps().isEmpty()) {
            page.say("Steps, as written for one standard batch:");
        }
        int number = 1;
        for (Recipe.Step step : recipe.steps()) {
            page.item(" " + number++ + ". ", step.text());
        }
        note(page, "Scaling: ", recipe.scaling());
        note(page, "Done when: ", recipe.doneness());
        note(page, "Holding: ", recipe.holding());
        note(page, "Caution: ", recipe.caution());
    }

    private static void note(Page page, String what, Optional<String> words) {
        words.ifPresent(w -> page.item("- ", what + w));
    }

    private void statements(Page page) {
        DishStatement statement = DishStatement.of(book, asked.recipe().id());
        page.subheading("Statements");
        page.say(statement.sentence());
        page.say("Vegan: " + known(statement.vegan()) + ". Vegetarian: " + known(statement.vegetarian()) + ".");
        page.say(Cautions.allergens(book.kitchen()));
        page.say(Cautions.cooling(book.kitchen()));
    }

    private static String known(DishStatement.Known known) {
        return switch (known) {
            case YES -> "yes, by what the book states";
            case NO -> "no";
            case UNKNOWN -> "not stated";
        };
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("recipe", "recipe_name", "batches", "item", "item_name", "cut", "amount", "ap_grams",
                "ep_grams", "cost_usd");
        for (ScaledRecipe r : tree) {
            for (ScaledRecipe.Line l : r.lines()) {
                rows.add(r.recipe().id(), r.recipe().name(), r.batches().toDecimal(4), l.written().item(),
                        names.item(l.written().item()), l.written().cut(), CookAmounts.of(l.amount()),
                        l.ap().toDecimal(1), l.ep().toDecimal(1), l.isRecipe() ? ""
                                : Rows.dollars(new Cents(prices.cents(l.written().item(), l.ap()).round()).value()));
            }
        }
        return rows;
    }
}
