package croftboard.paper.file;

import croftboard.paper.Data;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A sheet's data as CSV by RFC 4180: a header, CRLF, quotes doubled. A cell that a spreadsheet could take for a formula
 * (it begins with {@code = + - @}, a tab or a line end, and is no plain number) gets an apostrophe in front; so does a cell
 * that begins with an apostrophe, so that taking one away gives every cell back.
 */
final class CsvSheet {
    private static final String LINE_END = "\r\n";
    private static final String GUARD = "'";

    private CsvSheet() { }

    static String of(Data data) {
        StringBuilder text = new StringBuilder(line(data.header()));
        data.rows().forEach(r -> text.append(line(r)));
        return text.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(CsvSheet::cell).collect(Collectors.joining(",")) + LINE_END;
    }

    private static String cell(String text) {
        String safe = guarded(text);
        boolean quoted = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }

    /** The cell as it is written. */
    static String guarded(String text) {
        boolean guard = !text.isEmpty() && "=+-@\t\r\n'".indexOf(text.charAt(0)) >= 0 && !text.matches("-\\d+(\\.\\d+)?");
        return guard ? GUARD + text : text;
    }

    /** The cell as it was. */
    static String read(String written) {
        return written.startsWith(GUARD) ? written.substring(1) : written;
    }
}
