package croftboard.book.file;

import croftboard.book.Seasons.Crop;
import croftboard.book.Seasons.DemandFactor;
import croftboard.book.Seasons.Target;
import croftboard.measure.Ratio;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The files of {@code seasons/} but the events: seasons, targets, demand, closures, crops. */
final class SeasonsReader {
    private static final Ratio MOST_PORTIONS = Ratio.of(100_000);
    private static final Ratio MOST_FACTOR = Ratio.of(100);
    private static final Ratio MOST_CV = Ratio.of(3);
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    SeasonsReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.notebook = values.notebook();
    }

    /** {@code winter: W49..W12}. */
    void seasons(Node root, Drafts drafts) {
        values.each(root, "the seasons", (key, node) -> {
            values.checkedId(key.text(), key.spot());
            if (key.text().equals(Words.ALL)) {
                notebook.fault(key.spot(), "a season cannot be called all, which means the whole year",
                        "rename it");
            }
            drafts.seasons.put(key.text(), quantities.weeks(node));
        });
    }

    void targets(Node root, Drafts drafts) {
        WeekTable taken = new WeekTable();
        for (Node node : values.list(root)) {
            Fields t = Fields.of(notebook, Form.TARGET, "the target", node.spot(), node);
            WeekRange weeks = separate(t, taken, "target");
            drafts.targets.add(new Target(weeks, t.get("local", n -> quantities.share(n, true, 100))));
        }
    }

    /** The weeks of an entry, each of which may stand in one entry only. */
    private WeekRange separate(Fields f, WeekTable taken, String what) {
        int before = notebook.faultCount();
        WeekRange weeks = f.get("weeks", quantities::weeks);
        if (notebook.faultCount() == before && f.get("weeks") instanceof Node.Scalar) {
            taken.take(weeks).ifPresent(other ->
                    notebook.fault(f.get("weeks").spot(), weeks + " overlaps " + other
                    + " of another " + what, "let each week stand once"));
        }
        return weeks;
    }

    void demand(Node root, Drafts drafts) {
        Fields f = Fields.of(notebook, Form.DEMAND, "the demand", root.spot(), root);
        Ratio cv = f.or("cv", Ratio.of(35, 100), this::variation);
        values.each(f.get("lines"), "the lines' demand", (key, node) -> {
            notebook.points(Pointer.To.LINE, key.text(), key.spot(), "the demand");
            Fields l = Fields.of(notebook, Form.DEMAND_LINE, "the demand of " + Notebook.show(key.text()),
                    key.spot(), node);
            Map<DayOfWeek, Ratio> mean = Values.byDay();
            Values.DAYS.forEach((word, day) -> l.maybe(word, this::portions)
                    .ifPresent(p -> mean.put(day, p)));
            drafts.demand.put(key.text(), new Drafts.DemandDraft(key.spot(),
                    l.or("cv", cv, this::variation),
                    Collections.unmodifiableMap(mean), node instanceof Node.Mapping ? mean.keySet()
                    : Set.of(DayOfWeek.values())));
        });
        WeekTable taken = new WeekTable();
        for (Node node : f.has("weeks") ? f.list("weeks", values) : List.<Node>of()) {
            Fields w = Fields.of(notebook, Form.DEMAND_FACTOR, "the factor", node.spot(), node);
            WeekRange weeks = separate(w, taken, "factor");
            drafts.demandFactors.add(new DemandFactor(weeks,
                    w.get("times", n -> quantities.number(n, Ratio.ZERO, MOST_FACTOR, "0.90"))));
        }
    }

    private Ratio variation(Node node) {
        return quantities.number(node, Ratio.ZERO, MOST_CV, "0.35");
    }

    private Ratio portions(Node node) {
        return quantities.number(node, Ratio.ZERO, MOST_PORTIONS, "38");
    }

    void closures(Node root, Drafts drafts) {
        for (Node node : values.list(root)) {
            int before = notebook.faultCount();
            Fields c = Fields.of(notebook, Form.CLOSURE, "the closure", node.spot(), node);
            LocalDate date = c.get("date", values::date);
            String why = c.get("why", values::text);
            if (notebook.faultCount() == before && drafts.closures.putIfAbsent(date, why) != null) {
                notebook.fault(c.get("date").spot(), date + " is closed twice", "keep one of them");
            }
        }
    }

    void crops(Node root, Drafts drafts) {
        for (Node node : values.list(root)) {
            Fields c = Fields.of(notebook, Form.CROP, "the crop", node.spot(), node);
            String item = c.get("item", values::id);
            notebook.points(Pointer.To.INGREDIENT, item, c.get("item").spot(), "a crop");
            drafts.crops.add(new Crop(c.get("crop", values::text), item, c.get("weeks", quantities::weeks),
                    c.get("region", values::text), c.get("source", values::text)));
        }
    }
}
