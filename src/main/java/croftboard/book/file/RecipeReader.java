package croftboard.book.file;

import croftboard.book.Recipe;
import croftboard.book.Recipe.Hold;
import croftboard.book.Recipe.Line;
import croftboard.book.Recipe.Sale;
import croftboard.book.Recipe.Step;
import croftboard.book.Recipe.WorthOnly;
import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code recipes/*.yaml}: a map of id to dish or component. */
final class RecipeReader {
    static final int LONGEST_LIFE_DAYS = 7;
    private static final Map<String, String> KINDS = Words.same("dish", "component");
    private static final Map<String, Hold> HOLDS = Words.of(Hold.values());
    private final Values values;
    private final Quantities quantities;
    private final LineReader lines;
    private final StepReader steps;
    private final CareReader care;
    private final Notebook notebook;

    RecipeReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.lines = new LineReader(values, quantities);
        this.steps = new StepReader(values, quantities);
        this.care = new CareReader(values, quantities);
        this.notebook = values.notebook();
    }

    void read(Node root, Drafts drafts) {
        values.each(root, "the recipes", (key, node) -> {
            Recipe recipe = recipe(key, node);
            Recipe before = drafts.recipes.putIfAbsent(recipe.id(), recipe);
            if (before != null) {
                notebook.fault(key.spot(), "the recipe " + Notebook.show(key.text()) + " is already in "
                        + notebook.spotOf(before), "keep one of them, or give this one another name");
            }
        });
    }

    private Recipe recipe(Node.Scalar key, Node node) {
        int before = notebook.faultCount();
        String id = values.checkedId(key.text(), key.spot());
        Form form = form(node);
        Fields f = Fields.of(notebook, form, what(form) + Notebook.show(id), key.spot(), node);
        f.get("kind", n -> values.word(n, KINDS, "dish"));
        Recipe recipe = form == Form.WORTH_DISH ? worthOnly(id, f) : cooked(id, form, f);
        return notebook.wrote(recipe, key.spot(), before);
    }

    private static String what(Form form) {
        return form == Form.COMPONENT ? "the component " : "the dish ";
    }

    /** The form is told by {@code kind} and {@code worth}; without a kind, by whether it has a price. */
    private static Form form(Node node) {
        if (!(node instanceof Node.Mapping mapping)) {
            return Form.DISH;
        }
        boolean component = false;
        for (Node.Pair pair : mapping.pairs()) {
            boolean scalar = pair.value() instanceof Node.Scalar;
            if (pair.key().text().equals("worth")) {
                return Form.WORTH_DISH;
            }
            if (pair.key().text().equals("kind") && scalar) {
                component = ((Node.Scalar) pair.value()).text().equals("component");
            }
        }
        return component ? Form.COMPONENT : Form.DISH;
    }

    private Recipe cooked(String id, Form form, Fields f) {
        Hold hold = f.get("hold", n -> values.word(n, HOLDS, Hold.AMBIENT));
        Amount makes = f.get("makes", quantities::weight);
        List<Line> ingredients = f.list("ingredients", values).stream().flatMap(n -> lines.read(n).stream())
                .toList();
        if (f.isEmptyList("ingredients")) {
            notebook.fault(f.get("ingredients").spot(), "a recipe of nothing",
                    "list at least one ingredient");
        }
        boolean dish = form == Form.DISH;
        List<Step> worked = f.list("steps", values).stream().map(n -> steps.read(n, dish)).toList();
        Optional<Sale> sale = dish ? Optional.of(sale(f, makes)) : Optional.empty();
        int life = life(f, hold);
        return new Recipe(id, f.get("name", values::text), sale, makes,
                f.maybe("cup", quantities::weight), batchStep(f), life, hold,
                f.or("lead", 0, n -> quantities.days(n, 0, 1)),
                f.or("loss", Ratio.ZERO, n -> quantities.share(n, true, 95)), ingredients, worked,
                f.maybe("scaling", values::text), f.maybe("doneness", values::text),
                f.maybe("holding", values::text),
                f.maybe("caution", values::text), Optional.empty(), care.read(f, life, sale));
    }

    private Sale sale(Fields f, Amount makes) {
        int before = notebook.faultCount();
        Amount portion = f.get("portion", quantities::weight);
        if (notebook.faultCount() == before && makes != AmountText.PLACEHOLDER
                && portion != AmountText.PLACEHOLDER
                && portion.base().compareTo(makes.base()) > 0) {
            notebook.fault(f.get("portion").spot(), "a portion of " + portion
                    + " is more than the batch of " + makes,
                    "check makes and portion");
        }
        Sale sale = new Sale(fits(f), seasons(f), f.maybe("weeks", quantities::weeks), portion,
                f.get("price", n -> quantities.money(n, false)),
                f.or("draw", Ratio.ONE, n -> quantities.number(n, Ratio.of(1, 2), Ratio.of(8, 5), "1.05")),
                f.get("main", values::id), f.get("method", values::id), f.get("cuisine", values::id));
        return notebook.wrote(sale, f.has("fits") ? f.get("fits").spot() : f.spot(), notebook.faultCount());
    }

    private Set<String> fits(Fields f) {
        Set<String> fits = f.get("fits", values::ids);
        if (f.isEmptyList("fits")) {
            notebook.fault(f.get("fits").spot(), "a dish that fits nowhere",
                    "name courses or lines: [main]");
        }
        return fits;
    }

    /** Names of seasons; none for {@code all}. */
    private Set<String> seasons(Fields f) {
        Node node = f.get("seasons");
        if (!f.has("seasons") || node instanceof Node.Scalar scalar && scalar.text().equals(Words.ALL)) {
            return Set.of();
        }
        if (node instanceof Node.Scalar scalar && !scalar.isEmpty()) {
            notebook.fault(node.spot(), Notebook.show(scalar.text()) + " is not a list of seasons",
                    "write all, or [" + (scalar.text().length() > Values.LONGEST_ID ? "autumn, winter"
                    : scalar.text()) + "]");
            return Set.of();
        }
        Set<String> seasons = values.ids(node);
        for (Node item : values.list(node instanceof Node.Sequence ? node : new Node.Gone(node.spot()))) {
            if (item instanceof Node.Scalar scalar) {
                notebook.points(Pointer.To.SEASON, scalar.text(), scalar.spot(), "a recipe");
            }
        }
        return seasons;
    }

    private Ratio batchStep(Fields f) {
        return f.get("batch_step", n -> quantities.number(n, Ratio.of(1, 1000), Ratio.ONE, "1/4"));
    }

    private int life(Fields f, Hold hold) {
        int before = notebook.faultCount();
        int days = f.get("life", n -> quantities.days(n, 1, IngredientReader.LONGEST_KEEPING_DAYS));
        if (notebook.faultCount() == before && hold != Hold.AMBIENT && days > LONGEST_LIFE_DAYS) {
            notebook.fault(f.get("life").spot(), "a life of " + days + " days for food held hot or cold",
                    "at most 7 days, the day of making being day 1");
        }
        return days;
    }

    /** A dish of a plain choice problem: it makes one pound and sells by the pound, which nothing uses. */
    private Recipe worthOnly(String id, Fields f) {
        Amount pound = new Amount(Ratio.ONE, Unit.POUND);
        Sale sale = notebook.wrote(new Sale(fits(f), seasons(f), f.maybe("weeks", quantities::weeks),
                pound, Cents.ZERO,
                Ratio.ONE, "", "", ""), f.has("fits") ? f.get("fits").spot() : f.spot(),
                notebook.faultCount());
        Cents worth = f.get("worth", n -> quantities.money(n, true));
        return new Recipe(id, f.or("name", id, values::text), Optional.of(sale), pound, Optional.empty(),
                Ratio.ONE, 1,
                Hold.AMBIENT, 0, Ratio.ZERO, List.of(), List.of(), Optional.empty(), Optional.empty(),
                Optional.empty(),
                Optional.empty(), Optional.of(new WorthOnly(worth, steps.uses(f.get("uses"), true))));
    }
}
