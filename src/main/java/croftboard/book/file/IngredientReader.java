package croftboard.book.file;

import croftboard.book.Ingredient;
import croftboard.book.Ingredient.Cut;
import croftboard.book.Ingredient.Measure;
import croftboard.book.Ingredient.Statement;
import croftboard.book.Ingredient.Storage;
import croftboard.book.Ingredient.Substitute;
import croftboard.book.Ingredient.Tcs;
import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code kitchen/ingredients/SHELF.yaml}: a map of id to ingredient. */
final class IngredientReader {
    static final int LONGEST_KEEPING_DAYS = 1_500;
    private static final Map<String, Storage> STORAGES = Words.of(Storage.values());
    private static final Map<String, Tcs> TCS = Words.of(Tcs.values());
    private final Values values;
    private final Quantities quantities;
    private final StatementReader statements;
    private final Notebook notebook;

    IngredientReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.statements = new StatementReader(values);
        this.notebook = values.notebook();
    }

    void read(String file, Node root, Drafts drafts) {
        values.each(root, "the ingredients", (key, node) -> {
            Ingredient ingredient = ingredient(FileKind.baseName(file), key, node);
            Ingredient before = drafts.ingredients.putIfAbsent(ingredient.id(), ingredient);
            if (before != null) {
                notebook.fault(key.spot(), "the ingredient " + Notebook.show(key.text()) + " is already in "
                        + notebook.spotOf(before), "keep one of them, or give this one another name");
            }
        });
    }

    private Ingredient ingredient(String shelf, Node.Scalar key, Node node) {
        int before = notebook.faultCount();
        String id = values.checkedId(key.text(), key.spot());
        Fields f = Fields.of(notebook, Form.INGREDIENT, "the ingredient " + Notebook.show(id), key.spot(),
                node);
        String name = f.get("name", values::text);
        Storage storage = f.get("storage", n -> values.word(n, STORAGES, Storage.DRY));
        boolean free = f.or("free", false, values::yesNo);
        Map<String, Cut> cuts = cuts(f);
        boolean cutsRead = notebook.faultCount() == before;
        Ingredient ingredient = new Ingredient(id, name, f.or("label", name, values::text), shelf,
                f.get("origin", statements::origins),
                f.get("allergens", n -> statements.read(n, Words.ALLERGENS)),
                f.or("gluten_grains", Statement.UNKNOWN, n -> statements.read(n, Words.GLUTEN_GRAINS)),
                f.or("tcs", Tcs.UNKNOWN, n -> values.word(n, TCS, Tcs.UNKNOWN)), storage,
                f.get("keeps", n -> quantities.days(n, 0, LONGEST_KEEPING_DAYS)),
                f.or("thaw", 0, n -> quantities.days(n, 0, 7)),
                f.maybe("keep_worth", n -> quantities.share(n, true, 100)),
                f.maybe("par", quantities::amount), free,
                f.or("salt", Ratio.ZERO, n -> quantities.share(n, true, 100)), cuts,
                measures(f, cuts, cutsRead),
                substitutes(f), f.maybe("made_of", values::text));
        contradictions(f, storage, free);
        if (notebook.faultCount() == before) {
            animalAllergens(f, ingredient);
        }
        notebook.part(ingredient, "par", f.get("par").spot());
        notebook.part(ingredient, "allergens", f.get("allergens").spot());
        return notebook.wrote(ingredient, key.spot(), before);
    }

    private void contradictions(Fields f, Storage storage, boolean free) {
        if (f.has("thaw") && f.has("storage") && storage != Storage.FREEZER) {
            notebook.fault(f.get("thaw").spot(), "a thawing time for food that is not in the freezer",
                    "write storage: freezer, or leave thaw out");
        }
        if (free && f.has("par")) {
            notebook.fault(f.get("par").spot(), "a par for something free, which is never bought",
                    "leave par out");
        }
    }

    /** Milk, egg, fish and shellfish are of animal origin: a plant origin beside them would let a dish pass for vegan. */
    private void animalAllergens(Fields f, Ingredient ingredient) {
        boolean animal = ingredient.allergens().contains().stream().anyMatch(a -> a.equals("milk") || a.equals("egg")
                || a.startsWith("milk-") || a.startsWith("egg-") || a.startsWith("fish-") || a.startsWith("shellfish-"));
        boolean plantOnly = java.util.EnumSet.of(Ingredient.Origin.PLANT, Ingredient.Origin.FUNGUS,
                Ingredient.Origin.MINERAL, Ingredient.Origin.MICROBE).containsAll(ingredient.origins());
        if (animal && plantOnly && f.has("origin") && f.has("allergens")) {
            notebook.fault(f.get("allergens").spot(), "an allergen of animal kind in food of origin "
                    + String.join(", ", ingredient.origins().stream().map(o -> o.name().toLowerCase(java.util.Locale.ROOT))
                            .sorted().toList()), "add its origin, for example origin: [plant, dairy], or correct the allergens");
        }
    }

    private Map<String, Cut> cuts(Fields f) {
        Map<String, Cut> cuts = new LinkedHashMap<>();
        if (f.has("cuts")) {
            values.each(f.get("cuts"), "cuts", (key, node) -> {
                String name = values.checkedId(key.text(), key.spot());
                Fields c = Fields.of(notebook, Form.CUT, "the cut " + Notebook.show(name), key.spot(),
                        node);
                cuts.put(name, new Cut(name, c.get("yield", n -> quantities.share(n, false, 100)),
                        c.get("source", values::text)));
            });
        }
        return Collections.unmodifiableMap(cuts);
    }

    private List<Measure> measures(Fields f, Map<String, Cut> cuts, boolean cutsRead) {
        List<Measure> measures = new ArrayList<>();
        if (f.has("measures")) {
            for (Node node : f.list("measures", values)) {
                Measure measure = measure(node, cuts, cutsRead);
                measures.stream().filter(m -> m.cut().equals(measure.cut())
                        && m.measure().unit().converts(measure.measure().unit())).findFirst().ifPresent(m ->
                        notebook.fault(node.spot(), "a second measure by the " + measure.measure().unit()
                        + " for "
                                + measure.cut().map(c -> "the cut " + Notebook.show(c)).orElse("all cuts"),
                                "keep one: a volume tells all volumes"));
                measures.add(measure);
            }
        }
        return List.copyOf(measures);
    }

    private Measure measure(Node node, Map<String, Cut> cuts, boolean cutsRead) {
        int before = notebook.faultCount();
        Fields m = Fields.of(notebook, Form.MEASURE, "the measure", node.spot(), node);
        Optional<String> cut = m.maybe("cut", values::id);
        cut.filter(c -> cutsRead && !cuts.containsKey(c) && !c.equals(Values.NOTHING)).ifPresent(c ->
                notebook.fault(m.get("cut").spot(), "there is no cut " + Notebook.show(c),
                cutsOf(c, cuts)));
        boolean purchased = m.has("of") && m.get("of", n -> values.word(n, Map.of("ap", true), false));
        return notebook.wrote(new Measure(m.get("measure", quantities::householdMeasure), cut, purchased,
                m.get("weighs", quantities::weight), m.get("source", values::text)), node.spot(), before);
    }

    private String cutsOf(String cut, Map<String, Cut> cuts) {
        return cuts.isEmpty() ? "leave cut out, or add it under cuts"
                : notebook.meant(cut, cuts.keySet(), "the cuts are " + String.join(", ", cuts.keySet()));
    }

    private List<Substitute> substitutes(Fields f) {
        List<Substitute> substitutes = new ArrayList<>();
        if (f.has("substitutes")) {
            for (Node node : f.list("substitutes", values)) {
                int before = notebook.faultCount();
                Fields s = Fields.of(notebook, Form.SUBSTITUTE, "the substitute", node.spot(), node);
                String use = s.get("use", values::id);
                notebook.points(Pointer.To.INGREDIENT, use, s.get("use").spot(), "a substitute");
                Substitute substitute = new Substitute(use, s.maybe("cut", values::id),
                        s.get("ratio", n -> quantities.number(n, Ratio.of(1, 1000), Ratio.of(1000),
                        "1/3")));
                notebook.part(substitute, "cut", s.has("cut") ? s.get("cut").spot() : s.get("use").spot());
                substitutes.add(notebook.wrote(substitute, s.get("use").spot(), before));
            }
        }
        return List.copyOf(substitutes);
    }
}
