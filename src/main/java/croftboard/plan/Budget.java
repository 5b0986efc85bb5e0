package croftboard.plan;

import java.time.Duration;
import java.util.OptionalLong;

/**
 * How the time, or the steps, of one plan are shared out: a short menu search on each core, from other seeds; then most of
 * the time for menu and orders together, from each menu found; the exact orders get the rest.
 *
 * @param runs menu searches
 * @param tries menus looked at in each; 0: limited by {@code menuMillis}
 * @param menuMillis clock of each menu search; 0: limited by {@code tries}
 * @param memory length of late acceptance
 * @param rounds of the search for orders, each run
 * @param jointTries plans looked at by each search of menu and orders together; 0: limited by {@code jointMillis}
 * @param jointMillis clock of each; 0: limited by {@code jointTries}; both 0: none
 * @param exactMillis clock for the exact orders; 0: limited by {@code nodes}
 * @param nodes of the exact orders; 0: limited by {@code exactMillis}; both 0: no exact orders
 */
record Budget(int runs, long tries, long menuMillis, int memory, int rounds, long jointTries,
        long jointMillis, long exactMillis, long nodes) {
    /** Menus that two searches side by side look at in a millisecond on a small machine; only the memory hangs on it. */
    private static final int TRIES_PER_MILLI = 60;
    private static final int ROUNDS = 6_000;
    private static final int RUNS = 2;
    /** Of menus alone, several short searches gain more than one long one. */
    private static final long LONG_MENU = 16_000;
    /** With fewer steps than this the orders are left as the search finds them. */
    private static final long GLANCE = 1_000;
    private static final int STEP_NODES = 40;

    static Budget of(Duration time, OptionalLong steps) {
        if (steps.isPresent()) {
            long tries = Math.max(1, steps.getAsLong());
            boolean glance = tries < GLANCE;
            return new Budget(RUNS, tries, 0, memory(tries), glance ? ROUNDS / 30 : ROUNDS, tries, 0, 0,
                    glance ? 0 : STEP_NODES);
        }
        long millis = time.toMillis();
        long menu = millis * 12 / 100;
        return new Budget(RUNS, 0, menu, memory(menu * TRIES_PER_MILLI), ROUNDS, 0, millis * 45 / 100,
                Math.max(500, millis * 30 / 100), 0);
    }

    /** Clock of a bound that runs beside everything: the searches, so many side by side, and the last orders. */
    long boundMillis(int sideBySide) {
        return (menuMillis + jointMillis) * ((runs + sideBySide - 1) / sideBySide) + exactMillis;
    }

    /** The same for a week in which nothing is bought: the menu searches get the time of the searches for both. */
    Budget menusOnly() {
        long menu = menuMillis + jointMillis;
        int waves = menu <= LONG_MENU / 4 ? 1 : menu <= LONG_MENU ? 2 : 3;
        return menu == 0 ? new Budget(runs, tries, 0, memory, rounds, 0, 0, exactMillis, nodes)
                : new Budget(runs * waves, 0, menu / waves, memory(menu / waves * TRIES_PER_MILLI), rounds, 0, 0,
                        exactMillis, nodes);
    }

    /** Whether menu and orders are searched together. */
    boolean together() {
        return jointTries > 0 || jointMillis > 0;
    }

    private static int memory(long tries) {
        return (int) Math.max(4, Math.min(500, tries / 4_000));
    }
}
