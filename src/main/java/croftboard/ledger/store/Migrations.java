package croftboard.ledger.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;

/** Brings the tables to the newest form, step by numbered step; both kinds of database run the same steps. */
final class Migrations {
    /** The form that this program writes. */
    static final int NEWEST = 1;

    private Migrations() { }

    /** The form of the ledger's tables; 0: there are none. */
    static int form(Connection connection, boolean server) throws SQLException {
        String there = server ? "SELECT count(*) FROM information_schema.tables WHERE table_schema = current_schema()"
                + " AND table_name = 'ledger_form'"
                : "SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name = 'ledger_form'";
        if (one(connection, there) == 0) {
            return 0;
        }
        return one(connection, "SELECT max(step) FROM ledger_form");
    }

    /** Within the caller's transaction. */
    static void run(Connection connection, boolean server) throws SQLException {
        int form = form(connection, server);
        try (Statement s = connection.createStatement()) {
            if (form == 0) {
                s.execute("CREATE TABLE ledger_form (step BIGINT PRIMARY KEY)");
            }
            for (int step = form + 1; step <= NEWEST; step++) {
                for (String sql : statements(step)) {
                    s.execute(sql);
                }
                s.execute("INSERT INTO ledger_form (step) VALUES (" + step + ")");
            }
        }
    }

    private static List<String> statements(int step) {
        try (InputStream in = Migrations.class.getResourceAsStream(step + ".sql")) {
            if (in == null) {
                throw new IllegalStateException("no step [" + step + "]");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8).replaceAll("(?m)^--.*$", "");
            return Arrays.stream(text.split(";")).map(String::strip).filter(s -> !s.isEmpty()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int one(Connection connection, String sql) throws SQLException {
        try (Statement s = connection.createStatement(); ResultSet found = s.executeQuery(sql)) {
            found.next();
            return found.getInt(1);
        }
    }
}
