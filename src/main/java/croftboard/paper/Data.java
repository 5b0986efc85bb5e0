package croftboard.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet as a table for machines: stable column names, ISO dates, grams, dollars as {@code 12.34}. Empty cells are
 * columns to write in, or figures that there are not.
 */
public record Data(List<String> header, List<List<String>> rows) {
    /** @throws IllegalArgumentException when a row has other columns than the header */
    public Data {
        header = List.copyOf(header);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != header.size()) {
                throw new IllegalArgumentException(row.size() + " cells under " + header.size() + " heads: " + row);
            }
        }
    }

    /** A header that rows are added to. */
    public static Building of(String... header) {
        return new Building(List.of(header));
    }

    public static final class Building {
        private final List<String> header;
        private final List<List<String>> rows = new ArrayList<>();

        private Building(List<String> header) {
            this.header = header;
        }

        /** @param cells each written by its {@code toString} */
        public Building row(Object... cells) {
            rows.add(java.util.Arrays.stream(cells).map(Object::toString).toList());
            return this;
        }

        public Data done() {
            return new Data(header, rows);
        }
    }
}
