package croftboard.cli.screen;

import java.util.ArrayList;
import java.util.List;

/**
 * Text from outside made fit for a screen: no control or direction characters, its width counted in columns as a
 * terminal draws it, cut with a visible mark.
 */
final class PlainText {
    /** Stands where something was cut. */
    static final String CUT = "..";
    private static final int[][] WIDE = {{0x1100, 0x115F}, {0x2E80, 0x303E}, {0x3041, 0xA4CF}, {0xAC00, 0xD7A3},
        {0xF900, 0xFAFF}, {0xFE30, 0xFE4F}, {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F300, 0x1FAFF}, {0x20000, 0x3FFFD}};

    private PlainText() { }

    /** One line: every run of blanks and control characters is one blank, invisible format characters are gone. */
    static String clean(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            int type = Character.getType(c);
            if (Character.isWhitespace(c) || Character.isSpaceChar(c) || type == Character.CONTROL) {
                if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') {
                    out.append(' ');
                }
            } else if (type != Character.FORMAT && type != Character.SURROGATE && type != Character.PRIVATE_USE
                    && type != Character.UNASSIGNED) {
                out.appendCodePoint(c);
            }
        });
        return out.toString().stripTrailing();
    }

    /** Columns that the text takes on a terminal. */
    static int width(String text) {
        return text.codePoints().map(PlainText::width).sum();
    }

    private static int width(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        for (int[] range : WIDE) {
            if (c >= range[0] && c <= range[1]) {
                return 2;
            }
        }
        return 1;
    }

    /** At most {@code columns} wide; what is cut ends in {@link #CUT}. @param columns at least 2 */
    static String cut(String text, int columns) {
        return width(text) <= columns ? text : head(text, columns - CUT.length()) + CUT;
    }

    /** The longest beginning that is at most so wide. */
    private static String head(String text, int columns) {
        int used = 0;
        int end = 0;
        while (end < text.length()) {
            int c = text.codePointAt(end);
            used += width(c);
            if (used > columns) {
                break;
            }
            end += Character.charCount(c);
        }
        return text.substring(0, end);
    }

    static String padded(String text, int columns, boolean right) {
        String blanks = " ".repeat(Math.max(0, columns - width(text)));
        return right ? blanks + text : text + blanks;
    }

    /** Lines of at most {@code columns}, broken at blanks, words that are longer broken inside. @param columns above 1 */
    static List<String> wrap(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            String rest = word;
            if (line.length() > 0 && width(line.toString()) + 1 + width(rest) > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (width(rest) > columns) {
                String head = head(rest, columns);
                lines.add(head);
                rest = rest.substring(head.length());
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        if (line.length() > 0 || lines.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** As {@link #wrap(String, int)}, but at most {@code most} lines, the last one cut with the mark. */
    static List<String> wrap(String text, int columns, int most) {
        List<String> lines = wrap(text, columns);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> kept = new ArrayList<>(lines.subList(0, most));
        String last = kept.get(most - 1);
        kept.set(most - 1, head(last, columns - CUT.length()) + CUT);
        return kept;
    }
}
