package croftboard.plan;

import java.time.Duration;
import java.util.OptionalLong;

/**
 * How the time, or the steps, of several weeks planned as one are shared out. Measured on random months: one search over
 * all weeks needs a short memory (one place for fifty thousand tries), and a second one from its end gains once more.
 *
 * @param tries menus looked at by each of the first searches; 0: limited by {@code menuMillis}
 * @param menuMillis clock of the first searches; 0: limited by {@code tries}
 * @param memory length of late acceptance of the first searches
 * @param againTries, againMillis, againMemory the same for the searches that go on from the best
 * @param rounds of the search for orders of all weeks
 * @param windowMillis clock of the exact orders of one week; 0: limited by {@code windowNodes}
 * @param windowNodes nodes of them; 0: limited by {@code windowMillis}; both 0: none
 * @param proofMillis clock of the exact orders of all weeks, which prove; 0: limited by {@code proofNodes}
 * @param proofNodes nodes of them
 * @param boundMillis longest clock of the bound over all menus; below 0: no bound; 0: no limit
 */
record MonthBudget(long tries, long menuMillis, int memory, long againTries, long againMillis, int againMemory,
        int rounds, long windowMillis, long windowNodes, long proofMillis, long proofNodes, long boundMillis) {
    /** Menus that one search over four weeks looks at in a millisecond; only the memory hangs on it. */
    private static final int TRIES_PER_MILLI = 80;
    private static final int TRIES_A_PLACE = 50_000;
    private static final int ROUNDS = 20_000;
    private static final int QUICK_ROUNDS = 2_000;
    private static final long GLANCE = 1_000;
    private static final int STEP_NODES = 10;
    private static final long BOUND_MILLIS = 180_000;

    static MonthBudget of(Duration time, OptionalLong steps) {
        if (steps.isPresent()) {
            long tries = Math.max(1, steps.getAsLong());
            boolean glance = tries < GLANCE;
            long again = tries / 3;
            return new MonthBudget(tries, 0, memory(tries), again, 0, memory(again), glance ? QUICK_ROUNDS / 10 : ROUNDS,
                    0, glance ? 0 : STEP_NODES, 0, glance ? 0 : 1, 0);
        }
        long millis = time.toMillis();
        long first = millis * 50 / 100;
        long again = millis * 18 / 100;
        return new MonthBudget(0, first, memory(first * TRIES_PER_MILLI), 0, again, memory(again * TRIES_PER_MILLI),
                millis < 20_000 ? QUICK_ROUNDS : ROUNDS, Math.max(200, millis * 4 / 100), 0,
                Math.max(1_000, millis * 20 / 100), 0, Math.max(BOUND_MILLIS, millis));
    }

    /** For a stretch of a longer plan: one wave of searches, and nothing proved. One of time and steps is regarded. */
    static MonthBudget ofStretch(Duration time, OptionalLong steps) {
        long tries = steps.orElse(0);
        long menu = steps.isPresent() ? 0 : Math.max(1, time.toMillis() * 80 / 100);
        return new MonthBudget(tries, menu, memory(tries + menu * TRIES_PER_MILLI), 0, 0, 0, QUICK_ROUNDS, 0, 0, 0, 0, -1);
    }

    private static int memory(long tries) {
        return (int) Math.max(4, Math.min(200, tries / TRIES_A_PLACE));
    }
}
