package croftboard.ledger;

import java.time.LocalDate;
import java.util.SortedSet;

/**
 * Someone has read the label of what came instead: only then are its allergens known.
 *
 * @param receipt id of the substituted {@link Receipt}
 * @param contains allergens as on the label, in the words of docs/book.md
 * @param othersKnown the label lists its ingredients whole, so that what is not named is not in it
 * @param words as on the label
 */
public record LabelRead(Stamp stamp, LocalDate date, long receipt, SortedSet<String> contains, boolean othersKnown, String words) implements Entry {
    @Override
    public LabelRead stamped(Stamp other) {
        return new LabelRead(other, date, receipt, contains, othersKnown, words);
    }
}
