package croftboard.paper;

import croftboard.book.LabelStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A piece of a sheet, from top to bottom. All text is text: whatever it holds is shown, never obeyed. */
public sealed interface Block {

    /** @param level 1 below the sheet's title, 2 below that, 3 the smallest */
    record Heading(int level, String text) implements Block {
        /** @throws IllegalArgumentException for a level outside 1 .. 3 */
        public Heading {
            if (level < 1 || level > 3) {
                throw new IllegalArgumentException("level " + level);
            }
        }
    }

    /** A paragraph; its line ends are kept. */
    record Text(String text) implements Block { }

    /** Names and values in a list. */
    record Fields(List<Field> fields) implements Block {
        public Fields {
            fields = List.copyOf(fields);
        }

        /** @param pairs name, value, name, value ... */
        public static Fields of(String... pairs) {
            List<Field> fields = new ArrayList<>();
            for (int i = 0; i < pairs.length; i += 2) {
                fields.add(new Field(pairs[i], pairs[i + 1]));
            }
            return new Fields(fields);
        }
    }

    /** @param value empty: a rule to write on */
    record Field(String name, String value) { }

    /** The head is repeated on every page, no row is cut at a page's end. */
    record Table(Optional<String> caption, List<Column> columns, List<Row> rows) implements Block {
        /** @throws IllegalArgumentException when a row has other cells than there are columns */
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            for (Row row : rows) {
                if (row.kind() != Kind.GROUP && row.cells().size() != columns.size()
                        || row.kind() == Kind.GROUP && row.cells().size() != 1) {
                    throw new IllegalArgumentException(row + " does not fit " + columns.size() + " columns");
                }
            }
        }

        public Table(List<Column> columns, List<Row> rows) {
            this(Optional.empty(), columns, rows);
        }
    }

    enum Align { LEFT, RIGHT, CENTRE }

    /**
     * @param share of the width, beside the other columns' shares
     * @param toWriteIn ruled, tall enough to write in by hand
     */
    record Column(String name, Align align, int share, boolean toWriteIn) {
        public static Column words(String name, int share) {
            return new Column(name, Align.LEFT, share, false);
        }

        public static Column figure(String name, int share) {
            return new Column(name, Align.RIGHT, share, false);
        }

        public static Column mark(String name, int share) {
            return new Column(name, Align.CENTRE, share, false);
        }

        public static Column blank(String name, int share) {
            return new Column(name, Align.LEFT, share, true);
        }
    }

    /** PLAIN; STRONG: bold; GROUP: one cell across, heads the rows below it and stays with the next; TOTAL: ruled above, bold. */
    enum Kind { PLAIN, STRONG, GROUP, TOTAL }

    /** @param cells one a column; a single one in a GROUP. Line ends in a cell are kept. */
    record Row(List<String> cells, Kind kind) {
        public Row {
            cells = List.copyOf(cells);
        }

        public static Row of(String... cells) {
            return new Row(List.of(cells), Kind.PLAIN);
        }

        public static Row strong(String... cells) {
            return new Row(List.of(cells), Kind.STRONG);
        }

        public static Row group(String words) {
            return new Row(List.of(words), Kind.GROUP);
        }

        public static Row total(String... cells) {
            return new Row(List.of(cells), Kind.TOTAL);
        }
    }

    /** A caution, in a box. */
    record Notice(String text) implements Block { }

    /** Boxes to tick, a line each. */
    record Ticks(List<String> lines) implements Block {
        public Ticks {
            lines = List.copyOf(lines);
        }
    }

    /** @param lines ruled, to write on */
    record Blank(int lines) implements Block { }

    /** What follows begins on a new page. */
    record NewPage() implements Block { }

    /**
     * A drawing.
     *
     * @param svg with a width and height in millimetres or a viewBox; of {@code rect}, {@code line}, {@code text} and
     *     {@code g} with a translate, which is what is drawn on paper
     * @param alt what it shows, in words
     */
    record Picture(String svg, String alt) implements Block { }

    /** Side by side, of equal width. */
    record Columns(List<List<Block>> columns) implements Block {
        public Columns {
            columns = columns.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A page of label stock: cell after cell from left to right, top to bottom; more cells than the stock has go on to
     * further pages. A cell is drawn in the largest type that fits, {@code leastType} to {@code mostType} points.
     *
     * @param cells headings, texts, notices and pictures of each label; an empty list leaves a label free
     */
    record LabelPage(LabelStock stock, List<List<Block>> cells, int leastType, int mostType) implements Block {
        /** @throws IllegalArgumentException when a label does not fit: {@link LabelFit} says so before */
        public LabelPage {
            cells = cells.stream().map(List::copyOf).toList();
            for (List<Block> cell : cells) {
                if (LabelFit.type(stock, cell, leastType, mostType).isEmpty()) {
                    throw new IllegalArgumentException("does not fit its label: " + cell);
                }
            }
        }
    }
}
