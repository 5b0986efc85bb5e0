package croftboard.ledger.file;

import java.util.List;

/**
 * A table that came in.
 *
 * @param header names of the columns, trimmed; never empty
 * @param guesses sentences on what was guessed while reading
 */
public record Table(List<String> header, List<Row> rows, List<String> guesses) {
    public static final int MOST_BYTES = 16_000_000;
    public static final int MOST_COLUMNS = 200;
    public static final int MOST_ROWS = 200_000;
    public static final int LONGEST_CELL = 2_000;

    /** @param line of the file, 1 for its first. @param cells trimmed, as many as the header has */
    public record Row(int line, List<String> cells) { }

    /** What reading a file came to. */
    public sealed interface Reading {
        record Read(Table table) implements Reading { }

        /** @param why what is wrong and what would be right, without the file's name */
        record Refused(String why) implements Reading { }
    }

    /** Found while reading; the message is for people. */
    static final class Bad extends Exception {
        private static final long serialVersionUID = 1;

        Bad(String message) {
            super(message);
        }
    }

    /** Control and direction characters and halves of characters become blanks; ends are trimmed. */
    static String clean(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            int type = Character.getType(c);
            boolean no = type == Character.CONTROL || type == Character.SURROGATE || type == Character.UNASSIGNED
                    || type == Character.FORMAT || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR
                    || c == 0xa0 || c == 0xfffd;
            plain.appendCodePoint(no ? ' ' : c);
        });
        return plain.toString().strip();
    }
}
