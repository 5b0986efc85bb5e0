package croftboard.book.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** The first sheet of a workbook as CSV text, each row on the line of its number. */
final class SheetText {
    private static final int MOST_ROWS = 20_000;
    private static final int MOST_CELLS = 100;
    /** Finer than any price: what a spreadsheet's own arithmetic leaves behind the fourth place is none. */
    private static final int PLACES = 4;

    private SheetText() { }

    /** Empty when the bytes are no workbook that can be read. */
    static Optional<String> of(byte[] workbook) {
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook));
                Stream<Row> rows = book.getFirstSheet().openStream()) {
            StringBuilder text = new StringBuilder();
            int[] line = {1};
            int[] wide = {0};
            rows.limit(MOST_ROWS).filter(r -> r.getRowNum() <= MOST_ROWS).forEach(r -> {
                for (; line[0] < r.getRowNum(); line[0]++) {
                    text.append('\n');
                }
                text.append(line(r, wide)).append('\n');
                line[0]++;
            });
            return Optional.of(text.toString());
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** @param wide columns of the first row, which every later one has */
    private static String line(Row row, int[] wide) {
        List<String> cells = new ArrayList<>();
        int last = 0;
        for (int c = 0; c < Math.min(MOST_CELLS, row.getCellCount()); c++) {
            String text = row.getOptionalCell(c).map(SheetText::text).orElse("");
            cells.add('"' + text.replace("\"", "\"\"") + '"');
            last = text.isEmpty() ? last : cells.size();
        }
        if (last == 0) {
            return "";
        }
        wide[0] = wide[0] == 0 ? last : wide[0];
        while (cells.size() < wide[0]) {
            cells.add("");
        }
        return String.join(",", cells.subList(0, Math.max(last, wide[0])));
    }

    private static String text(Cell cell) {
        if (cell.getType() == CellType.NUMBER || cell.getType() == CellType.FORMULA && isNumber(cell.getRawValue())) {
            return new BigDecimal(cell.getRawValue()).setScale(PLACES, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
        }
        String text = cell.getType() == CellType.FORMULA ? cell.getRawValue() : cell.getText();
        return text == null ? "" : text.replace('\r', ' ').replace('\n', ' ');
    }

    private static boolean isNumber(String text) {
        return text != null && text.matches("-?\\d{1,12}(\\.\\d{1,20})?");
    }
}
