package croftboard.ledger.store;

import croftboard.ledger.Booking;
import croftboard.ledger.Entry;
import croftboard.ledger.Form;
import croftboard.ledger.Forms;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;

/** Adds rows, many at a time. Rows are only ever added. */
final class Adding {
    private static final int AT_ONCE = 1000;
    private final Connection connection;

    Adding(Connection connection) {
        this.connection = connection;
    }

    void bookings(List<Booking> bookings) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("INSERT INTO booking (number, booked_at, who, command, name,"
                + " fingerprint) VALUES (?, ?, ?, ?, ?, ?)")) {
            for (Booking b : bookings) {
                s.setLong(1, b.number());
                s.setString(2, b.at().toString());
                s.setString(3, b.who());
                s.setString(4, b.by());
                s.setString(5, b.name());
                s.setString(6, b.fingerprint());
                s.addBatch();
            }
            s.executeBatch();
        }
    }

    /** In the order of their ids, so that a correction comes after what it corrects. */
    void entries(List<Entry> entries) throws SQLException {
        shared(entries);
        for (Form<?> form : Forms.ALL) {
            List<Entry> mine = entries.stream().filter(form.kind()::isInstance).toList();
            if (!mine.isEmpty()) {
                own(new EntryTable<>(form), mine);
            }
        }
    }

    private void shared(List<Entry> entries) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("INSERT INTO entry (id, booking, line, kind, day, corrects, why)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?)")) {
            int waiting = 0;
            for (Entry e : entries) {
                s.setLong(1, e.stamp().id());
                s.setLong(2, e.stamp().booking().number());
                s.setLong(3, e.stamp().line());
                s.setString(4, Forms.of(e).table());
                s.setString(5, e.date().toString());
                if (e.stamp().corrects().isPresent()) {
                    s.setLong(6, e.stamp().corrects().get().entry());
                } else {
                    s.setNull(6, Types.BIGINT);
                }
                s.setString(7, e.stamp().corrects().map(c -> c.why()).orElse(""));
                s.addBatch();
                waiting = full(s, waiting + 1);
            }
            s.executeBatch();
        }
    }

    private void own(EntryTable<?> table, List<Entry> entries) throws SQLException {
        try (PreparedStatement s = table.inserting(connection)) {
            int waiting = 0;
            for (Entry e : new ArrayList<>(entries)) {
                table.add(s, e);
                waiting = full(s, waiting + 1);
            }
            s.executeBatch();
        }
    }

    private static int full(PreparedStatement s, int waiting) throws SQLException {
        if (waiting < AT_ONCE) {
            return waiting;
        }
        s.executeBatch();
        return 0;
    }
}
