package croftboard.book.file;

import croftboard.book.Learned;
import croftboard.book.ManagersFigure;
import croftboard.book.Seasons.DemandFactor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** {@code seasons/learned.yaml} and {@code seasons/overrides.yaml}. Lines and dishes that the book no longer has may stand in the first. */
final class LearnedReader {
    private static final int MOST_COUNT = 100_000_000;
    private static final Ratio MOST_PORTIONS = Ratio.of(100_000);
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    LearnedReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.notebook = values.notebook();
    }

    void learned(Node root, Drafts drafts) {
        Fields f = Fields.of(notebook, Form.LEARNED, "what was learned", root.spot(), root);
        Map<String, Learned.Line> lines = new TreeMap<>();
        values.each(f.get("lines"), "the learned lines", (key, node) -> lines.put(values.checkedId(key.text(), key.spot()), line(key, node)));
        Map<String, Learned.Dish> dishes = new TreeMap<>();
        values.each(f.get("dishes"), "the learned dishes", (key, node) -> dishes.put(values.checkedId(key.text(), key.spot()), dish(key, node)));
        drafts.learned = Optional.of(new Learned(f.get("version", this::count), f.get("through", this::isoWeek),
                f.get("fingerprint", this::fingerprint), f.get("days", this::count), f.get("ran_out", this::count),
                Collections.unmodifiableMap(lines), Collections.unmodifiableMap(dishes), weeks(f)));
    }

    private Learned.Line line(Node.Scalar key, Node node) {
        Fields l = Fields.of(notebook, Form.LEARNED_LINE, "what was learned of " + Notebook.show(key.text()), key.spot(), node);
        Map<DayOfWeek, Learned.Day> days = Values.byDay();
        values.each(l.get("days"), "the days", (word, n) -> {
            DayOfWeek day = values.word(word, Values.DAYS, DayOfWeek.MONDAY);
            Fields d = Fields.of(notebook, Form.LEARNED_DAY, "the day", word.spot(), n);
            days.put(day, new Learned.Day(d.get("portions", this::portions), d.get("seen", this::count), d.get("ran_out", this::count)));
        });
        return new Learned.Line(l.get("cv", n -> quantities.number(n, Ratio.ZERO, Ratio.of(3), "0.24")), l.get("seen", this::count),
                Collections.unmodifiableMap(days));
    }

    private Learned.Dish dish(Node.Scalar key, Node node) {
        Fields d = Fields.of(notebook, Form.LEARNED_DISH, "what was learned of " + Notebook.show(key.text()), key.spot(), node);
        return new Learned.Dish(d.get("draw", n -> quantities.number(n, Ratio.of(1, 2), Ratio.of(8, 5), "1.05")),
                d.get("seen", this::count), d.get("ran_out", this::count));
    }

    private List<DemandFactor> weeks(Fields f) {
        List<DemandFactor> weeks = new ArrayList<>();
        WeekTable taken = new WeekTable();
        for (Node node : f.has("weeks") ? f.list("weeks", values) : List.<Node>of()) {
            Fields w = Fields.of(notebook, Form.LEARNED_WEEK, "the factor", node.spot(), node);
            int before = notebook.faultCount();
            WeekRange range = w.get("weeks", quantities::weeks);
            if (notebook.faultCount() == before && w.get("weeks") instanceof Node.Scalar) {
                taken.take(range).ifPresent(other -> notebook.fault(w.get("weeks").spot(), range + " overlaps " + other
                        + " of another factor", "let each week stand once"));
            }
            weeks.add(new DemandFactor(range, w.get("times", n -> quantities.number(n, Ratio.ZERO, Ratio.of(100), "0.90"))));
        }
        return List.copyOf(weeks);
    }

    void overrides(Node root, Drafts drafts) {
        Set<List<Object>> taken = new HashSet<>();
        for (Node node : values.list(root)) {
            int before = notebook.faultCount();
            Fields o = Fields.of(notebook, Form.OVERRIDE, "the manager's figure", node.spot(), node);
            IsoWeek week = o.get("week", this::isoWeek);
            String line = o.get("line", values::id);
            DayOfWeek day = o.get("day", values::day);
            notebook.points(Pointer.To.LINE, line, o.get("line").spot(), "a manager's figure");
            drafts.overrides.add(new ManagersFigure(week, line, day, o.get("portions", this::portions),
                    o.maybe("instead_of", this::portions), o.get("reason", values::text)));
            if (notebook.faultCount() == before && !taken.add(List.of(week, line, day))) {
                notebook.fault(node.spot(), line + " has two figures of the manager's for the same day of " + week, "keep one of them");
            }
        }
    }

    private int count(Node node) {
        return quantities.whole(node, 0, MOST_COUNT);
    }

    private Ratio portions(Node node) {
        return quantities.number(node, Ratio.ZERO, MOST_PORTIONS, "38.5");
    }

    private IsoWeek isoWeek(Node node) {
        IsoWeek none = new IsoWeek(2000, 1);
        return values.value(node, "a week, such as 2027-W33", none, s -> IsoWeek.parse(s.text()).orElseGet(() -> {
            notebook.fault(s.spot(), Notebook.show(s.text()) + " is no week", "a year and a week of it, such as 2027-W33");
            return none;
        }));
    }

    private String fingerprint(Node node) {
        return values.value(node, "64 digits 0-9a-f", "", s -> {
            if (!s.text().matches("[0-9a-f]{64}")) {
                notebook.fault(s.spot(), "this is no fingerprint", "leave the file as croftboard learn wrote it, or learn again");
            }
            return s.text();
        });
    }
}
