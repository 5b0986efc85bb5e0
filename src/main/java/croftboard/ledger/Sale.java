package croftboard.ledger;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One line of the register's report: units of one dish, sold on one day or in one hour.
 *
 * @param hour 0 to 23, local; empty: the whole day
 * @param code of the register: item or price-look-up code; empty text: none
 * @param words of the register
 * @param dish recipe id; empty: not matched yet, or not ours
 * @param ours false: someone said that this code is no dish of this kitchen
 * @param units portions; negative: given back
 * @param cents taken, before tax
 */
public record Sale(Stamp stamp, LocalDate date, OptionalInt hour, String code, String words, Optional<String> dish, boolean ours,
        Quantity units, long cents) implements Entry {
    /** On the list of what is to be matched. */
    public boolean unmatched() {
        return ours && dish.isEmpty();
    }

    @Override
    public Sale stamped(Stamp other) {
        return new Sale(other, date, hour, code, words, dish, ours, units, cents);
    }
}
