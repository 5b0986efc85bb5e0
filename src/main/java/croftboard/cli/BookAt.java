package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Fault;
import croftboard.book.file.BookReading;
import croftboard.plan.file.PlanStore;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Options that every command has, and the book that they name. */
final class BookAt {
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "print this help")
    private boolean help;

    @Option(names = "--book", paramLabel = "DIR", defaultValue = ".",
            description = "folder of the book (default: the current folder)")
    private Path folder;

    @Option(names = "--trace", description = "print where in the program a fault of our own arose")
    private boolean trace;

    boolean trace() {
        return trace;
    }

    /** @throws WrongUse when there is no such folder */
    Path folder() {
        if (!Files.isDirectory(folder)) {
            throw new WrongUse("--book " + folder + ": there is no such folder -> name the folder that holds kitchen/,"
                    + " recipes/, farms/ and seasons/");
        }
        return folder;
    }

    PlanStore plans() {
        return new PlanStore(folder());
    }

    /** @throws WrongUse with every fault of the book */
    Book read(BookSource books) {
        return reading(books).fold(BookReading.Read::book, faulty -> {
            throw new WrongUse(faulty.faults().stream().map(Fault::toString).toList());
        });
    }

    BookReading reading(BookSource books) {
        return books.read(folder());
    }
}
