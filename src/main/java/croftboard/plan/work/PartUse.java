package croftboard.plan.work;

import croftboard.book.OnHand;
import java.util.Optional;

/**
 * So much of a component goes into a making.
 *
 * @param batch it is taken from; empty: counted food, or nothing covers it
 * @param counted row of the count it is taken from
 * @param mg of the component
 */
public record PartUse(String component, Making user, Optional<Making> batch, Optional<OnHand> counted, long mg) {
    /** Neither a batch nor counted food: the plan is not complete. */
    public boolean uncovered() {
        return batch.isEmpty() && counted.isEmpty();
    }
}
