package croftboard.ledger.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.sql.Connection;
import java.sql.Statement;

/** A PostgreSQL server of its own for a test class; a database of its own for each ledger. */
public final class RealPostgres implements AutoCloseable {
    private final EmbeddedPostgres server;
    private int count;

    private RealPostgres(EmbeddedPostgres server) {
        this.server = server;
    }

    public static RealPostgres start() throws Exception {
        return new RealPostgres(EmbeddedPostgres.builder().start());
    }

    /** Where a ledger that nobody has used can be made. */
    public String fresh() throws Exception {
        String name = "ledger" + count++;
        try (Connection c = server.getPostgresDatabase().getConnection(); Statement s = c.createStatement()) {
            s.execute("CREATE DATABASE " + name);
        }
        return server.getJdbcUrl("postgres", name);
    }

    @Override
    public void close() throws java.io.IOException {
        server.close();
    }
}
