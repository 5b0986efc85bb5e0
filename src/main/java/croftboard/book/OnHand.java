package croftboard.book;

import croftboard.measure.Amount;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Counted stock. No date at all: not usable in ready-to-eat food.
 *
 * @param item an ingredient (amount as purchased) or a component
 * @param thawed with {@code frozen}: freezing stops the clock, it does not set it back
 */
public record OnHand(String item, Amount amount, Optional<LocalDate> received, Optional<LocalDate> made,
        Optional<LocalDate> opened, Optional<LocalDate> frozen, Optional<LocalDate> thawed, String note) { }
