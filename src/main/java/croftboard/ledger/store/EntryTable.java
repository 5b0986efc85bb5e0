package croftboard.ledger.store;

import croftboard.ledger.Booking;
import croftboard.ledger.Entry;
import croftboard.ledger.Form;
import croftboard.ledger.Stamp;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The table of one kind of entry, beside the table that holds what all kinds share.
 *
 * @param <E> the kind
 */
final class EntryTable<E extends Entry> {
    private static final String SHARED = "e.id, e.line, e.day, e.corrects, e.why, b.number, b.booked_at, b.who, b.command,"
            + " b.name, b.fingerprint";
    private static final int SHARED_COUNT = 11;
    static final String IN_FORCE = "NOT EXISTS (SELECT 1 FROM entry c WHERE c.corrects = e.id)";
    private final Form<E> form;
    private final String select;
    private final String insert;

    EntryTable(Form<E> form) {
        this.form = form;
        String own = form.columns().stream().map(c -> ", k." + c.name()).collect(Collectors.joining());
        select = "SELECT " + SHARED + own + " FROM entry e JOIN booking b ON b.number = e.booking JOIN " + form.table()
                + " k ON k.entry = e.id WHERE e.kind = '" + form.table() + "' AND ";
        insert = "INSERT INTO " + form.table() + " (entry" + form.columns().stream().map(c -> ", " + c.name())
                .collect(Collectors.joining()) + ") VALUES (?" + ", ?".repeat(form.columns().size()) + ")";
    }

    /** @param where rest of the statement, with a question mark for each of {@code values} */
    List<E> read(Connection connection, String where, Object... values) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement(select + where)) {
            for (int i = 0; i < values.length; i++) {
                s.setObject(i + 1, values[i]);
            }
            List<E> all = new ArrayList<>();
            Map<Long, Booking> bookings = new HashMap<>();
            try (ResultSet row = s.executeQuery()) {
                while (row.next()) {
                    all.add(entry(row, bookings));
                }
            }
            return all;
        }
    }

    private E entry(ResultSet row, Map<Long, Booking> bookings) throws SQLException {
        long number = row.getLong(6);
        Booking booking = bookings.get(number);
        if (booking == null) {
            booking = new Booking(number, LocalDateTime.parse(row.getString(7)), row.getString(8), row.getString(9),
                    row.getString(10), row.getString(11));
            bookings.put(number, booking);
        }
        long corrects = row.getLong(4);
        Optional<Stamp.Correction> correction = row.wasNull() ? Optional.empty()
                : Optional.of(new Stamp.Correction(corrects, row.getString(5)));
        Stamp stamp = new Stamp(row.getLong(1), booking, row.getInt(2), correction);
        List<String> cells = new ArrayList<>();
        for (int c = 0; c < form.columns().size(); c++) {
            String cell = row.getString(SHARED_COUNT + 1 + c);
            cells.add(cell == null ? "" : cell);
        }
        return form.entry(stamp, LocalDate.parse(row.getString(3)), cells);
    }

    PreparedStatement inserting(Connection connection) throws SQLException {
        return connection.prepareStatement(insert);
    }

    /** Puts one entry into the batch of {@link #inserting}. */
    void add(PreparedStatement s, Entry entry) throws SQLException {
        s.setLong(1, entry.stamp().id());
        List<String> cells = form.cells(entry);
        for (int c = 0; c < cells.size(); c++) {
            if (!form.columns().get(c).number()) {
                s.setString(c + 2, cells.get(c));
            } else if (cells.get(c).isEmpty()) {
                s.setNull(c + 2, Types.BIGINT);
            } else {
                s.setLong(c + 2, Long.parseLong(cells.get(c)));
            }
        }
        s.addBatch();
    }

    String table() {
        return form.table();
    }
}
