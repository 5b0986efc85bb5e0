package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.ledger.file.PublishedDefinitions;
import croftboard.ledger.share.Definitions;
import croftboard.ledger.store.LedgerStore;
import croftboard.paper.Data;
import croftboard.paper.Sheet;
import croftboard.paper.file.PaperFormat;
import croftboard.paper.file.ReportFile;
import croftboard.paper.report.BoardFacts;
import croftboard.paper.report.BoardReport;
import croftboard.paper.report.MembersReport;
import croftboard.paper.report.ReportFacts;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the report to the members or to the board. */
@Command(name = "report", sortOptions = false, description = "Write the report to the members or to the board.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, there is no ledger, or the book has faults; nothing was written"})
final class ReportCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "members|board", converter = Typed.Readers.class,
            description = "members: local share, farms, promises, waste; board: that, and sales, food cost, labour, menu mix")
    private ReportFor readers;

    @Mixin
    private Span span;

    @Option(names = "--out", paramLabel = "DIR", description = "folder for the files (default: reports in the book)")
    private Path out;

    @Option(names = "--format", paramLabel = "pdf|html|csv|text", split = ",", converter = Typed.PaperWord.class,
            description = "how it is written, with commas between (default: pdf,html,csv; csv is every table of it)")
    private List<PaperFormat> formats = List.of(PaperFormat.PDF, PaperFormat.HTML, PaperFormat.CSV);

    @Mixin
    private LedgerAt ledgerAt;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ReportCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        if (book.kitchen().local().isEmpty()) {
            throw new WrongUse("kitchen/kitchen.yaml does not say what local means -> add local: with in_force: and definitions:");
        }
        LocalDateTime now = LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone());
        LocalDate from = span.from(now.toLocalDate());
        LocalDate to = span.to(now.toLocalDate());
        Path folder = out != null ? out : at.folder().resolve("reports");
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new WrongUse("--out " + folder + " is a file -> name a folder; it is made when it is not there");
        }
        try (LedgerStore ledger = ledgerAt.toRead(at.folder(), setting)) {
            ReportFacts facts = ReportFacts.of(book, ledger, Definitions.of(book.kitchen().local(),
                    PublishedDefinitions.of(book.kitchen().place().state())), from, to);
            if (facts.share().lines().isEmpty()) {
                throw new WrongUse("no food came from " + from + " to " + to + ", so there is nothing to report -> other days with --from"
                        + " and --to");
            }
            write(folder, facts, readers == ReportFor.BOARD ? Optional.of(BoardFacts.of(ledger, from, to,
                    PostedWeeks.of(book, at.plans(), from, to), DishUses.of(book),
                    DishUses.prices(book, to))) : Optional.empty(), now);
        }
        return Exit.DONE;
    }

    private void write(Path folder, ReportFacts facts, Optional<BoardFacts> board, LocalDateTime now) {
        Sheet sheet = board.map(b -> BoardReport.of(facts, b)).orElseGet(() -> MembersReport.of(facts));
        Map<String, Data> tables = board.map(b -> BoardReport.tables(facts, b)).orElseGet(() -> MembersReport.tables(facts));
        try {
            Set<PaperFormat> wanted = EnumSet.copyOf(formats);
            tell(ReportFile.write(folder, facts.book(), sheet, tables, "from the ledger", now, wanted), sheet);
        } catch (IOException e) {
            throw new UncheckedIOException(folder + " cannot be written: " + e.getMessage(), e);
        }
    }

    private void tell(ReportFile.Written written, Sheet sheet) {
        Page page = setting.page();
        written.files().stream().filter(f -> !f.toString().endsWith(".csv")).forEach(f -> page.item("wrote ", f.toString()));
        long tables = written.files().stream().filter(f -> f.toString().endsWith(".csv")).count();
        if (tables > 0) {
            Path folder = written.files().get(written.files().size() - 1).getParent();
            page.item("wrote ", folder + java.io.File.separator + " (" + tables + " tables)");
        }
        if (written.pages() > 0) {
            page.say(sheet.title() + ": " + written.pages() + (written.pages() == 1 ? " page." : " pages."));
        }
        PrintWriter to = spec.commandLine().getOut();
        to.print(page);
        to.flush();
    }
}
