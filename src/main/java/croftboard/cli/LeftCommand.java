package croftboard.cli;

import croftboard.book.Book;
import croftboard.ledger.Entry;
import croftboard.ledger.Left;
import croftboard.ledger.Matching;
import croftboard.ledger.Waste;
import croftboard.ledger.file.Intake;
import croftboard.ledger.file.LeftFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes a filled-in production sheet into the ledger. */
@Command(name = "left", sortOptions = false, description = "Book what a production sheet says when it comes back from the counter: put"
        + " out, sold, left, ran out at, thrown away. The sheet comes from: croftboard paper WEEK --sheet production --format csv",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, or the file has faults; nothing was booked"})
final class LeftCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "the production sheet, as CSV or XLSX, filled in")
    private Path path;

    @Mixin
    private FileBooking booking;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    LeftCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        byte[] content = TakingIn.content(path);
        Book book = at.read(tools.books());
        Matching dishes = new Matching();
        book.recipes().values().forEach(r -> {
            dishes.name(r.id(), r.id());
            dishes.name(r.id(), r.name());
        });
        Intake.Read read = FileBooking.good(path, LeftFile.read(TakingIn.table(path, content), booking.taking().columns(), dishes));
        var file = new FileBooking.File(book, at.folder(), setting, "left", path, content, TakingIn.memory(at.folder()), LeftFile.SOURCE);
        Set<String> lines = read.entries().stream().filter(Left.class::isInstance).map(e -> ((Left) e).line()).collect(Collectors.toSet());
        var revising = new FileBooking.Revising<Entry>(List.of(Left.class, Waste.class), e -> lines.contains(line(e)), LeftCommand::key,
                (was, is) -> is, true);
        return booking.book(file, read, revising, dishes::nearest, spec.commandLine().getOut());
    }

    /** Waste from a sheet begins with the line; other waste is of no line. */
    private static String line(Entry e) {
        if (e instanceof Left l) {
            return l.line();
        }
        return e instanceof Waste w && e.stamp().booking().by().equals("left") ? w.words().split(" ", 2)[0] : "";
    }

    private static Object key(Entry e) {
        return e instanceof Left l ? List.of("left", l.date(), l.line(), l.slot(), l.dish()) : List.of("waste", e.date(), ((Waste) e).words());
    }
}
