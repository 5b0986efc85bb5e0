package croftboard.book.file;

import croftboard.book.Reply;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** A grower's answer to a notice, as CSV or as a workbook: the table that went out, its last columns filled in. */
public final class ReplyReader {
    private static final String GUARD = "'";
    private static final String SAME = "same";
    private final String file;
    private final Notebook notebook = new Notebook();

    private ReplyReader(String file) {
        this.file = file;
    }

    /** @param file as people name it. @param content whole */
    public static ReplyReading read(String file, byte[] content) {
        return new ReplyReader(file).read(content);
    }

    private ReplyReading read(byte[] content) {
        Optional<String> text = text(content);
        List<CsvText.Row> table = text.map(t -> new CsvText(file, notebook).read(t, Reply.COLUMNS)).orElse(List.of());
        List<Reply.Row> rows = new ArrayList<>();
        Set<List<Object>> seen = new HashSet<>();
        for (CsvText.Row row : table) {
            Reply.Row r = row(row);
            if (!r.item().isEmpty() && !seen.add(List.of(r.item(), r.pack(), r.week()))) {
                notebook.fault(row.spot(), "the same pack of the same week stands twice", "keep one of the rows");
            }
            rows.add(r);
        }
        if (table.isEmpty() && notebook.faultCount() == 0) {
            notebook.fault(Spot.whole(file), "there is no row below the first line", "send the table of the notice back, filled in");
        }
        String rotation = one(table, "rotation");
        String vendor = one(table, "vendor");
        if (notebook.faultCount() == 0 && rows.stream().noneMatch(r -> r.have().isPresent())) {
            notebook.fault(Spot.whole(file), "no row is answered", "write the packs that you have under [have], 0 where there are none");
        }
        return notebook.faultCount() > 0 ? new ReplyReading.Faulty(notebook.faultsInOrder())
                : new ReplyReading.Read(new Reply(file, rotation, vendor, List.copyOf(rows)));
    }

    private Optional<String> text(byte[] content) {
        boolean workbook = content.length > 3 && content[0] == 'P' && content[1] == 'K';
        Optional<String> text = workbook ? SheetText.of(content) : utf8(content);
        if (text.isEmpty()) {
            notebook.fault(Spot.whole(file), workbook ? "the workbook cannot be read" : "the file is neither UTF-8 text nor a workbook",
                    "save the table as .xlsx, or as CSV with UTF-8 letters");
        }
        return text.map(t -> t.startsWith("\uFEFF") ? t.substring(1) : t);
    }

    private static Optional<String> utf8(byte[] content) {
        try {
            return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** What all rows must say alike. */
    private String one(List<CsvText.Row> table, String column) {
        String first = table.isEmpty() ? "" : cell(table.get(0), column);
        table.stream().filter(r -> !cell(r, column).equals(first)).findFirst().ifPresent(r -> notebook.fault(r.cell(column).spot(),
                "the " + column + " is " + Notebook.show(cell(r, column)) + " where the first row has " + Notebook.show(first),
                "one answer is of one " + column));
        return first;
    }

    private Reply.Row row(CsvText.Row row) {
        Optional<IsoWeek> week = IsoWeek.parse(cell(row, "week"));
        if (week.isEmpty()) {
            notebook.fault(row.cell("week").spot(), Notebook.show(cell(row, "week")) + " is no week", "leave it as it was sent, such as 2027-W36");
        }
        OptionalInt have = have(row);
        return new Reply.Row(row.spot().line(), cell(row, "item"), cell(row, "pack"), week.orElse(new IsoWeek(2000, 1)), have,
                have.orElse(0) > 0 ? price(row) : Optional.empty(), cell(row, "note"));
    }

    private OptionalInt have(CsvText.Row row) {
        String have = cell(row, "have");
        if (have.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!have.matches("\\d{1,5}")) {
            notebook.fault(row.cell("have").spot(), Notebook.show(have) + " is no number of packs",
                    "a whole number, 0 when there are none, nothing when you do not know yet");
            return OptionalInt.of(0);
        }
        return OptionalInt.of(Integer.parseInt(have));
    }

    private Optional<Cents> price(CsvText.Row row) {
        String price = cell(row, "price_usd");
        String said = price.equalsIgnoreCase(SAME) ? cell(row, "price_assumed_usd") : price;
        Optional<Cents> cents = Cents.parse(tidy(said)).filter(c -> c.value() > 0);
        if (cents.isEmpty()) {
            notebook.fault(row.cell("price_usd").spot(), price.isEmpty() ? "the price is missing" : Notebook.show(price) + " is no price",
                    "dollars a pack such as 24.50, or the word same for the price assumed");
        }
        return cents;
    }

    /** {@code 24.5} and {@code 24} as money. */
    private static String tidy(String price) {
        String plain = price.startsWith("$") ? price.substring(1).trim() : price;
        return plain.matches("\\d{1,6}(\\.\\d{1,2})?") ? "$" + (plain.matches("\\d+\\.\\d") ? plain + "0" : plain) : price;
    }

    /** As it was before it was guarded against being taken for a formula. */
    private static String cell(CsvText.Row row, String column) {
        Map<String, CsvText.Cell> cells = row.cells();
        String text = cells.get(column).text();
        return text.startsWith(GUARD) ? text.substring(1) : text;
    }
}
