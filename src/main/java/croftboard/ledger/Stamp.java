package croftboard.ledger;

import java.util.Optional;

/**
 * Where an entry comes from.
 *
 * @param id 1, 2, 3 ... in the order of booking, unique in the ledger
 * @param line of the file, 1 for the first; of what was typed, 1, 2 ...
 * @param corrects the entry whose place this one takes
 */
public record Stamp(long id, Booking booking, int line, Optional<Correction> corrects) {
    /** @param entry id of what is corrected. @param why in the words of whoever corrected it */
    public record Correction(long entry, String why) { }

    /** {@code hollow-0816.csv line 7}, for people. */
    public String where() {
        return booking.name() + " line " + line;
    }
}
