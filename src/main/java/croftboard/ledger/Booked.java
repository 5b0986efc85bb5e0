package croftboard.ledger;

import java.util.List;

/** What became of a {@link Draft}. */
public sealed interface Booked {
    /** It is in the ledger, whole. */
    record Done(Booking booking, List<Entry> entries) implements Booked { }

    /** The same thing was booked before: nothing has changed. */
    record Already(Booking booking) implements Booked { }

    /** It corrects what is not there, or has been corrected since: nothing has changed. @param why a sentence */
    record Refused(String why) implements Booked { }
}
