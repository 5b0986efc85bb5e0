package croftboard.ledger.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/**
 * How a ledger is reached: {@code jdbc:postgresql:...} is a server, everything else the path of a SQLite file.
 *
 * @param mostPages of 4 KiB that a SQLite file may have; 0: as many as the disk holds
 */
record Door(String where, int mostPages) {
    private static final String SERVER = "jdbc:postgresql:";
    private static final int BUSY_MILLIS = 30_000;

    boolean server() {
        return where.startsWith(SERVER);
    }

    /** For people: no password. */
    String shown() {
        return server() ? where.replaceFirst("[?].*", "").replaceFirst("//[^/@]*@", "//") : where;
    }

    boolean isThere() {
        return server() || Files.isRegularFile(Path.of(where));
    }

    Connection open(boolean toWrite) throws SQLException {
        return server() ? DriverManager.getConnection(where, new Properties()) : file(toWrite);
    }

    private Connection file(boolean toWrite) throws SQLException {
        Path file = Path.of(where).toAbsolutePath();
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLIS);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        if (toWrite) {
            config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        } else {
            config.resetOpenMode(SQLiteOpenMode.CREATE);
            // what a killed writer left is put in order by the next who opens the file, so even a reader wants to write
            boolean writable = Files.isWritable(file) && Files.isWritable(file.getParent());
            config.setReadOnly(!writable);
        }
        Connection connection = connected(config, file);
        if (mostPages > 0) {
            try (Statement s = connection.createStatement()) {
                s.execute("PRAGMA max_page_count = " + mostPages);
            }
        }
        return connection;
    }

    private static Connection connected(SQLiteConfig config, Path file) throws SQLException {
        try {
            return config.createConnection("jdbc:sqlite:" + file);
        } catch (LinkageError e) {
            throw new UncheckedIOException(new IOException("the program's part for ledger files cannot be loaded: is the folder "
                    + System.getProperty("java.io.tmpdir") + " full, or forbidden to run programs?", e));
        }
    }
}
