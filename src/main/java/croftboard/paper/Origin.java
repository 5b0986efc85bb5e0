package croftboard.paper;

import croftboard.book.Book;
import java.time.LocalDateTime;
import java.util.Set;

/**
 * Where sheets come from, as their pages tell it.
 *
 * @param name of the plan: {@code 2027-W33@2}
 * @param state behind the name: whether people work from it; empty or with a space in front
 * @param fingerprint of the book that the plan was made from
 * @param missing things that cannot be had or done
 * @param printed local time of the kitchen; the only thing that comes from a clock
 * @param notSent orders whose cut-off is past and that were not sent
 * @param doubtful orders that may come otherwise than planned
 */
public record Origin(Book book, String name, String state, String fingerprint, int missing, LocalDateTime printed,
        Set<OrderKey> notSent, PaperContext.Doubtful doubtful) {
    public Called called() {
        return new Called(book);
    }
}
