package croftboard.ledger.file;

import croftboard.ledger.Draft;
import croftboard.ledger.Matching;
import croftboard.ledger.Quantity;
import croftboard.ledger.Sale;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The register's export. */
public final class SalesFile {
    public static final String SOURCE = "register";
    private static final List<Columns.Field> FIELDS = List.of(
            Columns.Field.needed("date", "date", "business date", "sale date", "day", "datum"),
            Columns.Field.maybe("hour", "hour", "time", "hour of day", "stunde"),
            Columns.Field.maybe("code", "code", "plu", "item code", "sku", "price look up", "upc", "item number", "number"),
            Columns.Field.maybe("words", "item", "description", "name", "product", "item name", "dish", "artikel"),
            Columns.Field.needed("units", "units", "qty", "quantity", "sold", "units sold", "count", "portions", "menge"),
            Columns.Field.needed("money", "money", "amount", "sales", "net sales", "total", "net", "revenue", "gross sales", "umsatz"));

    private SalesFile() { }

    /** @param dishes what codes and words mean: recipe ids, or {@link Memory#NOT_OURS} */
    public static Intake read(Table table, Map<String, String> told, Map<String, String> remembered, Matching dishes) {
        Intake intake = Lines.read(table, FIELDS, told, remembered, List.of("units", "money"),
                (row, lines, into) -> sale(row, lines, dishes).ifPresent(into::add));
        if (intake instanceof Intake.Read read && !read.columns().containsKey("code") && !read.columns().containsKey("words")) {
            return new Intake.Faulty(List.of("no column says what was sold -> say which: --column code=NAME or --column words=NAME, one of "
                    + String.join(", ", table.header())));
        }
        return intake;
    }

    private static Optional<Sale> sale(Table.Row row, Lines lines, Matching dishes) {
        String code = lines.text(row, "code");
        String words = lines.text(row, "words");
        if (lines.text(row, "date").isEmpty() && (Totals.is(words) || Totals.is(code) || code.isEmpty() && words.isEmpty())) {
            lines.guess("Line " + row.line() + " is a total and is not booked.");
            return Optional.empty();
        }
        Optional<LocalDate> date = lines.date(row);
        Optional<Quantity> units = lines.quantity(row, "units");
        Optional<Long> cents = lines.cents(row, "money");
        OptionalInt hour = lines.has("hour") ? Dates.hour(lines.text(row, "hour")) : Dates.hour(clock(lines.text(row, "date")));
        if (lines.has("hour") && hour.isEmpty() && !lines.text(row, "hour").isEmpty()) {
            lines.fault(row, "'" + lines.text(row, "hour") + "' is no hour -> such as 13 or 13:40");
        }
        if (units.isEmpty() && lines.text(row, "units").isEmpty()) {
            lines.fault(row, "no units -> how many were sold");
        }
        if (cents.isEmpty() && lines.text(row, "money").isEmpty()) {
            lines.fault(row, "no money -> what was taken, 0 when nothing");
        }
        if (date.isEmpty() || units.isEmpty() || cents.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> dish = code.isEmpty() ? dishes.of(words) : dishes.of(code + " " + words).or(() -> dishes.of(code)).or(() -> dishes.of(words));
        boolean ours = !dish.equals(Optional.of(Memory.NOT_OURS));
        return Optional.of(new Sale(Draft.line(row.line()), date.get(), hour, code, words, dish.filter(d -> ours), ours, units.get(), cents.get()));
    }

    /** The part of a date cell that holds a time; nothing when it holds none. */
    private static String clock(String cell) {
        int colon = cell.indexOf(':');
        return colon < 0 ? "no" : cell;
    }
}
