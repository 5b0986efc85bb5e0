package croftboard.book.file;

import croftboard.book.LocalRules;
import croftboard.book.LocalRules.Definition;
import croftboard.book.Promises;
import croftboard.book.Promises.Coverage;
import croftboard.book.Promises.Diet;
import croftboard.book.Promises.FoodCost;
import croftboard.book.Promises.Trait;
import croftboard.book.Promises.Variety;
import croftboard.book.Promises.Within;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the kitchen promises and pays for, what it calls local, and which health code it follows. */
final class PromisesReader {
    static final Promises NO_PROMISES = new Promises(Cents.ZERO, List.of(), List.of(), Ratio.ZERO,
            Optional.empty(),
            Ratio.ZERO, Cents.ZERO);
    static final Map<String, Diet> DIETS = Words.of(Diet.values());
    private static final Map<String, Trait> TRAITS = Words.of(Trait.values());
    private static final Map<String, Within> WITHIN = Words.of(Within.values());
    private final Values values;
    private final Quantities quantities;
    private final StatementReader statements;
    private final Notebook notebook;

    PromisesReader(Values values, Quantities quantities) {
        this.values = values;
        this.quantities = quantities;
        this.statements = new StatementReader(values);
        this.notebook = values.notebook();
    }

    Promises read(Node node) {
        Fields p = Fields.of(notebook, Form.PROMISES, "promises", node.spot(), node);
        Set<String> ids = new HashSet<>();
        Set<String> marks = new HashSet<>();
        List<Coverage> coverage = p.has("coverage")
                ? p.list("coverage", values).stream().map(n -> coverage(n, ids, marks)).toList()
                : List.of();
        List<Variety> variety = p.has("variety") ? variety(p.list("variety", values)) : List.of();
        return new Promises(p.get("empty_slot", n -> quantities.price(n, "each")), coverage, variety,
                p.or("local_share", Ratio.ZERO, n -> quantities.rate(n, "per dollar short")),
                p.maybe("food_cost", this::foodCost),
                p.or("labour_evenness", Ratio.ZERO, n -> quantities.rate(n, "per minute").times(100)),
                p.or("change", Cents.ZERO, n -> quantities.price(n, "each")));
    }

    private Coverage coverage(Node node, Set<String> ids, Set<String> marks) {
        Fields c = Fields.of(notebook, Form.COVERAGE, "the coverage promise", node.spot(), node);
        String id = c.get("id", values::id);
        if (!id.equals(Values.NOTHING) && !ids.add(id)) {
            notebook.fault(c.get("id").spot(), "a second promise " + Notebook.show(id),
                    "give it a name of its own");
        }
        String mark = c.get("mark", n -> mark(n, marks));
        Optional<String> course = c.maybe("course", values::id);
        course.ifPresent(w -> notebook.points(Pointer.To.COURSE, w, c.get("course").spot(),
                "a coverage promise"));
        if (node instanceof Node.Mapping && !c.has("diet") && !c.has("without")) {
            notebook.fault(c.spot(), "a coverage promise that asks for nothing",
                    "add diet: vegan or without: [wheat]");
        }
        return new Coverage(id, c.get("say", values::text), mark, course,
                c.maybe("diet", n -> values.word(n, DIETS, Diet.VEGAN)),
                c.or("without", Set.of(), statements::without),
                c.get("at_least", n -> quantities.whole(n, 1, 100)),
                c.get("price", n -> quantities.price(n, "per day")));
    }

    private String mark(Node node, Set<String> marks) {
        return values.value(node, "one letter", "", s -> {
            if (s.text().length() != 1 || !Character.isLetter(s.text().charAt(0))) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is not one letter",
                        "write one letter like V");
            } else if (!marks.add(s.text())) {
                notebook.fault(s.spot(), "a second promise with the mark " + s.text(),
                        "give it a letter of its own");
            }
            return s.text();
        });
    }

    private List<Variety> variety(List<Node> nodes) {
        List<Variety> variety = new ArrayList<>();
        for (Node node : nodes) {
            int before = notebook.faultCount();
            Fields v = Fields.of(notebook, Form.VARIETY, "the variety promise", node.spot(), node);
            Variety next = new Variety(v.get("of", n -> values.word(n, TRAITS, Trait.MAIN)),
                    v.get("within", n -> values.word(n, WITHIN, Within.DAY)),
                    v.get("at_most", n -> quantities.whole(n, 1, 100)),
                    v.get("price", n -> quantities.price(n, "each")));
            if (notebook.faultCount() == before
                    && variety.stream().anyMatch(o -> o.of() == next.of() && o.within() == next.within())) {
                notebook.fault(v.spot(), "a second variety promise of the same kind", "keep one of them");
            }
            variety.add(next);
        }
        return List.copyOf(variety);
    }

    private FoodCost foodCost(Node node) {
        Fields c = Fields.of(notebook, Form.FOOD_COST, "food_cost", node.spot(), node);
        return new FoodCost(c.get("at_most", n -> quantities.share(n, false, 100)),
                c.get("price", n -> quantities.rate(n, "per dollar over")));
    }

    LocalRules local(Node node) {
        Fields f = Fields.of(notebook, Form.LOCAL, "local", node.spot(), node);
        List<Definition> definitions = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (Node each : f.list("definitions", values)) {
            Definition definition = definition(each);
            if (!definition.id().equals(Values.NOTHING) && !ids.add(definition.id())) {
                notebook.fault(each.spot(), "a second definition " + Notebook.show(definition.id()),
                        "give it a name of its own");
            }
            definitions.add(definition);
        }
        String inForce = f.get("in_force", values::id);
        if (!inForce.equals(Values.NOTHING) && !ids.contains(inForce)
                && f.get("definitions") instanceof Node.Sequence) {
            notebook.fault(f.get("in_force").spot(), "there is no definition " + Notebook.show(inForce),
                    notebook.meant(inForce, ids, ids.isEmpty() ? "add it under definitions"
                    : "the definitions are "
                            + String.join(", ", ids)));
        }
        return new LocalRules(inForce, List.copyOf(definitions));
    }

    private Definition definition(Node node) {
        Fields d = Fields.of(notebook, Form.DEFINITION, "the definition of local", node.spot(), node);
        Set<String> states = new LinkedHashSet<>();
        if (d.has("states")) {
            d.list("states", values).forEach(n -> states.add(new PlaceReader(values).state(n)));
        }
        if (node instanceof Node.Mapping && !d.has("miles") && !d.has("states")) {
            notebook.fault(d.spot(), "a definition of local without states or miles",
                    "add states: [NY] or miles: 150");
        }
        return new Definition(d.get("id", values::id), d.get("say", values::text),
                java.util.Collections.unmodifiableSet(states),
                d.maybe("miles", n -> quantities.whole(n, 1, 10_000)),
                d.get("mixed", n -> quantities.share(n, true, 100)));
    }

    record Health(String edition, String authority) { }

    Health health(Node node) {
        Fields h = Fields.of(notebook, Form.HEALTH_CODE, "health_code", node.spot(), node);
        return new Health(h.get("edition", values::text), h.get("authority", values::text));
    }
}
