package croftboard.ledger;

import java.time.LocalDate;

/**
 * The entry that the stamp's correction names never happened. It stands only behind that correction.
 */
public record Withdrawal(Stamp stamp, LocalDate date) implements Entry {
    @Override
    public Withdrawal stamped(Stamp other) {
        return new Withdrawal(other, date);
    }
}
