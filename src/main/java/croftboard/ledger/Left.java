package croftboard.ledger;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * One row of a production sheet read back: a dish on one line, one service day.
 *
 * @param week {@code 2027-W33@2}, the plan that the sheet was printed from; empty text: not told
 * @param slot id of the plan; empty text: not told
 * @param planned portions made new for the service that begins that day
 * @param prepared portions put out; empty: not written in
 * @param sold as counted at the counter; empty: not written in (the register's {@link Sale}s are another thing)
 * @param left at closing; empty: not written in
 * @param ranOut when it ran out; empty: it did not, or nobody wrote it
 * @param note for people
 */
public record Left(Stamp stamp, LocalDate date, String week, String slot, String line, String dish, int planned,
        Optional<Quantity> prepared, Optional<Quantity> sold, Optional<Quantity> left, Optional<LocalTime> ranOut, String note) implements Entry {
    @Override
    public Left stamped(Stamp other) {
        return new Left(other, date, week, slot, line, dish, planned, prepared, sold, left, ranOut, note);
    }
}
