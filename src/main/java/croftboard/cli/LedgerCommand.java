package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.ledger.Contents;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keeps the ledger safe: copies of it, and the way back. */
@Command(name = "ledger", sortOptions = false, description = "Keep the ledger safe: back it up into a file, restore it, export all of it"
        + " as CSV, import such an export (docs/keeping.md).",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, "2:wrong use; nothing was changed"})
final class LedgerCommand implements Callable<Integer> {
    /** What to do with it. */
    enum Act { BACKUP, RESTORE, EXPORT, IMPORT }

    @Parameters(index = "0", paramLabel = "backup|restore|export|import", description = "backup: a copy in one file. restore: such a file"
            + " becomes the ledger. export: a folder of CSV files. import: such a folder becomes the ledger")
    private Act act;

    @Parameters(index = "1", paramLabel = "FILE|DIR", description = "the file of the backup, or the folder of the export")
    private Path path;

    @Option(names = "--overwrite", description = "backup: replace FILE when it is there. restore and import: the ledger may hold bookings;"
            + " they are saved in a file beside the book first, then replaced")
    private boolean overwrite;

    @Mixin
    private LedgerAt ledgerAt;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;

    LedgerCommand(Setting setting) {
        this.setting = setting;
    }

    @Override
    public Integer call() {
        String where = ledgerAt.where(at.folder(), setting);
        Keeping keeping = new Keeping(where, at.folder(), setting.clock());
        Page page = setting.page();
        switch (act) {
            case BACKUP -> page.say("Backed up into " + path + ": " + count(keeping.backup(path, overwrite)) + ". Read back and compared: the same.");
            case EXPORT -> page.say("Exported into " + path + ": " + count(keeping.export(path)) + ".");
            case RESTORE -> filled(page, keeping.filled(path + "", keeping.fromBackup(path), overwrite));
            default -> filled(page, keeping.filled(path + "", keeping.fromExport(path), overwrite));
        }
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }

    private void filled(Page page, Keeping.Filled filled) {
        page.say("The ledger holds what " + path + " held: " + count(filled.now()) + ".");
        filled.saved().ifPresent(file -> page.say("What it held before is kept in " + file + "."));
    }

    private static String count(Contents contents) {
        int bookings = contents.bookings().size();
        int entries = contents.entries().size();
        return bookings + (bookings == 1 ? " booking, " : " bookings, ") + entries + (entries == 1 ? " line" : " lines");
    }
}
