package croftboard.ledger.file;

import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.Left;
import croftboard.ledger.Matching;
import croftboard.ledger.Quantity;
import croftboard.ledger.Waste;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A production sheet that comes back filled in: what was put out, sold, left, thrown away, and when it ran out. */
public final class LeftFile {
    public static final String SOURCE = "production-sheet";
    private static final List<Columns.Field> FIELDS = List.of(Columns.Field.maybe("week", "week"), Columns.Field.maybe("version", "version"),
            Columns.Field.needed("date", "date"), Columns.Field.maybe("slot", "slot"), Columns.Field.needed("line", "line"),
            Columns.Field.needed("dish", "dish"), Columns.Field.maybe("dish_name", "dish_name"),
            Columns.Field.maybe("planned_portions", "planned_portions"), Columns.Field.needed("prepared_portions", "prepared_portions"),
            Columns.Field.needed("sold_portions", "sold_portions"), Columns.Field.needed("left_portions", "left_portions"),
            Columns.Field.needed("ran_out_at", "ran_out_at"), Columns.Field.needed("waste_portions", "waste_portions"),
            Columns.Field.needed("waste_reason", "waste_reason"), Columns.Field.maybe("note", "note"));
    private static final List<String> NUMBERS = List.of("planned_portions", "prepared_portions", "sold_portions", "left_portions",
            "waste_portions");

    private LeftFile() { }

    /** @param dishes what ids and names mean */
    public static Intake read(Table table, Map<String, String> told, Matching dishes) {
        int[] empty = new int[1];
        Intake intake = Lines.read(table, FIELDS, told, Map.of(), NUMBERS, (row, lines, into) -> row(row, lines, dishes, into, empty));
        if (intake instanceof Intake.Read read && empty[0] > 0) {
            List<String> said = new ArrayList<>(read.guesses());
            said.add(empty[0] + (empty[0] == 1 ? " row has" : " rows have") + " nothing written in and "
                    + (empty[0] == 1 ? "is" : "are") + " not booked.");
            return new Intake.Read(read.entries(), said, Map.of());
        }
        return intake instanceof Intake.Read read ? new Intake.Read(read.entries(), read.guesses(), Map.of()) : intake;
    }

    private static void row(Table.Row row, Lines lines, Matching dishes, List<Entry> into, int[] empty) {
        if (List.of("prepared_portions", "sold_portions", "left_portions", "ran_out_at", "waste_portions", "waste_reason", "note").stream().allMatch(f -> lines.text(row, f).isEmpty())) {
            empty[0]++;
            return;
        }
        Optional<LocalDate> date = lines.date(row);
        Optional<String> dish = dish(row, lines, dishes);
        Optional<Quantity> planned = portions(row, lines, "planned_portions");
        Optional<Quantity> prepared = portions(row, lines, "prepared_portions");
        Optional<Quantity> sold = portions(row, lines, "sold_portions");
        Optional<Quantity> left = portions(row, lines, "left_portions");
        Optional<Quantity> waste = portions(row, lines, "waste_portions");
        Optional<LocalTime> ranOut = ranOut(row, lines);
        Optional<Waste.Reason> reason = reason(row, lines, waste);
        if (date.isEmpty() || dish.isEmpty()) {
            return;
        }
        doubts(row, lines, prepared, sold, left, waste, ranOut);
        String version = lines.text(row, "version");
        String week = lines.text(row, "week") + (version.isEmpty() ? "" : "@" + version);
        String line = lines.text(row, "line");
        into.add(new Left(Draft.line(row.line()), date.get(), week, lines.text(row, "slot"), line, dish.get(),
                (int) (planned.orElse(Quantity.ZERO).thousandths() / 1000), prepared, sold, left, ranOut, lines.text(row, "note")));
        waste.filter(w -> w.signum() > 0).ifPresent(w -> into.add(new Waste(Draft.line(row.line()), date.get(), dish, Optional.empty(),
                line + " " + dish.get(), w, 0, reason.orElse(Waste.Reason.OTHER), 0, "")));
    }

    /** The sheet is our own: a dish that the book does not have is a slip of the pen, not another name to learn. */
    private static Optional<String> dish(Table.Row row, Lines lines, Matching dishes) {
        String id = lines.text(row, "dish");
        String name = lines.text(row, "dish_name");
        Optional<String> dish = dishes.of(id).or(() -> id.isEmpty() ? dishes.of(name) : Optional.empty());
        if (dish.isEmpty()) {
            List<String> near = dishes.nearest(id.isEmpty() ? name : id);
            lines.fault(row, "the book has no dish '" + (id.isEmpty() ? name : id) + "' -> " + (near.isEmpty() ? "as the production sheet names it"
                    : "perhaps " + String.join(", ", near)));
        }
        return dish;
    }

    private static Optional<Quantity> portions(Table.Row row, Lines lines, String field) {
        Optional<Quantity> portions = lines.quantity(row, field);
        if (portions.isPresent() && (portions.get().signum() < 0 || portions.get().compareTo(Quantity.of(100_000)) > 0)) {
            lines.fault(row, field + " '" + lines.text(row, field) + "' -> 0 to 100000 portions");
            return Optional.empty();
        }
        return portions;
    }

    private static Optional<LocalTime> ranOut(Table.Row row, Lines lines) {
        String cell = lines.text(row, "ran_out_at");
        var m = java.util.regex.Pattern.compile("(\\d{1,2})[:.](\\d\\d)(?: *([AaPp])[Mm])?").matcher(cell);
        if (cell.isEmpty() || !m.matches()) {
            if (!cell.isEmpty()) {
                lines.fault(row, "ran out at '" + cell + "' is no time -> such as 13:40");
            }
            return Optional.empty();
        }
        int hour = Integer.parseInt(m.group(1));
        int minute = Integer.parseInt(m.group(2));
        boolean half = m.group(3) != null;
        if (hour > 23 || minute > 59 || half && (hour < 1 || hour > 12)) {
            lines.fault(row, "ran out at '" + cell + "' is no time -> such as 13:40");
            return Optional.empty();
        }
        return Optional.of(LocalTime.of(half ? hour % 12 + (m.group(3).equalsIgnoreCase("p") ? 12 : 0) : hour, minute));
    }

    private static Optional<Waste.Reason> reason(Table.Row row, Lines lines, Optional<Quantity> waste) {
        String word = lines.text(row, "waste_reason");
        Optional<Waste.Reason> reason = Waste.Reason.named(word);
        if (!word.isEmpty() && reason.isEmpty()) {
            lines.fault(row, "'" + word + "' is no reason -> " + WasteFile.reasons());
        } else if (word.isEmpty() && waste.isPresent() && waste.get().signum() > 0) {
            lines.guess("Line " + row.line() + ": waste without a reason is booked as other.");
        } else if (reason.isPresent() && waste.isEmpty()) {
            lines.fault(row, "a reason for waste, but no portions -> how many");
        }
        return reason;
    }

    /** What cannot all be so is booked as written, and said. */
    private static void doubts(Table.Row row, Lines lines, Optional<Quantity> prepared, Optional<Quantity> sold, Optional<Quantity> left,
            Optional<Quantity> waste, Optional<LocalTime> ranOut) {
        if (prepared.isPresent() && (sold.isPresent() || left.isPresent())) {
            Quantity gone = sold.orElse(Quantity.ZERO).plus(left.orElse(Quantity.ZERO));
            if (gone.compareTo(prepared.get()) > 0) {
                lines.guess("Line " + row.line() + ": sold and left make " + gone + ", put out were " + prepared.get() + ". Booked as written.");
            }
        }
        if (left.isPresent() && waste.isPresent() && waste.get().compareTo(left.get()) > 0) {
            lines.guess("Line " + row.line() + ": waste " + waste.get() + " is more than the " + left.get() + " left. Booked as written.");
        }
        if (ranOut.isPresent() && left.isPresent() && left.get().signum() > 0) {
            lines.guess("Line " + row.line() + ": ran out at " + ranOut.get() + ", yet " + left.get() + " left. Booked as written.");
        }
    }
}
