package croftboard.ledger.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** The first sheet of a workbook. What it would unpack to is measured before anything is built of it. */
final class Spreadsheet {
    private static final long MOST_UNPACKED = 96_000_000L;
    private static final int MOST_PARTS = 500;

    private Spreadsheet() { }

    static List<Table.Row> rows(byte[] content, List<String> guesses) throws Table.Bad {
        measure(content);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(content));
                Stream<Row> rows = book.getFirstSheet().openStream()) {
            if (book.getSheets().count() > 1) {
                guesses.add("The workbook has several sheets: the first one, '" + Table.clean(book.getFirstSheet().getName())
                        + "', was read.");
            }
            List<Table.Row> all = new ArrayList<>();
            Iterator<Row> each = rows.iterator();
            while (each.hasNext()) {
                all.add(row(each.next()));
                if (all.size() > Table.MOST_ROWS) {
                    throw new Table.Bad("more than " + Table.MOST_ROWS + " lines -> export a shorter time");
                }
            }
            return all;
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw new Table.Bad("this workbook cannot be read: it is damaged, locked, or made by a program that writes it otherwise"
                    + " -> save it as CSV");
        }
    }

    /** By the list at the archive's end: some programs write the parts so that they cannot be told apart in passing. */
    private static void measure(byte[] content) throws Table.Bad {
        try {
            Path copy = Files.createTempFile("croftboard", ".xlsx");
            try {
                Files.write(copy, content);
                measure(copy);
            } finally {
                Files.deleteIfExists(copy);
            }
        } catch (IOException | RuntimeException e) {
            throw new Table.Bad("this workbook is damaged -> save it again, or as CSV");
        }
    }

    private static void measure(Path copy) throws IOException, Table.Bad {
        long unpacked = 0;
        int parts = 0;
        try (ZipFile zip = new ZipFile(copy.toFile())) {
            for (ZipEntry part : Collections.list(zip.entries())) {
                parts++;
                try (InputStream in = zip.getInputStream(part)) {
                    byte[] bytes = in.readNBytes((int) (MOST_UNPACKED - unpacked + 1));
                    unpacked += bytes.length;
                    if (unpacked > MOST_UNPACKED || parts > MOST_PARTS) {
                        throw new Table.Bad("the workbook unpacks to more than any list needs -> save the sheet as CSV");
                    }
                    CellNames.check(bytes);
                }
            }
        }
    }

    private static Table.Row row(Row row) throws Table.Bad {
        if (row.getCellCount() > Table.MOST_COLUMNS) {
            throw new Table.Bad("line " + row.getRowNum() + " has more than " + Table.MOST_COLUMNS + " columns -> is this the right file?");
        }
        List<String> cells = new ArrayList<>();
        for (int c = 0; c < row.getCellCount(); c++) {
            Cell cell = row.getCell(c);
            String text = cell == null ? "" : text(cell);
            if (text.length() > Table.LONGEST_CELL) {
                throw new Table.Bad("line " + row.getRowNum() + " has a cell of more than " + Table.LONGEST_CELL + " letters");
            }
            cells.add(Table.clean(text));
        }
        return new Table.Row(row.getRowNum(), cells);
    }

    /** What the sheet shows of a formula is its last result; the formula itself is never looked at. */
    private static String text(Cell cell) {
        if (cell.getType() == CellType.NUMBER || cell.getType() == CellType.FORMULA && cell.getValue() instanceof BigDecimal) {
            return number(cell);
        }
        Object value = cell.getValue();
        return value == null ? "" : cell.getType() == CellType.ERROR ? "#error" : value.toString();
    }

    private static String number(Cell cell) {
        String format = cell.getDataFormatString() == null ? "" : cell.getDataFormatString().toLowerCase(java.util.Locale.ROOT);
        boolean date = format.contains("yy") || format.contains("d/m") || format.contains("m/d") || format.contains("h:m");
        if (date) {
            LocalDateTime when = cell.asDate();
            return format.contains("h") && when.toLocalDate().getYear() < 1901 ? when.toLocalTime().withNano(0).toString()
                    : when.toLocalDate().toString();
        }
        BigDecimal number = (BigDecimal) cell.getValue();
        if (Math.abs((long) number.scale()) > 30) {
            return cell.getRawValue();
        }
        // 0.1 + 0.2 is stored as 0.30000000000000004
        BigDecimal plain = number.scale() > 9 ? number.setScale(9, java.math.RoundingMode.HALF_UP) : number;
        return plain.signum() == 0 ? "0" : plain.stripTrailingZeros().toPlainString();
    }
}
