package croftboard.ledger;

import java.util.List;

/**
 * All that a ledger holds at one moment.
 *
 * @param bookings by number
 * @param entries as they were booked, by id; a correction comes after what it corrects
 */
public record Contents(List<Booking> bookings, List<Entry> entries) {
    public Contents {
        bookings = List.copyOf(bookings);
        entries = List.copyOf(entries);
    }

    public boolean isEmpty() {
        return bookings.isEmpty() && entries.isEmpty();
    }
}
