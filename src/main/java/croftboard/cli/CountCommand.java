package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.CountSheet;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.Rows;
import croftboard.ledger.Entry;
import croftboard.ledger.Matching;
import croftboard.ledger.StockCount;
import croftboard.ledger.file.CountFile;
import croftboard.ledger.file.Intake;
import croftboard.ledger.file.Memory;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The stock count: a sheet to count on, and the sheet taken back into the ledger. */
@Command(name = "count", sortOptions = false, description = "Count the stock: --sheet FILE writes a table with a row for each pack that the"
        + " book buys; write the count in and give the file back to book it.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, or the file has faults; nothing was booked"})
final class CountCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "the sheet, filled in")
    private Path path;

    @Option(names = "--sheet", paramLabel = "FILE", description = "write an empty sheet into this CSV file")
    private Path sheet;

    @Option(names = "--date", paramLabel = "DATE", description = "day of the count (default: the sheet's, else today)")
    private LocalDate day;

    @Mixin
    private FileBooking booking;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    CountCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if ((path == null) == (sheet == null)) {
            throw new WrongUse("what was counted? -> croftboard count --sheet count.csv, write the counts in, croftboard count count.csv");
        }
        Book book = at.read(tools.books());
        LocalDate date = day != null ? day : booking.taking().now(book, setting).toLocalDate();
        return sheet != null ? sheet(book, date) : count(book, date);
    }

    private int sheet(Book book, LocalDate date) {
        OutFile.check(sheet);
        if (java.nio.file.Files.exists(sheet)) {
            throw new WrongUse(sheet + " is there already, perhaps with counts in it -> another name");
        }
        Rows rows = CountSheet.rows(book, date);
        OutFile.write(sheet, CsvText.of(rows));
        Page page = setting.page();
        page.say("Wrote " + sheet + ": " + rows.rows().size() + " rows for " + date + ". Write the packs into counted_packs (2.5 is fine), or a"
                + " weight such as 3 lb into or_weight; 0 for none, leave empty what nobody counted. Then: croftboard count " + sheet);
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }

    private int count(Book book, LocalDate date) {
        byte[] content = TakingIn.content(path);
        Memory memory = TakingIn.memory(at.folder());
        Matching goods = new Matching();
        book.ingredients().values().forEach(i -> {
            goods.name(i.id(), i.id());
            goods.name(i.id(), i.name());
        });
        book.recipes().values().forEach(r -> goods.name(r.id(), r.id()));
        memory.names(CountFile.SOURCE).forEach(goods::learned);
        Intake.Read read = FileBooking.good(path, CountFile.read(TakingIn.table(path, content), booking.taking().columns(),
                memory.columns(CountFile.SOURCE), goods, date));
        var file = new FileBooking.File(book, at.folder(), setting, "count", path, content, memory, CountFile.SOURCE);
        Set<Object> keys = read.entries().stream().map(CountCommand::key).collect(Collectors.toSet());
        var revising = new FileBooking.Revising<Entry>(List.of(StockCount.class), e -> keys.contains(key(e)), CountCommand::key, (was, is) -> is, false);
        return booking.book(file, read, revising, goods::nearest, spec.commandLine().getOut());
    }

    /** Two parts of the store are counted on two sheets: only the same pack of the same day is the same count. */
    private static Object key(Entry e) {
        return List.of(e.date(), ((StockCount) e).words());
    }
}
