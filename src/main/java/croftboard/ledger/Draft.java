package croftboard.ledger;

import java.time.LocalDateTime;
import java.util.List;

/**
 * What is to be booked at once: all of it or nothing.
 *
 * @param at local time of the kitchen; fractions of a second fall away
 * @param fingerprint the same one is booked once
 * @param entries stamped by {@link #line}: they get their numbers when they are booked
 */
public record Draft(LocalDateTime at, String who, String by, String name, String fingerprint, List<Entry> entries) {
    private static final Booking NOT_YET = new Booking(0, LocalDateTime.of(1900, 1, 1, 0, 0), "", "", "", "");

    public Draft {
        at = at.withNano(0);
        entries = List.copyOf(entries);
    }

    /** The stamp of an entry that is not booked yet. */
    public static Stamp line(int line) {
        return new Stamp(0, NOT_YET, line, java.util.Optional.empty());
    }

    /** The stamp of an entry that shall take the place of another. */
    public static Stamp correction(int line, long entry, String why) {
        return new Stamp(0, NOT_YET, line, java.util.Optional.of(new Stamp.Correction(entry, why)));
    }

    /** The same entries with their numbers. @param first id of the first one */
    public List<Entry> numbered(Booking booking, long first) {
        List<Entry> all = new java.util.ArrayList<>();
        for (Entry e : entries) {
            all.add(e.stamped(new Stamp(first + all.size(), booking, e.stamp().line(), e.stamp().corrects())));
        }
        return List.copyOf(all);
    }
}
