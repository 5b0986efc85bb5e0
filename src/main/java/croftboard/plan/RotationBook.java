package croftboard.plan;

import croftboard.book.Book;
import java.util.List;

/** The book as a week of a rotation sees it: what was counted on hand is there for the first week, and comes to later ones as what is left. */
public final class RotationBook {
    private RotationBook() { }

    /** @param week of the rotation, from 0 */
    public static Book of(Book book, int week) {
        return week == 0 ? book : new Book(book.kitchen(), book.ingredients(), book.recipes(), book.vendors(), book.seasons(),
                book.lists(), List.of(), book.fingerprint());
    }
}
