package croftboard.cli;

import croftboard.cli.screen.Rows;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Rows as CSV by RFC 4180: a header, CRLF, quotes doubled. A text that a spreadsheet could take for a formula gets an
 * apostrophe in front; figures do not need one.
 */
final class CsvText {
    private static final String LINE_END = "\r\n";

    private CsvText() { }

    static String of(Rows rows) {
        StringBuilder text = new StringBuilder(line(List.copyOf(rows.columns())));
        rows.rows().forEach(row -> text.append(line(row)));
        return text.toString();
    }

    private static String line(List<Object> cells) {
        return cells.stream().map(CsvText::cell).collect(Collectors.joining(",")) + LINE_END;
    }

    private static String cell(Object cell) {
        if (cell instanceof BigDecimal figure) {
            return figure.toPlainString();
        }
        if (cell instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        String text = harmless(cell.toString());
        boolean quoted = text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }

    private static String harmless(String text) {
        return !text.isEmpty() && "=+-@\t\r\n".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
