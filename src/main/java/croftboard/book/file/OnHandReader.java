package croftboard.book.file;

import croftboard.book.OnHand;
import croftboard.measure.Amount;
import croftboard.measure.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** {@code kitchen/on-hand.csv}: counted stock. */
final class OnHandReader {
    static final List<String> COLUMNS = List.of("item", "amount", "received", "made", "opened", "frozen",
            "thawed", "note");
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    OnHandReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.notebook = values.notebook();
    }

    void read(String file, String text, Drafts drafts) {
        for (CsvText.Row row : new CsvText(file, notebook).read(text, COLUMNS)) {
            int before = notebook.faultCount();
            OnHand counted = counted(row);
            if (notebook.faultCount() == before) {
                dates(row, counted);
            }
            notebook.part(counted, "amount", row.cell("amount").spot());
            drafts.onHand.add(notebook.wrote(counted, row.spot(), before));
        }
    }

    private OnHand counted(CsvText.Row row) {
        CsvText.Cell item = row.cell("item");
        CsvText.Cell amount = row.cell("amount");
        if (item.isEmpty()) {
            notebook.fault(item.spot(), "nothing is written under [item]",
                    "name an ingredient or a component");
        }
        notebook.points(Pointer.To.ITEM, item.text(), item.spot(), "the count");
        Amount read = quantities.amounts().read(amount.text(), amount.spot(), "an amount like 12 lb",
                Unit.Kind.MASS,
                Unit.Kind.VOLUME, Unit.Kind.COUNT);
        return new OnHand(item.text(), read, date(row, "received"), date(row, "made"),
                date(row, "opened"), date(row, "frozen"), date(row, "thawed"), row.cell("note").text());
    }

    private Optional<LocalDate> date(CsvText.Row row, String column) {
        CsvText.Cell cell = row.cell(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(values.date(cell.text(), cell.spot()));
    }

    private void dates(CsvText.Row row, OnHand counted) {
        Optional<LocalDate> start = counted.made().or(counted::received);
        if (counted.thawed().isPresent() && counted.frozen().isEmpty()) {
            notebook.fault(row.cell("thawed").spot(), "thawed, but never frozen",
                    "write the day it was frozen too");
        }
        later(row, "frozen", start, counted.frozen());
        later(row, "opened", start, counted.opened());
        later(row, "thawed", counted.frozen(), counted.thawed());
    }

    private void later(CsvText.Row row, String column, Optional<LocalDate> first,
            Optional<LocalDate> second) {
        if (first.isPresent() && second.isPresent() && second.get().isBefore(first.get())) {
            notebook.fault(row.cell(column).spot(), column + " on " + second.get() + ", before "
                    + first.get(),
                    "check the dates of the row");
        }
    }
}
