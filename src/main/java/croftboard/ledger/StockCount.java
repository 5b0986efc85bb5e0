package croftboard.ledger;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One line of a stock count.
 *
 * @param item ingredient or component id; empty: not matched yet
 * @param words as written. @param amount as counted, for example {@code 2.5 25-lb sack}
 * @param mg as purchased; 0: not known
 * @param cents what it is worth at purchase price
 */
public record StockCount(Stamp stamp, LocalDate date, Optional<String> item, String words, String amount, long mg, long cents) implements Entry {
    @Override
    public StockCount stamped(Stamp other) {
        return new StockCount(other, date, item, words, amount, mg, cents);
    }
}
