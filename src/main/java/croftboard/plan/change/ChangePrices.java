package croftboard.plan.change;

import java.util.Optional;

/**
 * What a change costs beside its money, as shares of the kitchen's price of a changed dish; common practice, no source. A
 * changed order line costs a quarter (a call and a corrected sheet), a substitute a quarter (the prep sheet and the card are
 * looked at again), other portions a half; a statement that changes costs a whole dish more.
 */
final class ChangePrices {
    private static final int QUARTERS = 4;

    private ChangePrices() { }

    static long orderLine(long dish) {
        return dish / QUARTERS;
    }

    /** Of the plan's own dish in another way. @param variant empty: as it was at first, after fewer portions */
    static long ofOwn(long dish, Optional<Variants.Variant> variant) {
        boolean swapped = variant.map(v -> !v.swaps().isEmpty()).orElse(false);
        boolean statement = variant.map(Variants.Variant::newStatement).orElse(false);
        return (swapped ? dish / QUARTERS : dish * 2 / QUARTERS) + (statement ? dish : 0);
    }
}
