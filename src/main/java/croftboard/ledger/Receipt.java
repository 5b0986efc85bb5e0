package croftboard.ledger;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One line of what a vendor delivered or charged.
 *
 * @param date of the delivery
 * @param vendor id in the book
 * @param order {@code 2027-W33/hollow-brook/0816} as on the paper order; empty: not ordered through a plan
 * @param words the line in the vendor's own words
 * @param item ingredient id; empty: not matched yet (its money counts, unclassified), or not food
 * @param pack as in the book's offer
 * @param ordered packs; empty: not known. @param came packs taken in. @param rejected packs sent back at the door, not in {@code came}
 * @param mg as purchased, all of what came; 0: not known
 * @param price of a pack, cents. @param cents charged for the line, credits not taken off
 * @param insteadOf ingredient id that was ordered: this is a substitute, its allergens are unknown until a {@link LabelRead}
 * @param tenthsF temperature at the door in tenths of a degree Fahrenheit
 * @param origin what was known of where it comes from when it was booked
 * @param note for people
 */
public record Receipt(Stamp stamp, LocalDate date, String vendor, Optional<String> order, Kind kind, String words,
        Optional<String> item, Optional<String> pack, Optional<Quantity> ordered, Quantity came, Quantity rejected, long mg,
        long price, long cents, Optional<String> insteadOf, OptionalInt tenthsF, Origin origin, String note) implements Entry {
    /** FEE: delivery and the like. DEPOSIT: crates and bottles, paid and given back. */
    public enum Kind { FOOD, NOT_FOOD, FEE, DEPOSIT }

    /** Packs ordered that neither came nor were sent back; zero when nothing is known of an order. */
    public Quantity shorted() {
        Quantity missing = ordered.orElse(Quantity.ZERO).minus(came).minus(rejected);
        return missing.signum() > 0 ? missing : Quantity.ZERO;
    }

    /** On the list of what is to be matched. */
    public boolean unmatched() {
        return kind == Kind.FOOD && item.isEmpty();
    }

    @Override
    public Receipt stamped(Stamp other) {
        return new Receipt(other, date, vendor, order, kind, words, item, pack, ordered, came, rejected, mg, price, cents,
                insteadOf, tenthsF, origin, note);
    }
}
