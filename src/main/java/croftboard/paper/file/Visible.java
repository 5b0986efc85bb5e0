package croftboard.paper.file;

/**
 * Text as a reader sees it: no control characters, no invisible ones that would turn the reading direction round. Line
 * ends stay.
 */
final class Visible {
    private Visible() { }

    static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(c -> {
            int type = Character.getType(c);
            if (c == '\n') {
                out.append('\n');
            } else if (type == Character.CONTROL || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR) {
                out.append(' ');
            } else if (type != Character.FORMAT && type != Character.SURROGATE && type != Character.PRIVATE_USE
                    && type != Character.UNASSIGNED) {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /** On one line. */
    static String line(String text) {
        return of(text).replace('\n', ' ').strip();
    }

    /** At most so many characters, what is left out marked. */
    static String shortened(String text, int most) {
        String line = line(text);
        return line.codePointCount(0, line.length()) <= most ? line
                : line.substring(0, line.offsetByCodePoints(0, most - 1)).stripTrailing() + "\u2026";
    }
}
