package croftboard.cli;

import croftboard.book.file.BookReader;
import croftboard.plan.Planner;
import java.util.Optional;

/** Puts the program together: the only place where commands meet what does their work. */
final class Wiring {
    private Wiring() { }

    static Tools tools() {
        return new Tools(BookReader::read, (book, now, request) -> new Planner(book, Optional.of(now)).plan(request),
                new Checking());
    }
}
