package croftboard.ledger.file;

import croftboard.ledger.Draft;
import croftboard.ledger.Matching;
import croftboard.ledger.Quantity;
import croftboard.ledger.Waste;
import croftboard.measure.Amount;
import croftboard.measure.Unit;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A waste log: a day, what it was, portions or a weight, why. */
public final class WasteFile {
    public static final String SOURCE = "waste";
    /** In front of an ingredient's id where dishes and ingredients are matched together. */
    public static final String ITEM = "item ";
    private static final List<Columns.Field> FIELDS = List.of(Columns.Field.needed("date", "date", "day"),
            Columns.Field.needed("what", "what", "item", "dish", "food", "description", "name"),
            Columns.Field.maybe("portions", "portions", "waste_portions", "count", "qty", "quantity"),
            Columns.Field.maybe("weight", "weight", "weighed", "amount"),
            Columns.Field.needed("reason", "reason", "why", "waste_reason"),
            Columns.Field.maybe("money", "money", "cost", "value"), Columns.Field.maybe("note", "note", "notes", "remark"));

    private WasteFile() { }

    static String reasons() {
        return Arrays.stream(Waste.Reason.values()).map(Object::toString).collect(Collectors.joining(", "));
    }

    /** @param goods what words mean: recipe ids, and ingredient ids after {@link #ITEM} */
    public static Intake read(Table table, Map<String, String> told, Map<String, String> remembered, Matching goods) {
        return Lines.read(table, FIELDS, told, remembered, List.of("portions", "money"),
                (row, lines, into) -> waste(row, lines, goods).ifPresent(into::add));
    }

    private static Optional<Waste> waste(Table.Row row, Lines lines, Matching goods) {
        String words = lines.text(row, "what");
        if (Totals.is(words)) {
            lines.guess("Line " + row.line() + " is a total and is not booked.");
            return Optional.empty();
        }
        Optional<LocalDate> date = lines.date(row);
        Optional<Quantity> portions = lines.quantity(row, "portions");
        String weight = lines.text(row, "weight");
        Optional<Long> mg = mg(weight);
        Optional<Waste.Reason> reason = Waste.Reason.named(lines.text(row, "reason"));
        Optional<Long> cents = lines.cents(row, "money");
        boolean good = true;
        if (words.isEmpty()) {
            lines.fault(row, "what was it? -> a dish or an ingredient");
            good = false;
        }
        if (!weight.isEmpty() && mg.isEmpty()) {
            lines.fault(row, "'" + weight + "' is no weight -> with its unit, such as 2.5 lb");
            good = false;
        }
        boolean some = portions.map(p -> p.signum() > 0).orElse(false) || mg.map(m -> m > 0).orElse(false);
        if (!some && mg.isPresent() == !weight.isEmpty()) {
            lines.fault(row, "how much? -> portions, or a weight such as 2.5 lb");
            good = false;
        }
        if (reason.isEmpty()) {
            lines.fault(row, "'" + lines.text(row, "reason") + "' is no reason -> " + reasons());
            good = false;
        }
        if (!good || date.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> means = goods.of(words);
        return Optional.of(made(row.line(), date.get(), words, means, portions.orElse(Quantity.ZERO), mg.orElse(0L), reason.get(),
                cents.orElse(0L), lines.text(row, "note")));
    }

    /** @param means a recipe id, or an ingredient id after {@link #ITEM} */
    public static Waste made(int line, LocalDate date, String words, Optional<String> means, Quantity portions, long mg, Waste.Reason reason,
            long cents, String note) {
        return new Waste(Draft.line(line), date, means.filter(m -> !m.startsWith(ITEM)), means.filter(m -> m.startsWith(ITEM))
                .map(m -> m.substring(ITEM.length())), words, portions, mg, reason, cents, note);
    }

    /** As milligrams; empty when it is no weight, or beyond a hundred tonnes. */
    public static Optional<Long> mg(String weight) {
        return Amount.parse(weight.strip()).filter(a -> a.unit().kind() == Unit.Kind.MASS && a.value().signum() >= 0)
                .filter(a -> a.base().toDouble() < 1e8).map(a -> a.base().times(1000).round());
    }
}
