package croftboard.book.file;

import croftboard.book.Ingredient.Storage;
import croftboard.book.Contact;
import croftboard.book.Kitchen;
import croftboard.book.Kitchen.Equipment;
import croftboard.book.Kitchen.Paperwork;
import croftboard.book.Kitchen.ServiceLine;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code kitchen/kitchen.yaml}. What may be absent depends on whether the book is "worth only". */
final class KitchenReader {
    /** No equipment has more units, a day or a week. */
    static final int MOST_UNITS = 100_000_000;
    /** What a kitchen that is not "worth only" must say. */
    static final List<String> NEEDED = List.of("name", "place", "time_zone", "paper", "gap", "stations",
            "cooks",
            "equipment", "surplus_worth", "portions", "waste", "promises", "local", "health_code");
    private static final Map<String, String> PAPERS = Words.same("letter", "a4");
    private static final Map<String, Storage> STORAGES = Words.of(Storage.values());
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;
    private final StaffReader staff;
    private final PromisesReader promises;

    KitchenReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.notebook = values.notebook();
        this.staff = new StaffReader(values, quantities);
        this.promises = new PromisesReader(values, quantities);
    }

    /** @param worthOnly defaults stand for what only a working kitchen needs */
    void read(Node root, Drafts drafts, boolean worthOnly) {
        int before = notebook.faultCount();
        Fields f = Fields.of(notebook, Form.KITCHEN, "the kitchen", root.spot(), root);
        for (String key : worthOnly || !(root instanceof Node.Mapping) ? List.<String>of() : NEEDED) {
            if (!f.has(key)) {
                notebook.fault(f.spot(), "the key [" + key + "] is missing in the kitchen", "add " + key
                        + ": ...");
            }
        }
        Set<DayOfWeek> open = f.get("open", values::days);
        if (f.isEmptyList("open")) {
            notebook.fault(f.get("open").spot(), "a kitchen that never opens",
                    "name the open days: [mon, tue]");
        }
        PortionWorth portions = portions(f);
        PromisesReader.Health health = f.or("health_code", new PromisesReader.Health("", ""),
                promises::health);
        Kitchen kitchen = new Kitchen(f.or("name", "", values::text), f.or("place", PlaceReader.NOWHERE,
                new PlaceReader(values)::read), f.or("time_zone", ZoneId.of("UTC"), this::zone),
                f.or("paper", "letter", n -> values.word(n, PAPERS, "letter")), open,
                f.or("prep_days", open, values::days),
                lines(f, open), f.or("gap", 0, n -> quantities.days(n, 0, 60)), staff.stations(f),
                staff.cooks(f),
                f.maybe("receiving", staff::receiving), equipment(f), surplus(f), portions.left(),
                portions.goodwill(),
                f.or("waste", Cents.ZERO, n -> quantities.price(n, "per lb")),
                f.or("promises", PromisesReader.NO_PROMISES, promises::read),
                f.maybe("local", promises::local),
                health.edition(), health.authority(), paperwork(f),
                f.maybe("new_dishes_per_month", n -> quantities.whole(n, 0, 200)));
        drafts.kitchen = Optional.of(notebook.wrote(kitchen, f.spot(), before));
    }

    private Paperwork paperwork(Fields f) {
        boolean letter = !(f.get("paper") instanceof Node.Scalar s && s.text().equals("a4"));
        return new Paperwork(f.or("contact", Contact.NONE, new OrderingReader(values, quantities)::contact),
                f.maybe("order_note", values::text),
                f.maybe("labels", n -> new LabelStockReader(values, quantities).read(n, letter)),
                f.or("packed", Set.of(), n -> packed(n, f)),
                f.or("thaw", Paperwork.THAW_DAYS, n -> quantities.days(n, 0, 7)));
    }

    /** Ids of the kitchen's own lines. */
    private Set<String> packed(Node node, Fields kitchen) {
        Set<String> known = new java.util.LinkedHashSet<>();
        for (Node line : kitchen.has("lines") ? kitchen.list("lines", values) : List.<Node>of()) {
            if (line instanceof Node.Mapping mapping) {
                mapping.pairs().stream().filter(p -> p.key().text().equals("id") && p.value() instanceof Node.Scalar)
                        .forEach(p -> known.add(((Node.Scalar) p.value()).text()));
            }
        }
        Set<String> packed = values.ids(node);
        for (String id : packed) {
            if (!known.contains(id)) {
                notebook.fault(node.spot(), "there is no line " + Notebook.show(id),
                        notebook.meant(id, known, "the lines are " + String.join(", ", known)));
            }
        }
        return packed;
    }

    private ZoneId zone(Node node) {
        return values.value(node, "a time zone like America/New_York", ZoneId.of("UTC"), s -> {
            Set<String> known = ZoneId.getAvailableZoneIds();
            if (!known.contains(s.text())) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is no time zone",
                        notebook.meant(s.text(), known, "write for example America/New_York"));
                return null;
            }
            return ZoneId.of(s.text());
        });
    }

    private List<ServiceLine> lines(Fields f, Set<DayOfWeek> open) {
        List<ServiceLine> lines = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Node node : f.list("lines", values)) {
            Fields l = Fields.of(notebook, Form.SERVICE_LINE, "the line", node.spot(), node);
            String id = staff.id(l, "line", seen);
            Optional<String> standing = l.maybe("standing", values::id);
            standing.ifPresent(d -> notebook.points(Pointer.To.DISH, d, l.get("standing").spot(),
                    "the line " + Notebook.show(id)));
            int before = notebook.faultCount();
            int run = l.or("run", 1, n -> quantities.days(n, 1, 7));
            if (notebook.faultCount() == before && !open.isEmpty() && run > open.size()) {
                notebook.fault(l.get("run").spot(), "a run of " + run + " days in a week of " + open.size()
                        + " open days",
                        "write at most " + open.size() + " days");
            }
            lines.add(notebook.wrote(new ServiceLine(id, l.or("name", id, values::text),
                    l.get("course", values::id), run,
                    standing), l.get("id").spot(), notebook.faultCount()));
        }
        if (f.isEmptyList("lines")) {
            notebook.fault(f.get("lines").spot(), "a kitchen without lines",
                    "add at least one {id: ..., name: ..., course: ..., run: 1 day}");
        }
        return List.copyOf(lines);
    }

    private List<Equipment> equipment(Fields f) {
        List<Equipment> equipment = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Node node : f.has("equipment") ? f.list("equipment", values) : List.<Node>of()) {
            Fields e = Fields.of(notebook, Form.EQUIPMENT, "the equipment", node.spot(), node);
            String id = staff.id(e, "equipment", seen);
            boolean held = e.or("held", false, values::yesNo);
            Equipment read = new Equipment(id, e.or("name", id, values::text), e.get("unit", values::text),
                    e.maybe("per_day", n -> quantities.whole(n, 0, MOST_UNITS)),
                    e.maybe("per_week", n -> quantities.whole(n, 0, MOST_UNITS)), held,
                    e.maybe("at_once", n -> quantities.whole(n, 1, MOST_UNITS)));
            if (node instanceof Node.Mapping && read.perDay().isPresent() == read.perWeek().isPresent()) {
                notebook.fault(e.spot(), "the equipment " + Notebook.show(id)
                        + " needs its units a day or a week, one of the two",
                        "write per_day: or per_week:");
            }
            equipment.add(read);
        }
        return List.copyOf(equipment);
    }

    private Map<Storage, Ratio> surplus(Fields f) {
        Map<Storage, Ratio> worth = new EnumMap<>(Storage.class);
        worth.put(Storage.WALK_IN, Ratio.of(60, 100));
        worth.put(Storage.DRY, Ratio.of(95, 100));
        worth.put(Storage.FREEZER, Ratio.of(90, 100));
        if (f.has("surplus_worth")) {
            Node node = f.get("surplus_worth");
            Fields s = Fields.of(notebook, Form.SURPLUS_WORTH, "surplus_worth", node.spot(), node);
            STORAGES.forEach((word, storage) -> worth.put(storage,
                    s.get(word, n -> quantities.share(n, true, 100))));
        }
        return java.util.Collections.unmodifiableMap(new LinkedHashMap<>(worth));
    }

    private record PortionWorth(Ratio left, Ratio goodwill) { }

    private PortionWorth portions(Fields f) {
        if (!f.has("portions")) {
            return new PortionWorth(Ratio.ZERO, Ratio.ZERO);
        }
        Node node = f.get("portions");
        Fields p = Fields.of(notebook, Form.PORTIONS, "portions", node.spot(), node);
        return new PortionWorth(p.get("left_worth", n -> quantities.share(n, true, 100)),
                p.get("goodwill", n -> quantities.share(n, true, 100)));
    }
}
