package croftboard.ledger.file;

import java.util.ArrayList;
import java.util.List;

/** Our own CSV read back to the letter: commas, quotes doubled, CRLF. Nothing is guessed and nothing trimmed. */
final class ExactCsv {
    private final String text;
    private int at;
    private int line = 1;

    private ExactCsv(String text) {
        this.text = text;
    }

    static String of(List<List<String>> rows) {
        StringBuilder all = new StringBuilder();
        for (List<String> row : rows) {
            for (int c = 0; c < row.size(); c++) {
                all.append(c == 0 ? "" : ",").append(CsvOut.cell(row.get(c)));
            }
            all.append("\r\n");
        }
        return all.toString();
    }

    /** @throws Table.Bad when it is not written as we write it */
    static List<Table.Row> rows(String text) throws Table.Bad {
        ExactCsv csv = new ExactCsv(text);
        List<Table.Row> all = new ArrayList<>();
        while (csv.at < text.length()) {
            all.add(csv.row());
        }
        return all;
    }

    private Table.Row row() throws Table.Bad {
        int first = line;
        List<String> cells = new ArrayList<>();
        cells.add(cell(first));
        while (at < text.length() && text.charAt(at) == ',') {
            at++;
            cells.add(cell(first));
        }
        if (!text.startsWith("\r\n", at)) {
            throw new Table.Bad("line " + first + " does not end as a line of an export does");
        }
        at += 2;
        line++;
        return new Table.Row(first, cells);
    }

    private String cell(int first) throws Table.Bad {
        if (at < text.length() && text.charAt(at) == '"') {
            return CsvOut.read(quoted(first));
        }
        int from = at;
        while (at < text.length() && ",\"\r\n".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return CsvOut.read(text.substring(from, at));
    }

    private String quoted(int first) throws Table.Bad {
        StringBuilder cell = new StringBuilder();
        for (at++; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c != '"') {
                line += c == '\n' ? 1 : 0;
                cell.append(c);
            } else if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
                cell.append('"');
                at++;
            } else {
                at++;
                return cell.toString();
            }
        }
        throw new Table.Bad("line " + first + ": a quote is opened and never closed");
    }
}
