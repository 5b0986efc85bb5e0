package croftboard.ledger;

import java.time.LocalDate;

/**
 * Food that came from or went to another department without money, or was eaten by staff.
 *
 * @param where the other department; {@code staff} for meals
 * @param what dish or ingredient id, or words
 * @param cents at cost, above 0
 */
public record Transfer(Stamp stamp, LocalDate date, Way way, String where, String what, Quantity portions, long mg, long cents) implements Entry {
    public enum Way { IN, OUT, STAFF_MEAL }

    @Override
    public Transfer stamped(Stamp other) {
        return new Transfer(other, date, way, where, what, portions, mg, cents);
    }
}
