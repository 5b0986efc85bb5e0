package croftboard.paper.file;

import croftboard.paper.Data;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Tables as one workbook for a spreadsheet. A cell is a figure or a text, never a formula, whatever it begins with: texts are
 * written as texts.
 */
final class Workbooks {
    private static final String NUMBER = "-?(0|[1-9]\\d{0,14})(\\.\\d{1,6})?";

    private Workbooks() { }

    /** @param tables by the worksheet's name */
    static byte[] of(Map<String, Data> tables) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Croftboard", "1.0")) {
            for (Map.Entry<String, Data> table : tables.entrySet()) {
                sheet(book.newWorksheet(table.getKey()), table.getValue());
            }
        }
        return out.toByteArray();
    }

    private static void sheet(Worksheet sheet, Data data) {
        for (int c = 0; c < data.header().size(); c++) {
            sheet.value(0, c, data.header().get(c));
            sheet.style(0, c).bold().set();
        }
        sheet.freezePane(0, 1);
        for (int r = 0; r < data.rows().size(); r++) {
            List<String> row = data.rows().get(r);
            for (int c = 0; c < row.size(); c++) {
                cell(sheet, r + 1, c, row.get(c));
            }
        }
    }

    private static void cell(Worksheet sheet, int row, int column, String text) {
        if (text.matches(NUMBER)) {
            sheet.value(row, column, new BigDecimal(text));
        } else if (!text.isEmpty()) {
            sheet.value(row, column, printable(text));
        }
    }

    /** What the format has no place for is left out. */
    private static String printable(String text) {
        return text.codePoints().filter(c -> c >= ' ' && c < 0xFFFE || c == '\t' || c == '\n' || c > 0xFFFF)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }
}
