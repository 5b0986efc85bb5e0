package croftboard.ledger.store;

import croftboard.ledger.Booked;
import croftboard.ledger.Booking;
import croftboard.ledger.Contents;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.Form;
import croftboard.ledger.Forms;
import croftboard.ledger.Ledger;
import croftboard.ledger.Stamp;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A ledger on disk or on a server. A booking is in it whole or not at all, whenever the process or the machine stops; several
 * processes may read while one books, and book one after the other. All methods throw {@link UncheckedIOException} with a
 * sentence for people when disk or server fail; then nothing was booked.
 */
public final class LedgerStore implements Ledger, AutoCloseable {
    /** Taken by whoever books on a server until it is done; any fixed number does. */
    private static final long WRITERS_TURN = 2_027_033L;
    private final Door door;
    private final Connection connection;

    private LedgerStore(Door door, Connection connection) {
        this.door = door;
        this.connection = connection;
    }

    /**
     * Opens a ledger to book into it; makes it when it is not there.
     *
     * @param where path of a file, or {@code jdbc:postgresql://host/database?user=...}
     */
    public static LedgerStore toWrite(String where) {
        return toWrite(new Door(where, 0));
    }

    static LedgerStore toWrite(Door door) {
        LedgerStore store = opened(door, true);
        try {
            store.writing(() -> {
                Migrations.run(store.connection, door.server());
                return null;
            });
            return store;
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
    }

    /** Opens a ledger to read it; empty when there is none. Nothing is made or changed. */
    public static Optional<LedgerStore> toRead(String where) {
        Door door = new Door(where, 0);
        if (!door.isThere()) {
            return Optional.empty();
        }
        LedgerStore store = opened(door, false);
        if (store.form() == 0) {
            store.close();
            return Optional.empty();
        }
        return Optional.of(store);
    }

    private static LedgerStore opened(Door door, boolean toWrite) {
        try {
            LedgerStore store = new LedgerStore(door, door.open(toWrite));
            if (store.form() > Migrations.NEWEST) {
                store.close();
                String words = "the ledger " + door.shown() + " was written by a newer Croftboard -> use that one";
                throw new UncheckedIOException(words, new IOException(words));
            }
            return store;
        } catch (SQLException e) {
            throw Trouble.of(door.shown(), e);
        }
    }

    private int form() {
        return asked(() -> Migrations.form(connection, door.server()));
    }

    /** Books a draft, or says why not. */
    public Booked book(Draft draft) {
        return writing(() -> {
            Optional<Booking> before = readBookings("WHERE fingerprint = ?", draft.fingerprint()).stream().findFirst();
            if (before.isPresent()) {
                return new Booked.Already(before.get());
            }
            Optional<String> wrong = wrongCorrection(draft);
            if (wrong.isPresent()) {
                return new Booked.Refused(wrong.get());
            }
            Booking booking = new Booking(1 + most("booking", "number"), draft.at(), draft.who(), draft.by(), draft.name(),
                    draft.fingerprint());
            List<Entry> entries = draft.numbered(booking, 1 + most("entry", "id"));
            Adding adding = new Adding(connection);
            adding.bookings(List.of(booking));
            adding.entries(entries);
            return new Booked.Done(booking, entries);
        });
    }

    /** Fills an empty ledger with what another one held. @return false when this one is not empty; then nothing has changed */
    public boolean fill(Contents contents) {
        return writing(() -> {
            if (most("booking", "number") > 0) {
                return false;
            }
            add(contents);
            return true;
        });
    }

    /**
     * Puts what another one held in the place of all that is here.
     *
     * @param before what the caller has seen here and kept
     * @return false when somebody has booked since; then nothing has changed
     */
    public boolean replace(Contents before, Contents contents) {
        return writing(() -> {
            if (!contents().equals(before)) {
                return false;
            }
            try (Statement s = connection.createStatement()) {
                for (Form<?> form : Forms.ALL) {
                    s.execute("DELETE FROM " + form.table());
                }
                s.execute("DELETE FROM entry");
                s.execute("DELETE FROM booking");
            }
            add(contents);
            return true;
        });
    }

    private void add(Contents contents) throws SQLException {
        Adding adding = new Adding(connection);
        adding.bookings(contents.bookings());
        adding.entries(contents.entries().stream().sorted(Comparator.comparing(e -> e.stamp().id())).toList());
    }

    /** Whether it was a damaged file that led to this. */
    public static boolean damaged(UncheckedIOException e) {
        return Trouble.damaged(e);
    }

    private Optional<String> wrongCorrection(Draft draft) throws SQLException {
        Set<Long> seen = new HashSet<>();
        for (Entry e : draft.entries()) {
            Optional<Stamp.Correction> correction = e.stamp().corrects();
            if (correction.isPresent()) {
                long target = correction.get().entry();
                if (number("SELECT id FROM entry WHERE id = ?", target).isEmpty()) {
                    return Optional.of("there is no entry " + target + " to correct");
                }
                OptionalLong later = number("SELECT id FROM entry WHERE corrects = ?", target);
                if (later.isPresent() || !seen.add(target)) {
                    return Optional.of("entry " + target + " has been corrected already"
                            + (later.isPresent() ? ": correct entry " + later.getAsLong() + " instead" : " in this file"));
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public <E extends Entry> List<E> entries(Class<E> kind, LocalDate from, LocalDate to) {
        EntryTable<E> table = new EntryTable<>(Forms.of(kind));
        return asked(() -> table.read(connection, "e.day BETWEEN ? AND ? AND " + EntryTable.IN_FORCE + " ORDER BY e.day, e.id",
                from.toString(), to.toString()));
    }

    @Override
    public Optional<Entry> entry(long id) {
        return asked(() -> {
            for (Form<?> form : Forms.ALL) {
                List<? extends Entry> found = new EntryTable<>(form).read(connection, "e.id = ?", id);
                if (!found.isEmpty()) {
                    return Optional.of(found.get(0));
                }
            }
            return Optional.empty();
        });
    }

    @Override
    public List<Entry> history(long id) {
        TreeSet<Long> family = asked(() -> {
            TreeSet<Long> ids = new TreeSet<>();
            OptionalLong back = OptionalLong.of(id);
            while (back.isPresent() && ids.add(back.getAsLong())) {
                back = number("SELECT corrects FROM entry WHERE corrects IS NOT NULL AND id = ?", back.getAsLong());
            }
            OptionalLong on = number("SELECT id FROM entry WHERE corrects = ?", id);
            while (on.isPresent() && ids.add(on.getAsLong())) {
                on = number("SELECT id FROM entry WHERE corrects = ?", on.getAsLong());
            }
            return ids;
        });
        return family.stream().map(this::entry).flatMap(Optional::stream).toList();
    }

    @Override
    public List<Entry> everything() {
        return snapshot(this::readEntries);
    }

    private List<Entry> readEntries() throws SQLException {
        TreeMap<Long, Entry> all = new TreeMap<>();
        for (Form<?> form : Forms.ALL) {
            new EntryTable<>(form).read(connection, "1 = 1").forEach(e -> all.put(e.stamp().id(), e));
        }
        return List.copyOf(all.values());
    }

    /** Everything, as it is at one moment, whoever books meanwhile. */
    public Contents everythingAtOnce() {
        return snapshot(this::contents);
    }

    private Contents contents() throws SQLException {
        return new Contents(readBookings("ORDER BY number"), readEntries());
    }

    @Override
    public List<Booking> bookings() {
        return asked(() -> readBookings("ORDER BY number"));
    }

    private List<Booking> readBookings(String rest, String... values) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("SELECT number, booked_at, who, command, name, fingerprint FROM"
                + " booking " + rest)) {
            for (int i = 0; i < values.length; i++) {
                s.setString(i + 1, values[i]);
            }
            List<Booking> all = new ArrayList<>();
            try (ResultSet row = s.executeQuery()) {
                while (row.next()) {
                    all.add(new Booking(row.getLong(1), LocalDateTime.parse(row.getString(2)), row.getString(3), row.getString(4),
                            row.getString(5), row.getString(6)));
                }
            }
            return all;
        }
    }

    private long most(String table, String column) throws SQLException {
        try (Statement s = connection.createStatement();
                ResultSet row = s.executeQuery("SELECT coalesce(max(" + column + "), 0) FROM " + table)) {
            row.next();
            return row.getLong(1);
        }
    }

    private OptionalLong number(String sql, long value) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement(sql)) {
            s.setLong(1, value);
            try (ResultSet row = s.executeQuery()) {
                return row.next() ? OptionalLong.of(row.getLong(1)) : OptionalLong.empty();
            }
        }
    }

    private interface Asking<T> {
        T run() throws SQLException;
    }

    private <T> T asked(Asking<T> asking) {
        try {
            return asking.run();
        } catch (SQLException e) {
            throw Trouble.of(door.shown(), e);
        }
    }

    private <T> T writing(Asking<T> work) {
        return transaction(() -> {
            if (door.server()) {
                try (Statement s = connection.createStatement()) {
                    s.execute("SELECT pg_advisory_xact_lock(" + WRITERS_TURN + ")");
                }
            }
            return work.run();
        });
    }

    /** Several questions about one state of the ledger. */
    private <T> T snapshot(Asking<T> work) {
        return transaction(() -> {
            if (door.server()) {
                try (Statement s = connection.createStatement()) {
                    s.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ");
                }
            }
            return work.run();
        });
    }

    private <T> T transaction(Asking<T> work) {
        try {
            connection.setAutoCommit(false);
            try {
                T done = work.run();
                connection.commit();
                connection.setAutoCommit(true);
                return done;
            } catch (SQLException | RuntimeException e) {
                undo(e);
                throw e;
            }
        } catch (SQLException e) {
            throw Trouble.of(door.shown(), e);
        }
    }

    /** Where even that fails, the database undoes it by itself. */
    private void undo(Exception first) {
        try {
            connection.rollback();
            connection.setAutoCommit(true);
        } catch (SQLException e) {
            first.addSuppressed(e);
        }
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw Trouble.of(door.shown(), e);
        }
    }
}
