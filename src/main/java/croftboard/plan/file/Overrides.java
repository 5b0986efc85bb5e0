package croftboard.plan.file;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a manager keeps though a search would choose otherwise, and when, by whom and why; releases are rows as well. */
public record Overrides(List<Row> rows) {
    public enum Kind { DISH, PACKS }

    /**
     * One decision.
     *
     * @param what {@code mon/soup}, or {@code hollow-brook/carrot}
     * @param value the dish, or how many packs at least
     * @param kept false: released
     * @param at in the kitchen's zone
     */
    public record Row(Kind kind, String what, String value, boolean kept, String who, String why, LocalDateTime at) { }

    /** The last word on each thing that is kept now. */
    public List<Row> standing() {
        SortedMap<String, Row> last = new TreeMap<>();
        rows.forEach(r -> last.put(r.kind() + " " + r.what(), r));
        return new ArrayList<>(last.values().stream().filter(Row::kept).toList());
    }

    /** Dish by slot id. */
    public SortedMap<String, String> dishes() {
        SortedMap<String, String> all = new TreeMap<>();
        standing().stream().filter(r -> r.kind() == Kind.DISH).forEach(r -> all.put(r.what(), r.value()));
        return all;
    }

    /** Packs by vendor and item. */
    public SortedMap<String, Integer> packs() {
        SortedMap<String, Integer> all = new TreeMap<>();
        standing().stream().filter(r -> r.kind() == Kind.PACKS).forEach(r -> all.put(r.what(), Integer.valueOf(r.value())));
        return all;
    }

    static Out form(Row r) {
        return new Out().name("kind", r.kind()).text("what", r.what()).text("value", r.value()).yes("kept", r.kept())
                .text("who", r.who()).text("why", r.why()).word("at", r.at());
    }

    static Row row(In in) throws Unreadable {
        Row row = new Row(in.name("kind", Kind.class), in.text("what"), in.text("value"), in.yes("kept"), in.text("who"),
                in.text("why"), in.moment("at"));
        if (row.kind() == Kind.PACKS && !row.value().matches("\\d{1,4}")) {
            throw new Unreadable("$.rows", "there is \"" + row.value() + "\" where a number of packs belongs");
        }
        return row;
    }
}
