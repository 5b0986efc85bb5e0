package croftboard.book.file;

import croftboard.book.ListedOffer;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** {@code farms/lists/2027-W33.csv}: what the growers have in one week. */
final class ListReader {
    static final List<String> COLUMNS = List.of("vendor", "item", "pack", "price", "packs", "delivery",
            "note");
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    ListReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.notebook = values.notebook();
    }

    void read(String file, String text, Drafts drafts) {
        Optional<IsoWeek> week = IsoWeek.parse(FileKind.baseName(file));
        if (week.isEmpty()) {
            notebook.fault(Spot.whole(file), "the file's name is no week of the calendar",
                    "name it like 2027-W33.csv");
            return;
        }
        List<ListedOffer> offers = new ArrayList<>();
        Set<List<Object>> seen = new HashSet<>();
        for (CsvText.Row row : new CsvText(file, notebook).read(text, COLUMNS)) {
            int before = notebook.faultCount();
            ListedOffer offer = offer(row, week.get());
            if (notebook.faultCount() == before
                    && !seen.add(List.of(offer.vendor(), offer.item(), offer.pack(), offer.delivery()))) {
                notebook.fault(row.spot(), "the same pack for the same delivery stands twice",
                        "keep one of the rows");
            }
            notebook.wrote(offer, row.spot(), before);
            COLUMNS.forEach(column -> notebook.part(offer, column, row.cell(column).spot()));
            offers.add(offer);
        }
        drafts.lists.put(week.get(), List.copyOf(offers));
    }

    private ListedOffer offer(CsvText.Row row, IsoWeek week) {
        String vendor = filled(row, "vendor");
        String item = filled(row, "item");
        notebook.points(Pointer.To.VENDOR, vendor, row.cell("vendor").spot(), "a list");
        notebook.points(Pointer.To.INGREDIENT, item, row.cell("item").spot(), "a list");
        String price = filled(row, "price");
        String packs = filled(row, "packs");
        return new ListedOffer(vendor, item, filled(row, "pack"),
                price.isEmpty() ? Cents.ZERO : quantities.money(price, row.cell("price").spot(), true),
                packs.isEmpty() ? 0 : quantities.whole(packs, row.cell("packs").spot(), 0,
                OfferReader.MOST_PACKS),
                delivery(row.cell("delivery"), week), row.cell("note").text());
    }

    private String filled(CsvText.Row row, String column) {
        CsvText.Cell cell = row.cell(column);
        if (cell.isEmpty()) {
            notebook.fault(cell.spot(), "nothing is written under [" + column + "]", "fill the cell");
        }
        return cell.text();
    }

    /**
     * A day means that day of the week itself, Sunday the one before it; other deliveries of the
     * list are named by date.
     */
    private LocalDate delivery(CsvText.Cell cell, IsoWeek week) {
        DayOfWeek day = Values.DAYS.get(cell.text());
        if (day != null) {
            return day == DayOfWeek.SUNDAY ? week.monday().minusDays(1) : week.day(day);
        }
        LocalDate first = week.monday().minusDays(6);
        LocalDate last = week.day(DayOfWeek.SATURDAY);
        if (cell.text().isEmpty() || !Character.isDigit(cell.text().charAt(0))) {
            notebook.fault(cell.spot(), Notebook.show(cell.text()) + " is no delivery",
                    "write a day like mon or a date like " + last);
            return first;
        }
        int before = notebook.faultCount();
        LocalDate date = values.date(cell.text(), cell.spot());
        if (notebook.faultCount() == before && (date.isBefore(first) || date.isAfter(last))) {
            notebook.fault(cell.spot(), date + " is no delivery of " + week, "a list speaks of " + first
                    + " to " + last);
        }
        return date;
    }
}
