package croftboard.ledger.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What the disk or the server says, in words for whoever has to mend it. */
final class Trouble {
    private static final int PRIMARY_CODE = 0xff;

    private Trouble() { }

    /** @param shown the ledger's name, without passwords */
    static UncheckedIOException of(String shown, SQLException e) {
        String why = e instanceof SQLiteException lite ? file(lite) : server(e);
        String words = "the ledger " + shown + " " + why + "; nothing was booked";
        return new UncheckedIOException(words, new IOException(words, e));
    }

    static boolean damaged(UncheckedIOException e) {
        return e.getCause() != null && e.getCause().getCause() instanceof SQLiteException lite
                && SQLiteErrorCode.getErrorCode(lite.getResultCode().code & PRIMARY_CODE) == SQLiteErrorCode.SQLITE_CORRUPT;
    }

    private static String file(SQLiteException e) {
        SQLiteErrorCode primary = SQLiteErrorCode.getErrorCode(e.getResultCode().code & PRIMARY_CODE);
        return switch (primary) {
            case SQLITE_FULL -> "cannot be written: the disk is full -> make room and run the command again";
            case SQLITE_READONLY, SQLITE_PERM -> "cannot be written: it is read-only -> check the permissions of the file"
                    + " and its folder";
            case SQLITE_CANTOPEN -> "cannot be opened -> check that its folder is there and may be written";
            case SQLITE_BUSY, SQLITE_LOCKED -> "is held by another program -> end that one, then run the command again";
            case SQLITE_NOTADB, SQLITE_FORMAT -> "is no ledger: the file holds something else -> name the right file with --ledger";
            case SQLITE_CORRUPT -> "is damaged -> restore the last backup: croftboard ledger restore FILE";
            case SQLITE_IOERR -> "cannot be read or written: the disk fails, or is full";
            default -> "cannot be used: " + plain(e);
        };
    }

    private static String server(SQLException e) {
        String state = e.getSQLState() == null ? "" : e.getSQLState();
        if (state.startsWith("08")) {
            return "cannot be reached -> is the server running, and the address right?";
        }
        if (state.startsWith("28")) {
            return "lets nobody in with this name and password";
        }
        return switch (state) {
            case "53100" -> "cannot be written: the server's disk is full";
            case "25006", "42501" -> "cannot be written: the server lets us only read";
            case "3D000" -> "is not there: the server has no such database";
            default -> "cannot be used: " + plain(e);
        };
    }

    private static String plain(SQLException e) {
        return e.getMessage() == null ? "no reason given" : e.getMessage().lines().findFirst().orElse("");
    }
}
