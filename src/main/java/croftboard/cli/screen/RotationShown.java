package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.plan.Rotation;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A rotation with what its screens need beside it.
 *
 * @param version empty while it has none
 * @param now local time of the kitchen
 * @param verdict what the independent check says, one sentence
 */
public record RotationShown(Book book, Rotation rotation, Optional<Integer> version, LocalDateTime now, String verdict) {
    Names names() {
        return new Names(book);
    }

    /** One of its weeks, as a plan of its own is shown. */
    Shown week(Rotation.Week week) {
        return new Shown(book, week.plan(), Optional.empty(), false, now, verdict);
    }
}
