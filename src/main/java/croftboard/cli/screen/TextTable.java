package croftboard.cli.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rows under headed columns, fitted to a width: first the wide columns fold onto more lines; when that does not help,
 * every row is printed as a small list, one line a column.
 */
final class TextTable {
    private static final String GAP = "  ";
    private static final int MOST_LINES = 4;
    private static final int FOLDED = 9;
    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    /** @param right figures stand to the right. @param folds may be folded when the page is narrow */
    record Column(String header, boolean right, boolean folds) {
        static Column words(String header) {
            return new Column(header, false, true);
        }

        static Column figure(String header) {
            return new Column(header, true, false);
        }

        static Column mark(String header) {
            return new Column(header, false, false);
        }
    }

    TextTable(Column... columns) {
        this.columns = List.of(columns);
    }

    TextTable row(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalStateException("a row of [" + cells.length + "] cells in a table of [" + columns.size() + "]");
        }
        rows.add(Arrays.stream(cells).map(PlainText::clean).toList());
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    List<String> lines(int width) {
        int[] widths = natural();
        int gaps = GAP.length() * (columns.size() - 1);
        while (Arrays.stream(widths).sum() + gaps > width) {
            int widest = widestFolding(widths);
            if (widest < 0) {
                return asLists(width);
            }
            widths[widest]--;
        }
        List<String> lines = new ArrayList<>();
        print(columns.stream().map(Column::header).toList(), widths, lines);
        lines.add(underline(widths));
        rows.forEach(row -> print(row, widths, lines));
        return lines;
    }

    private int[] natural() {
        int[] widths = new int[columns.size()];
        for (int c = 0; c < widths.length; c++) {
            int column = c;
            widths[c] = Math.max(PlainText.width(columns.get(c).header), rows.stream()
                    .mapToInt(r -> PlainText.width(r.get(column))).max().orElse(0));
        }
        return widths;
    }

    private int widestFolding(int[] widths) {
        int widest = -1;
        for (int c = 0; c < widths.length; c++) {
            boolean mayShrink = columns.get(c).folds && widths[c] > Math.max(FOLDED, longestHeaderWord(c));
            if (mayShrink && (widest < 0 || widths[c] > widths[widest])) {
                widest = c;
            }
        }
        return widest;
    }

    private int longestHeaderWord(int column) {
        return Arrays.stream(columns.get(column).header.split(" ")).mapToInt(PlainText::width).max().orElse(0);
    }

    private static String underline(int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int w : widths) {
            line.append(line.length() > 0 ? GAP : "").append("-".repeat(w));
        }
        return line.toString();
    }

    private void print(List<String> row, int[] widths, List<String> lines) {
        List<List<String>> cells = new ArrayList<>();
        for (int c = 0; c < widths.length; c++) {
            cells.add(PlainText.wrap(row.get(c), Math.max(2, widths[c]), MOST_LINES));
        }
        int height = cells.stream().mapToInt(List::size).max().orElse(1);
        for (int h = 0; h < height; h++) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < widths.length; c++) {
                String text = h < cells.get(c).size() ? cells.get(c).get(h) : "";
                line.append(c > 0 ? GAP : "").append(PlainText.padded(text, widths[c], columns.get(c).right));
            }
            lines.add(line.toString().stripTrailing());
        }
    }

    private List<String> asLists(int width) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            String mark = "* ";
            for (int c = 0; c < row.size(); c++) {
                if (!row.get(c).isEmpty()) {
                    String words = (columns.get(c).header + ": " + row.get(c)).replaceFirst("^: ", "");
                    for (String part : PlainText.wrap(words, width - 2, MOST_LINES)) {
                        lines.add(mark + part);
                        mark = "  ";
                    }
                }
            }
        }
        return lines;
    }
}
