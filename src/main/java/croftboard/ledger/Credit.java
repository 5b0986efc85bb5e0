package croftboard.ledger;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Money back from a vendor.
 *
 * @param receipt id of the {@link Receipt} that it is about; empty: of the vendor as a whole
 * @param cents above 0: taken off the food's cost when RECEIVED, only waited for when ASKED
 * @param reason short, rejected, spoiled, wrong price ...
 */
public record Credit(Stamp stamp, LocalDate date, String vendor, Optional<Long> receipt, Step step, long cents, String reason) implements Entry {
    public enum Step { ASKED, RECEIVED, REFUSED }

    @Override
    public Credit stamped(Stamp other) {
        return new Credit(other, date, vendor, receipt, step, cents, reason);
    }
}
