package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.GrowerScreen;
import croftboard.ledger.share.GrowerSeason;
import croftboard.ledger.store.LedgerStore;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One vendor's season: ordered, delivered, short, sent back and paid, by crop and week. */
@Command(name = "grower-season", sortOptions = false, description = "A vendor's season by crop and week, for the winter talk.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, there is no ledger, or the book has faults"})
final class GrowerSeasonCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "VENDOR", description = "its id in the book, such as hollow-brook")
    private String vendor;

    @Mixin
    private Span span;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private LedgerAt ledgerAt;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    GrowerSeasonCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        LocalDate today = LocalDate.ofInstant(setting.clock().instant(), book.kitchen().zone());
        LocalDate from = span.from(today);
        PrintWriter out = spec.commandLine().getOut();
        try (LedgerStore ledger = ledgerAt.toRead(at.folder(), setting)) {
            GrowerSeason season = GrowerSeason.of(ledger, vendor, from, span.to(today));
            if (season.rows().isEmpty() && !book.vendors().containsKey(vendor)) {
                throw new WrongUse("no vendor '" + vendor + "' in the book or the ledger -> " + String.join(", ", book.vendors().keySet()));
            }
            out.print(ScreenPrint.as(format, new GrowerScreen(book, season), setting.page()));
        }
        out.flush();
        return Exit.DONE;
    }
}
