package croftboard.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The ledger as a reader sees it. */
public interface Ledger {
    /**
     * Entries of one kind from {@code from} to {@code to}, both included, with corrections applied: what was corrected or
     * withdrawn is not among them. In order of date, then id.
     */
    <E extends Entry> List<E> entries(Class<E> kind, LocalDate from, LocalDate to);

    /** An entry as it was booked, corrected since or not. */
    Optional<Entry> entry(long id);

    /** All that was ever booked for one thing, oldest first: the entry {@code id}, what it corrects and what corrects it. */
    List<Entry> history(long id);

    /** Every entry as it was booked, in order of id. */
    List<Entry> everything();

    /** In the order of their numbers. */
    List<Booking> bookings();
}
