package croftboard.cli.screen;

import java.util.List;

/** A text being laid out: no line is wider than the page. */
public final class Page {
    /** What a screen is assumed to hold when nothing tells; the widest that is used when more is there. */
    public static final int WIDTH = 100;
    public static final int NARROWEST = 40;
    public static final int WIDEST = 132;
    private static final String BOLD = "\u001b[1m";
    private static final String PLAIN = "\u001b[0m";
    private final int width;
    private final boolean bold;
    private final StringBuilder text = new StringBuilder();

    /** @param bold headings in bold; they are in capitals or underlined as well */
    public Page(int width, boolean bold) {
        this.width = Math.max(NARROWEST, Math.min(WIDEST, width));
        this.bold = bold;
    }

    /** A text from outside on one line, without control or direction characters. */
    public static String plain(String text) {
        return PlainText.clean(text);
    }

    int width() {
        return width;
    }

    /** A part's heading, underlined, with a free line above unless it stands first. */
    public void heading(String words) {
        if (text.length() > 0) {
            gap();
        }
        for (String line : PlainText.wrap(PlainText.clean(words), width)) {
            text.append(bold ? BOLD + line + PLAIN : line).append('\n');
        }
        text.append("=".repeat(Math.min(width, PlainText.width(PlainText.clean(words))))).append('\n');
    }

    /** A smaller heading inside a part. */
    public void subheading(String words) {
        gap();
        for (String line : PlainText.wrap(PlainText.clean(words), width)) {
            text.append(bold ? BOLD + line + PLAIN : line).append('\n');
        }
    }

    public void gap() {
        if (text.length() > 1 && !text.substring(text.length() - 2).equals("\n\n")) {
            text.append('\n');
        }
    }

    /** A sentence, wrapped, never cut. */
    public void say(String words) {
        item("", words);
    }

    /** A sentence behind a mark such as {@code "- "}, its other lines under its first word. */
    public void item(String mark, String words) {
        int indent = PlainText.width(mark);
        String lead = mark;
        for (String line : PlainText.wrap(PlainText.clean(words), width - indent)) {
            text.append((lead + line).stripTrailing()).append('\n');
            lead = " ".repeat(indent);
        }
    }

    /** A line that its writer has already fitted. */
    void fitted(String line) {
        text.append(PlainText.cut(line.stripTrailing(), width)).append('\n');
    }

    void table(TextTable table) {
        table("", table);
    }

    /** @param indent blanks before every line */
    void table(String indent, TextTable table) {
        table.lines(width - indent.length()).forEach(line -> fitted(indent + line));
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
