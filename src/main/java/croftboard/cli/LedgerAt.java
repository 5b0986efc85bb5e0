package croftboard.cli;

import croftboard.ledger.store.LedgerStore;
import picocli.CommandLine.Option;

/** Option of every command that works with the ledger. */
final class LedgerAt {
    @Option(names = "--ledger", paramLabel = "FILE|URL",
            description = "the ledger: a file, or jdbc:postgresql://... (default: ledger.db in the book)")
    private String where;

    /** The caller closes it. @throws WrongUse when there is none yet */
    LedgerStore toRead(BookAt at) {
        String ledger = where != null ? where : at.folder().resolve("ledger.db").toString();
        return LedgerStore.toRead(ledger).orElseThrow(() -> new WrongUse("there is no ledger " + ledger
                + " yet -> book what came with croftboard receive, or name another one with --ledger"));
    }
}
