package croftboard.paper.file;

import croftboard.paper.Block;
import croftboard.paper.Typeface;
import java.util.Arrays;

/**
 * How wide the columns of a table are. Each gets what keeps its head's words, its figures and its short cells whole; what
 * is left goes by the columns' shares.
 */
final class ColumnWidths {
    /** Cells of so many characters are kept on one line; figures of more. */
    private static final int SHORT = 12;
    private static final int SHORT_HEAD = 8;
    private static final int LONG_FIGURE = 20;
    private static final double PADDING = 0.85;
    private static final double MOST = 0.4;
    private static final int CELLS = 400;
    private final Block.Table table;
    private final double ems;

    private ColumnWidths(Block.Table table, double ems) {
        this.table = table;
        this.ems = ems;
    }

    /** @param ems the table's width in sizes of type. @return parts of the width that sum to 1 */
    static double[] of(Block.Table table, double ems) {
        return new ColumnWidths(table, ems).widths();
    }

    private double[] widths() {
        int count = table.columns().size();
        double[] least = new double[count];
        double[] wanted = new double[count];
        int shares = table.columns().stream().mapToInt(Block.Column::share).sum();
        for (int i = 0; i < count; i++) {
            least[i] = Math.min(ems * MOST, least(i) + PADDING);
            wanted[i] = ems * table.columns().get(i).share() / Math.max(1, shares);
        }
        double sum = Arrays.stream(least).sum();
        if (sum >= ems) {
            return Arrays.stream(least).map(w -> w / sum).toArray();
        }
        return shared(least, wanted);
    }

    /** Columns that want less than they need get what they need; the others share the rest as they want it. */
    private double[] shared(double[] least, double[] wanted) {
        boolean[] fixed = new boolean[least.length];
        while (true) {
            double left = ems;
            double all = 0;
            for (int i = 0; i < least.length; i++) {
                left -= fixed[i] ? least[i] : 0;
                all += fixed[i] ? 0 : wanted[i];
            }
            boolean more = false;
            for (int i = 0; i < least.length; i++) {
                if (!fixed[i] && wanted[i] * left / all < least[i]) {
                    fixed[i] = true;
                    more = true;
                }
            }
            if (!more) {
                double[] parts = new double[least.length];
                for (int i = 0; i < least.length; i++) {
                    parts[i] = (fixed[i] ? least[i] : wanted[i] * left / all) / ems;
                }
                return parts;
            }
        }
    }

    private double least(int column) {
        Block.Column c = table.columns().get(column);
        String head = Visible.of(c.name());
        double least = head.length() <= SHORT_HEAD ? Typeface.bold().width(head) : longestWord(head, Typeface.bold());
        int looked = 0;
        for (Block.Row row : table.rows()) {
            if (row.kind() != Block.Kind.GROUP && looked++ < CELLS) {
                String cell = Visible.of(row.cells().get(column));
                Typeface face = row.kind() == Block.Kind.PLAIN ? Typeface.plain() : Typeface.bold();
                least = Math.max(least, whole(c, cell) ? face.width(cell) : longestWord(cell, face));
            }
        }
        return least;
    }

    /** Whether a cell is not broken. */
    static boolean whole(Block.Column column, String cell) {
        return cell.length() <= (column.align() == Block.Align.RIGHT ? LONG_FIGURE : SHORT) && cell.indexOf('\n') < 0;
    }

    private static double longestWord(String text, Typeface face) {
        return Arrays.stream(text.split("\\s+")).mapToDouble(face::width).max().orElse(0);
    }
}
