package croftboard.plan;

import java.time.Duration;
import java.util.OptionalLong;

/**
 * How the time, or the steps, of several weeks planned as one are shared out. Measured on random months: searches over all
 * weeks need a short memory (one place for fifty thousand tries), and a second that goes on from the best of the first gains more.
 *
 * @param waves searches that go on from the best so far, two side by side in each
 * @param tries menus looked at by each search; 0: limited by {@code menuMillis}
 * @param menuMillis clock of each search; 0: limited by {@code tries}
 * @param memory length of late acceptance
 * @param rounds of the search for orders of all weeks, each wave; in the end four times as many
 * @param windowMillis clock of the exact orders of one week; 0: limited by {@code windowNodes}
 * @param windowNodes nodes of them; 0: limited by {@code windowMillis}; both 0: none
 * @param proofMillis clock of the exact orders of all weeks, which prove; 0: limited by {@code proofNodes}
 * @param proofNodes nodes of them
 * @param boundMillis longest clock of the bound over all menus; below 0: no bound; 0: no limit
 */
record MonthBudget(int waves, long tries, long menuMillis, int memory, int rounds, long windowMillis, long windowNodes,
        long proofMillis, long proofNodes, long boundMillis) {
    /** Menus that one search over four weeks looks at in a millisecond; only the memory hangs on it. */
    private static final int TRIES_PER_MILLI = 80;
    private static final int TRIES_A_PLACE = 50_000;
    private static final int WAVES = 2;
    private static final int ROUNDS = 5_000;
    private static final int QUICK_ROUNDS = 1_000;
    private static final int GLANCE_ROUNDS = 100;
    private static final int STRETCH_ROUNDS = 2_000;
    private static final long GLANCE = 1_000;
    private static final int STEP_NODES = 10;
    private static final long BOUND_MILLIS = 180_000;

    /** @param steps menus that each of the two searches side by side looks at, over all waves */
    static MonthBudget of(Duration time, OptionalLong steps) {
        if (steps.isPresent()) {
            boolean glance = steps.getAsLong() < GLANCE;
            long tries = Math.max(1, steps.getAsLong() / WAVES);
            return new MonthBudget(WAVES, tries, 0, memory(tries), glance ? GLANCE_ROUNDS : ROUNDS, 0,
                    glance ? 0 : STEP_NODES, 0, glance ? 0 : 1, 0);
        }
        long millis = time.toMillis();
        long menu = Math.max(1, millis * 33 / 100);
        return new MonthBudget(WAVES, 0, menu, memory(menu * TRIES_PER_MILLI), millis < 20_000 ? QUICK_ROUNDS : ROUNDS,
                Math.max(200, millis * 4 / 100), 0, Math.max(1_000, millis * 20 / 100), 0, Math.max(BOUND_MILLIS, millis));
    }

    /** For a stretch of a longer plan: one wave, and nothing proved. One of time and steps is regarded. */
    static MonthBudget ofStretch(Duration time, OptionalLong steps) {
        long tries = steps.orElse(0);
        long menu = steps.isPresent() ? 0 : Math.max(1, time.toMillis() * 80 / 100);
        return new MonthBudget(1, tries, menu, memory(tries + menu * TRIES_PER_MILLI), STRETCH_ROUNDS, 0, 0, 0, 0, -1);
    }

    private static int memory(long tries) {
        return (int) Math.max(4, Math.min(200, tries / TRIES_A_PLACE));
    }
}
