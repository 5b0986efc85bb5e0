package croftboard.ledger.file;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** CSV by RFC 4180, with what other programs make of it: other separators, encodings, line ends. What is guessed is said. */
final class Csv {
    private static final String SEPARATORS = ",;\t|";
    private static final int LOOKED_AT = 20;
    private final String text;
    private final char separator;
    private int at;
    private int line = 1;

    private Csv(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    static List<Table.Row> rows(byte[] content, List<String> guesses) throws Table.Bad {
        String text = decoded(content, guesses);
        if (text.indexOf('\0') >= 0) {
            throw new Table.Bad("this is no text -> save it as .csv or .xlsx");
        }
        char separator = separator(text);
        if (separator != ',') {
            guesses.add("Cells are separated by " + (separator == ';' ? "semicolons" : separator == '|' ? "bars" : "tabs") + ".");
        }
        return new Csv(text, separator).rows();
    }

    private static String decoded(byte[] content, List<String> guesses) throws Table.Bad {
        if (content.length >= 2 && (content[0] & 0xff) == 0xff && (content[1] & 0xff) == 0xfe) {
            return strict(content, 2, StandardCharsets.UTF_16LE);
        }
        if (content.length >= 2 && (content[0] & 0xff) == 0xfe && (content[1] & 0xff) == 0xff) {
            return strict(content, 2, StandardCharsets.UTF_16BE);
        }
        boolean marked = content.length >= 3 && (content[0] & 0xff) == 0xef && (content[1] & 0xff) == 0xbb
                && (content[2] & 0xff) == 0xbf;
        try {
            return strict(content, marked ? 3 : 0, StandardCharsets.UTF_8);
        } catch (Table.Bad e) {
            guesses.add("The file is no UTF-8: it was read as Windows-1252. Look at words with accents.");
            return new String(content, Charset.forName("windows-1252"));
        }
    }

    private static String strict(byte[] content, int from, Charset charset) throws Table.Bad {
        try {
            return charset.newDecoder().onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(content, from, content.length - from)).toString();
        } catch (CharacterCodingException e) {
            throw new Table.Bad("this is no " + charset + " text -> save it as CSV UTF-8");
        }
    }

    /** The one that cuts the first lines into the same number of cells, the most cells first. */
    private static char separator(String text) {
        char best = ',';
        long most = 0;
        for (char candidate : SEPARATORS.toCharArray()) {
            Map<Integer, Long> sizes = new java.util.HashMap<>();
            Csv csv = new Csv(text, candidate);
            try {
                for (int i = 0; i < LOOKED_AT && csv.at < text.length(); i++) {
                    sizes.merge(csv.row().cells().size(), 1L, Long::sum);
                }
            } catch (Table.Bad e) {
                continue;
            }
            long worth = sizes.entrySet().stream().filter(e -> e.getKey() > 1).mapToLong(e -> e.getValue() * 1000 + e.getKey()).max()
                    .orElse(0);
            if (worth > most) {
                most = worth;
                best = candidate;
            }
        }
        return best;
    }

    private List<Table.Row> rows() throws Table.Bad {
        List<Table.Row> all = new ArrayList<>();
        while (at < text.length()) {
            all.add(row());
            if (all.size() > Table.MOST_ROWS) {
                throw new Table.Bad("more than " + Table.MOST_ROWS + " lines -> export a shorter time");
            }
        }
        return all;
    }

    private Table.Row row() throws Table.Bad {
        int first = line;
        List<String> cells = new ArrayList<>();
        boolean more = true;
        while (more) {
            if (cells.size() == Table.MOST_COLUMNS) {
                throw new Table.Bad("line " + first + " has more than " + Table.MOST_COLUMNS + " columns -> is this the right file?");
            }
            String cell = at < text.length() && text.charAt(at) == '"' ? quoted(first) : plain();
            if (cell.length() > Table.LONGEST_CELL) {
                throw new Table.Bad("line " + first + " has a cell of more than " + Table.LONGEST_CELL + " letters"
                        + " -> look for a quote that is not closed");
            }
            cells.add(Table.clean(cell));
            more = at < text.length() && text.charAt(at) == separator;
            if (more) {
                at++;
            }
        }
        lineEnd();
        return new Table.Row(first, cells);
    }

    private void lineEnd() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
            if (at < text.length() && text.charAt(at) == '\n') {
                at++;
            }
        } else if (at < text.length()) {
            at++;
        }
        line++;
    }

    private String plain() {
        int from = at;
        while (at < text.length() && text.charAt(at) != separator && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        return text.substring(from, at);
    }

    private String quoted(int first) throws Table.Bad {
        StringBuilder cell = new StringBuilder();
        at++;
        while (true) {
            if (at >= text.length()) {
                throw new Table.Bad("line " + first + ": a quote is opened and never closed -> close it");
            }
            char c = text.charAt(at++);
            if (c == '"' && at < text.length() && text.charAt(at) == '"') {
                cell.append('"');
                at++;
            } else if (c == '"') {
                return cell.append(plain()).toString();
            } else {
                line += c == '\n' ? 1 : 0;
                cell.append(c);
            }
        }
    }
}
