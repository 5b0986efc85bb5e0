package croftboard.ledger;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The manager's own number in place of a forecast, with the reason; kept and later judged.
 *
 * @param date service day
 * @param line id; empty text: every line
 * @param dish recipe id; empty: whatever stands there
 * @param forecast portions that the forecast said, when told
 * @param portions that the manager set
 * @param reason in the manager's words
 */
public record Overriding(Stamp stamp, LocalDate date, String line, Optional<String> dish, Optional<Quantity> forecast, Quantity portions,
        String reason) implements Entry {
    @Override
    public Overriding stamped(Stamp other) {
        return new Overriding(other, date, line, dish, forecast, portions, reason);
    }
}
