package croftboard.paper.ahead;

import croftboard.paper.Block;
import croftboard.paper.Sheet;
import croftboard.paper.Typeface;
import croftboard.paper.WallPaper;
import java.util.List;

/** The largest type in which a table stays on one wall sheet. */
final class WallFit {
    /** Space between lines, and above and below a row, in sizes of type. */
    private static final double LINE = 1.26;
    private static final double ROW = 0.16;
    /** Title, head of the table and what stands below it, in sizes of type. */
    private static final double BESIDE = 6.5;
    private static final double PADDING = 0.85;
    /** Columns that need more than their share take it from the others. */
    private static final double SPARE = 1.1;
    private final WallPaper paper;
    private final Block.Table table;

    WallFit(String paper, Block.Table table) {
        this.paper = WallPaper.of(paper);
        this.table = table;
    }

    /** Points; the smallest that is printed when none fits. */
    int type() {
        int type = Sheet.Look.LEAST_TYPE;
        while (type > Sheet.Look.LEAST_ON_WALL && high(type) > paper.high()) {
            type--;
        }
        return type;
    }

    private double high(int type) {
        double ems = BESIDE;
        for (Block.Row row : table.rows()) {
            ems += ROW + LINE * lines(row.cells(), paper.wide() / type);
        }
        return ems * type * SPARE;
    }

    private int lines(List<String> cells, double ems) {
        int shares = table.columns().stream().mapToInt(Block.Column::share).sum();
        int most = 1;
        for (int c = 0; c < cells.size(); c++) {
            double room = ems * table.columns().get(c).share() / shares - PADDING;
            most = Math.max(most, lines(cells.get(c), room));
        }
        return most;
    }

    private static int lines(String words, double room) {
        int lines = 1;
        double at = 0;
        for (String word : words.split(" ")) {
            double wide = Typeface.plain().width(word + " ");
            if (at > 0 && at + wide > room + 0.3) {
                lines++;
                at = 0;
            }
            at += wide;
        }
        return lines;
    }
}
