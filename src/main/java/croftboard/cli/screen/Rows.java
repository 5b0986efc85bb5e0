package croftboard.cli.screen;

import java.math.BigDecimal;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One part as named columns, for CSV and JSON. A cell is a text, an exact decimal figure, or yes and no; its column's
 * name carries the unit.
 */
public final class Rows {
    private final List<String> columns;
    private final List<List<Object>> rows = new ArrayList<>();

    Rows(String... columns) {
        this.columns = List.of(columns);
    }

    /** @param cells text, whole or decimal numbers, yes/no, dates, or Optional of these */
    Rows add(Object... cells) {
        List<Object> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(plain(cell));
        }
        rows.add(List.copyOf(row));
        return this;
    }

    private static Object plain(Object cell) {
        if (cell instanceof Optional<?> maybe) {
            return maybe.isPresent() ? plain(maybe.get()) : "";
        }
        if (cell instanceof Integer || cell instanceof Long) {
            return BigDecimal.valueOf(((Number) cell).longValue());
        }
        if (cell instanceof Temporal) {
            return cell.toString();
        }
        if (cell instanceof String || cell instanceof BigDecimal || cell instanceof Boolean) {
            return cell;
        }
        throw new IllegalStateException("no cell of a table: [" + cell + "]");
    }

    /** Cents as dollars, exact. */
    static BigDecimal dollars(long cents) {
        return BigDecimal.valueOf(cents, 2);
    }

    public List<String> columns() {
        return columns;
    }

    public List<List<Object>> rows() {
        return List.copyOf(rows);
    }
}
