package croftboard.ledger.file;

/** Cells as RFC 4180 wants them; what a spreadsheet could take for a formula gets an apostrophe in front, as does an apostrophe. */
final class CsvOut {
    private CsvOut() { }

    static String cell(String text) {
        boolean figure = text.matches("-?\\d+(?:[./]\\d+)?");
        boolean risky = !figure && !text.isEmpty() && "=+-@\t\r\n'".indexOf(text.charAt(0)) >= 0;
        String safe = risky ? "'" + text : text;
        boolean quoted = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n')
                || !safe.equals(safe.strip());
        return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }

    /** The reverse of the apostrophe. */
    static String read(String cell) {
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }
}
