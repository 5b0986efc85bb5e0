package croftboard.book.file;

import croftboard.book.Recipe.Care;
import croftboard.book.Recipe.Sale;
import croftboard.measure.Amount;
import java.util.Optional;
import java.util.regex.Pattern;

/** What labels and cautions rest on: garlic in oil, food served raw, the declared weight, the register's number. */
final class CareReader {
    /** National Center for Home Food Preservation (2015): garlic in oil is kept four days at most. */
    static final int GARLIC_IN_OIL_DAYS = 4;
    private static final Pattern NUMBER = Pattern.compile("\\d{5}");
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    CareReader(Values values, Quantities quantities) {
        this.values = values;
        this.quantities = quantities;
        this.notebook = values.notebook();
    }

    Care read(Fields f, int lifeDays, Optional<Sale> sale) {
        boolean inOil = f.or("garlic_in_oil", false, values::yesNo);
        if (inOil && lifeDays > GARLIC_IN_OIL_DAYS && f.has("life")) {
            notebook.fault(f.get("life").spot(), "a life of " + lifeDays + " days for garlic in oil",
                    "at most 4 days, cold; or freeze it");
        }
        Optional<Amount> net = f.maybe("net_weight", quantities::weight);
        net.filter(n -> n != AmountText.PLACEHOLDER).ifPresent(n -> sale.filter(s -> s.portion() != AmountText.PLACEHOLDER
                && n.base().compareTo(s.portion().base()) > 0).ifPresent(s -> notebook.fault(f.get("net_weight").spot(),
                "a declared weight of " + n + " for a portion of " + s.portion(), "declare at most the portion")));
        return new Care(inOil, f.maybe("served_raw", values::text), net, f.maybe("item_number", this::number));
    }

    private String number(Node node) {
        return values.value(node, "five digits like 12345", "00000", s -> {
            if (!NUMBER.matcher(s.text()).matches()) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is no item number of five digits",
                        "write the register's number of the dish, like 12345");
                return null;
            }
            return s.text();
        });
    }
}
