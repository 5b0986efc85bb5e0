package croftboard.plan;

import java.time.Duration;
import java.util.OptionalLong;

/**
 * How the time, or the steps, of one plan are shared out: several short menu searches from other seeds gain more than one
 * long one, so a longer time buys more of them; the orders get the rest.
 *
 * @param runs menu searches
 * @param tries menus looked at in each; 0: limited by {@code menuMillis}
 * @param menuMillis clock of each menu search; 0: limited by {@code tries}
 * @param memory length of late acceptance
 * @param rounds of the search for orders, each run
 * @param exactMillis clock for the exact orders; 0: limited by {@code nodes}
 * @param nodes of the exact orders; 0: limited by {@code exactMillis}; both 0: no exact orders
 */
record Budget(int runs, long tries, long menuMillis, int memory, int rounds, long exactMillis, long nodes) {
    /** Menus that two searches side by side look at in a millisecond on a small machine; only the memory hangs on it. */
    private static final int TRIES_PER_MILLI = 60;
    private static final int ROUNDS = 20_000;
    private static final int QUICK_ROUNDS = 6_000;
    private static final int STEP_RUNS = 2;
    /** With fewer steps than this the orders are left as the search finds them. */
    private static final long GLANCE = 1_000;
    private static final int STEP_NODES = 40;

    static Budget of(Duration time, OptionalLong steps) {
        if (steps.isPresent()) {
            long tries = Math.max(1, steps.getAsLong());
            boolean glance = tries < GLANCE;
            return new Budget(STEP_RUNS, tries, 0, memory(tries), glance ? QUICK_ROUNDS / 30 : ROUNDS, 0,
                    glance ? 0 : STEP_NODES);
        }
        long millis = time.toMillis();
        int waves = millis <= 6_000 ? 1 : millis <= 30_000 ? 2 : 3;
        long menu = millis * 55 / 100 / waves;
        return new Budget(2 * waves, 0, menu, memory(menu * TRIES_PER_MILLI), millis <= 6_000 ? QUICK_ROUNDS : ROUNDS,
                Math.max(500, millis * 30 / 100), 0);
    }

    /** Clock of a bound that runs beside everything: the searches, so many side by side, and the last orders. */
    long boundMillis(int sideBySide) {
        return menuMillis * ((runs + sideBySide - 1) / sideBySide) + exactMillis;
    }

    private static int memory(long tries) {
        return (int) Math.max(4, Math.min(500, tries / 4_000));
    }
}
