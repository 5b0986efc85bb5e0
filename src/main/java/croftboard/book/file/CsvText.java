package croftboard.book.file;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * CSV text to rows of cells with their places. Comma-separated, one header line with the known
 * columns in any order, every row as long as the header; blank rows are skipped.
 */
final class CsvText {
    private static final CsvFactory FACTORY = CsvFactory.builder()
            .enable(CsvParser.Feature.TRIM_SPACES).enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
    private final String file;
    private final Notebook notebook;

    CsvText(String file, Notebook notebook) {
        this.file = file;
        this.notebook = notebook;
    }

    record Cell(String text, Spot spot) {
        boolean isEmpty() {
            return text.isEmpty();
        }
    }

    /** @param cells by column name, every column there */
    record Row(Spot spot, Map<String, Cell> cells) {
        Cell cell(String column) {
            return cells.get(column);
        }
    }

    List<Row> read(String text, List<String> columns) {
        int lineEnd = text.indexOf('\n');
        String first = lineEnd < 0 ? text : text.substring(0, lineEnd);
        if (first.indexOf(',') < 0 && (first.indexOf(';') >= 0 || first.indexOf('\t') >= 0)) {
            notebook.fault(new Spot(file, 1, 1), "the columns are not separated by commas",
                    "save the sheet as CSV with commas");
            return List.of();
        }
        int before = notebook.faultCount();
        List<List<Cell>> rows = rows(text);
        if (notebook.faultCount() > before) {
            return List.of();
        }
        if (rows.isEmpty()) {
            notebook.fault(Spot.whole(file), "the file is empty", "start with the line "
                    + String.join(",", columns));
            return List.of();
        }
        List<String> header = header(rows.get(0), columns);
        List<Row> out = new ArrayList<>();
        for (List<Cell> cells : header.isEmpty() ? List.<List<Cell>>of() : rows.subList(1, rows.size())) {
            if (cells.size() != header.size()) {
                notebook.fault(cells.get(0).spot(), cells.size()
                        + (cells.size() == 1 ? " column" : " columns") + " where the first line has "
                        + header.size(),
                        "give every row " + (header.size() - 1)
                        + " commas; put \"quotes\" around a text that holds one");
                continue;
            }
            Map<String, Cell> byName = new HashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                byName.put(header.get(i), cells.get(i));
            }
            out.add(new Row(cells.get(0).spot(), byName));
        }
        return out;
    }

    /**
     * The names of the columns in the file's order; none when they are not the known ones, with the
     * faults noted.
     */
    private List<String> header(List<Cell> cells, List<String> columns) {
        List<String> header = new ArrayList<>();
        boolean right = true;
        for (Cell cell : cells) {
            if (!columns.contains(cell.text())) {
                notebook.fault(cell.spot(), "unknown column " + Notebook.show(cell.text()),
                        notebook.meant(cell.text(), columns, "the columns are "
                        + String.join(",", columns)));
                right = false;
            } else if (header.contains(cell.text())) {
                notebook.fault(cell.spot(), "the column [" + cell.text() + "] stands twice",
                        "keep one of them");
                right = false;
            }
            header.add(cell.text());
        }
        for (String column : columns) {
            if (right && !header.contains(column)) {
                notebook.fault(cells.get(0).spot(), "the column [" + column + "] is missing",
                        "the first line is " + String.join(",", columns));
                header.clear();
                right = false;
            }
        }
        return right ? header : List.of();
    }

    private List<List<Cell>> rows(String text) {
        List<List<Cell>> rows = new ArrayList<>();
        try (CsvParser parser = FACTORY.createParser(text)) {
            try {
                rows(parser, rows);
            } catch (IOException e) {
                notebook.fault(spot(parser.currentTokenLocation()),
                        "a quoted text that is not closed, or words behind its end",
                        "close it with \"; write \"\" for a quote inside");
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
        return rows;
    }

    private void rows(CsvParser parser, List<List<Cell>> rows) throws IOException {
        List<Cell> row = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
            if (token == JsonToken.START_ARRAY) {
                row = new ArrayList<>();
            } else if (token == JsonToken.VALUE_STRING) {
                row.add(new Cell(parser.getText().strip(), spot(parser.currentTokenLocation())));
            } else if (token == JsonToken.END_ARRAY && row.stream().anyMatch(c -> !c.isEmpty())) {
                rows.add(row);
                row = new ArrayList<>();
            }
        }
    }

    private Spot spot(JsonLocation location) {
        return new Spot(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }
}
