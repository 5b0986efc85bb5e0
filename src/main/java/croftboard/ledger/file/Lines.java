package croftboard.ledger.file;

import croftboard.ledger.Entry;
import croftboard.ledger.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lines of one table with what its columns mean; gathers faults, all of them before anything is booked. */
final class Lines {
    private static final int MOST_FAULTS = 50;
    private final Table table;
    private final Columns columns;
    private final Dates dates;
    private final Figures figures;
    private final List<String> faults = new ArrayList<>();
    private final List<String> guesses = new ArrayList<>();

    /** What turns one line into entries. */
    interface Reader {
        void read(Table.Row row, Lines lines, List<Entry> into);
    }

    private Lines(Table table, Columns columns, List<String> numbers) throws Table.Bad {
        this.table = table;
        this.columns = columns;
        dates = new Dates(columns.has("date") ? table.rows() : List.of(), columns.has("date") ? columns.by().get("date") : 0);
        figures = new Figures(table.rows(), columns.at(numbers.toArray(String[]::new)));
        guesses.addAll(table.guesses());
        guesses.addAll(columns.guesses());
        guesses.addAll(dates.guesses());
        if (figures.comma()) {
            guesses.add("Numbers are read with decimal commas.");
        }
    }

    static Intake read(Table table, List<Columns.Field> fields, Map<String, String> told, Map<String, String> remembered,
            List<String> numbers, Reader reader) {
        Columns.Answer answer = Columns.find(table.header(), fields, told, remembered);
        if (answer instanceof Columns.Answer.Unclear unclear) {
            return new Intake.Faulty(unclear.why());
        }
        try {
            Lines lines = new Lines(table, ((Columns.Answer.Found) answer).columns(), numbers);
            return lines.all(reader);
        } catch (Table.Bad e) {
            return new Intake.Faulty(List.of(e.getMessage()));
        }
    }

    private Intake all(Reader reader) {
        List<Entry> entries = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            reader.read(row, this, entries);
        }
        if (entries.isEmpty() && faults.isEmpty()) {
            faults.add("no line to book in it -> is this the right file?");
        }
        if (faults.size() > MOST_FAULTS) {
            int more = faults.size() - MOST_FAULTS;
            faults.subList(MOST_FAULTS, faults.size()).clear();
            faults.add("... and " + more + " more");
        }
        return faults.isEmpty() ? new Intake.Read(List.copyOf(entries), List.copyOf(guesses), columns.chosen())
                : new Intake.Faulty(List.copyOf(faults));
    }

    boolean has(String field) {
        return columns.has(field);
    }

    String text(Table.Row row, String field) {
        return columns.cell(row, field);
    }

    void fault(Table.Row row, String wrong) {
        faults.add("line " + row.line() + ": " + wrong);
    }

    void guess(String sentence) {
        guesses.add(sentence);
    }

    /** Empty, with a fault, when there is none. */
    Optional<LocalDate> date(Table.Row row) {
        String cell = text(row, "date");
        Optional<LocalDate> date = dates.date(cell);
        if (date.isEmpty()) {
            fault(row, cell.isEmpty() ? "no date -> such as 2027-08-16" : "'" + cell + "' is no date -> such as 2027-08-16");
        }
        return date;
    }

    /** An empty cell is nothing; what is no number is a fault. */
    Optional<Long> cents(Table.Row row, String field) {
        String cell = text(row, field);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        var cents = figures.cents(cell);
        if (cents.isEmpty()) {
            fault(row, field + " '" + cell + "' is no money -> such as 12.34");
            return Optional.empty();
        }
        return Optional.of(cents.getAsLong());
    }

    Optional<Quantity> quantity(Table.Row row, String field) {
        String cell = text(row, field);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<Quantity> quantity = figures.quantity(cell);
        if (quantity.isEmpty()) {
            fault(row, field + " '" + cell + "' is no number -> such as 12 or 2.5");
        }
        return quantity;
    }
}
