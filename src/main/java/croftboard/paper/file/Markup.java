package croftboard.paper.file;

import java.util.Locale;
import java.util.function.IntPredicate;

/** Well-formed XML being written. Text is escaped here and nowhere else. */
final class Markup {
    private final StringBuilder out = new StringBuilder();
    private final IntPredicate drawn;

    /** For a reader that can draw every character. */
    Markup() {
        this(c -> true);
    }

    /** @param drawn characters that can be drawn; any other is written by its number: {@code [U+6F22]} */
    Markup(IntPredicate drawn) {
        this.drawn = drawn;
    }

    /** @param attributes name, value, name, value ... */
    Markup open(String tag, String... attributes) {
        out.append('<').append(tag);
        attributes(attributes);
        out.append('>');
        return this;
    }

    Markup close(String tag) {
        out.append("</").append(tag).append('>');
        return this;
    }

    /** An element without content. */
    Markup empty(String tag, String... attributes) {
        out.append('<').append(tag);
        attributes(attributes);
        out.append("/>");
        return this;
    }

    private void attributes(String... attributes) {
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            text(attributes[i + 1]);
            out.append('"');
        }
    }

    /** An element that holds a text. */
    Markup element(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close(tag);
    }

    Markup text(String text) {
        text.codePoints().forEach(this::character);
        return this;
    }

    /** As {@link #text}, with {@code <br/>} for each line end. */
    Markup lines(String text) {
        String[] lines = text.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            if (i > 0) {
                empty("br");
            }
            text(lines[i]);
        }
        return this;
    }

    /** Markup of our own making. */
    Markup raw(String markup) {
        out.append(markup);
        return this;
    }

    private void character(int c) {
        switch (c) {
            case '&' -> out.append("&amp;");
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '"' -> out.append("&quot;");
            case '\'' -> out.append("&#39;");
            default -> {
                if (allowed(c) && c > ' ' && !drawn.test(c)) {
                    out.append(String.format(Locale.ROOT, "[U+%04X]", c));
                } else if (allowed(c)) {
                    out.appendCodePoint(c);
                }
            }
        }
    }

    /** What XML 1.0 takes; section 2.2. */
    static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000 && c <= 0x10FFFF;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
