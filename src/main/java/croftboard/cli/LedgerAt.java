package croftboard.cli;

import croftboard.ledger.store.LedgerStore;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options of every command that reads or writes the ledger. */
final class LedgerAt {
    static final String VARIABLE = "CROFTBOARD_LEDGER";
    static final String FILE = "ledger.db";

    @Option(names = "--ledger", paramLabel = "FILE|URL", description = "the ledger: a file, or jdbc:postgresql://HOST/DATABASE"
            + " (default: what CROFTBOARD_LEDGER says, else ledger.db in the book)")
    private String where;

    String where(Path book, Setting setting) {
        String variable = setting.environment().getOrDefault(VARIABLE, "");
        String said = where != null ? where : variable;
        if (said.isBlank()) {
            return book.resolve(FILE).toString();
        }
        return said.startsWith("postgresql:") ? "jdbc:" + said : said;
    }

    LedgerStore toWrite(Path book, Setting setting) {
        return LedgerStore.toWrite(where(book, setting));
    }

    Optional<LedgerStore> ifThere(Path book, Setting setting) {
        return LedgerStore.toRead(where(book, setting));
    }

    /** @throws WrongUse when nothing has been booked yet */
    LedgerStore toRead(Path book, Setting setting) {
        return ifThere(book, setting).orElseThrow(() -> new WrongUse("there is no ledger yet -> croftboard receive, croftboard sold"));
    }
}
