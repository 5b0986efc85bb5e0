package croftboard.ledger;

import croftboard.measure.Ratio;
import java.time.LocalDate;

/**
 * What a batch gave, from its batch sheet.
 *
 * @param date on which it was made
 * @param recipe id
 * @param batches of the standard batch, exact
 * @param expectedMg by the plan; 0: not told. @param gotMg weighed
 */
public record BatchYield(Stamp stamp, LocalDate date, String recipe, Ratio batches, long expectedMg, long gotMg) implements Entry {
    @Override
    public BatchYield stamped(Stamp other) {
        return new BatchYield(other, date, recipe, batches, expectedMg, gotMg);
    }
}
