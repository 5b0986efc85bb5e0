package croftboard.cli;

import croftboard.book.Book;
import croftboard.ledger.Matching;
import croftboard.ledger.Sale;
import croftboard.ledger.file.Intake;
import croftboard.ledger.file.Memory;
import croftboard.ledger.file.SalesFile;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes the register's export into the ledger. */
@Command(name = "sold", sortOptions = false, description = "Book what the register sold: its export as CSV or XLSX, with date, item"
        + " or code, units and money, and the hour when it is there.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, or the file has faults; nothing was booked"})
final class SoldCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "the register's export")
    private Path path;

    @Mixin
    private FileBooking booking;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    SoldCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        byte[] content = TakingIn.content(path);
        Book book = at.read(tools.books());
        Memory memory = TakingIn.memory(at.folder());
        Matching dishes = dishes(book, memory);
        Intake.Read read = FileBooking.good(path, SalesFile.read(TakingIn.table(path, content), booking.taking().columns(),
                memory.columns(SalesFile.SOURCE), dishes));
        var file = new FileBooking.File(book, at.folder(), setting, "sold", path, content, memory, SalesFile.SOURCE);
        var revising = new FileBooking.Revising<Sale>(List.of(Sale.class), s -> true, s -> List.of(s.date(), s.hour().orElse(-1), s.code(),
                s.code().isEmpty() ? s.words() : ""), (was, is) -> is, true);
        return booking.book(file, read, revising, dishes::nearest, spec.commandLine().getOut());
    }

    /** What the register's codes and words mean. */
    static Matching dishes(Book book, Memory memory) {
        Matching dishes = new Matching();
        book.recipes().values().stream().filter(r -> r.sale().isPresent()).forEach(r -> {
            dishes.name(r.id(), r.id());
            dishes.name(r.id(), r.name());
        });
        memory.names(SalesFile.SOURCE).forEach(dishes::learned);
        return dishes;
    }
}
