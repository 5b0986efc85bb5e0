package croftboard.book.file;

import croftboard.book.Book;
import croftboard.book.Fault;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What came of reading a book: all of it, or all of its faults. Never half a book. */
public sealed interface BookReading {
    /**
     * The book has no fault.
     *
     * @param warnings by file and line
     */
    record Read(Book book, List<Warning> warnings, Counts counts) implements BookReading { }

    /** @param faults at least one, by file, line and column */
    record Faulty(List<Fault> faults) implements BookReading { }

    /** The one answer of the two functions that fits. */
    default <T> T fold(Function<Read, T> whenRead, Function<Faulty, T> whenFaulty) {
        return this instanceof Read read ? whenRead.apply(read) : whenFaulty.apply((Faulty) this);
    }

    /** None when the book was read. */
    default List<Fault> faultsFound() {
        return fold(read -> List.of(), Faulty::faults);
    }

    /** @throws IllegalStateException with every fault in its message, when there is one */
    default Book orElseThrow() {
        return fold(Read::book, faulty -> {
            throw new IllegalStateException("the book has " + faulty.faults().size() + " faults:\n"
                    + faulty.faults().stream().map(Fault::toString).collect(Collectors.joining("\n")));
        });
    }
}
