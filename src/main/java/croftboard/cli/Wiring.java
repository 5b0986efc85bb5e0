package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.plan.Planner;
import croftboard.plan.Rotation;
import croftboard.plan.RotationRequest;
import croftboard.plan.Rotator;
import croftboard.plan.check.RotationChecker;
import croftboard.plan.check.Verdict;
import java.time.LocalDateTime;
import java.util.Optional;

/** Puts the program together: the only place where commands meet what does their work. */
final class Wiring {
    private Wiring() { }

    static Rotation rotate(Book book, LocalDateTime now, RotationRequest request) {
        return new Rotator(book, Optional.of(now), request).rotate();
    }

    /** What the independent check of a rotation says, one sentence. */
    static String checked(Book book, Rotation rotation) {
        if (!rotation.fingerprint().equals(book.fingerprint())) {
            return "the book has changed since, so this rotation cannot be checked against it.";
        }
        Verdict verdict = RotationChecker.check(book, rotation);
        return verdict.ok() ? "every figure and every must of every week holds, and what is handed on from week to week, worked "
                + "out again from the book: " + verdict.verified() + "."
                : verdict.findings().size() + " things do not hold: " + String.join("; ", verdict.findings()) + ".";
    }

    static Tools tools() {
        return new Tools(BookReader::read, (book, now, request) -> new Planner(book, Optional.of(now)).plan(request),
                new Checking());
    }
}
