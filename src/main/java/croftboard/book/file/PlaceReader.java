package croftboard.book.file;

import croftboard.measure.Place;
import java.util.regex.Pattern;

/** {@code {town: Larkmoor, state: NY, latitude: 42.55, longitude: -76.90}}. */
final class PlaceReader {
    static final Place NOWHERE = new Place("", "", 0, 0);
    private static final Pattern STATE = Pattern.compile("[A-Z]{2}");
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    PlaceReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.notebook = values.notebook();
    }

    Place read(Node node) {
        Fields p = Fields.of(notebook, Form.PLACE, "the place", node.spot(), node);
        return new Place(p.get("town", values::text), p.get("state", this::state),
                p.get("latitude", n -> quantities.degrees(n, 90)),
                p.get("longitude", n -> quantities.degrees(n, 180)));
    }

    /** A two-letter code. */
    String state(Node node) {
        return values.value(node, "two letters like NY", "", s -> {
            if (!STATE.matcher(s.text()).matches()) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is no state's code",
                        "write two capital letters like NY");
            }
            return s.text();
        });
    }
}
