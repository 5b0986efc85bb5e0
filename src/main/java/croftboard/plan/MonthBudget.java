package croftboard.plan;

import java.time.Duration;
import java.util.OptionalLong;

/**
 * How the time, or the steps, of several weeks planned as one are shared out. Measured on random months: searches over all
 * weeks need a short memory (one place for fifty thousand tries), and a second that goes on from the best of the first gains
 * more; menu and orders together come after both.
 *
 * @param waves searches of menus, the second from the best of the first
 * @param tries menus looked at by each of two searches side by side; 0: limited by {@code menuMillis}
 * @param menuMillis clock of each search; 0: limited by {@code tries}
 * @param memory length of late acceptance
 * @param rounds of the search for orders of all weeks; in the end four times as many
 * @param jointTries plans looked at by each search of menu and orders together; 0: limited by {@code jointMillis}
 * @param jointMillis clock of each; 0: limited by {@code jointTries}; both 0: none
 * @param windowMillis clock of the exact orders of one week; 0: limited by {@code windowNodes}
 * @param windowNodes nodes of them; 0: limited by {@code windowMillis}; both 0: none
 * @param proofMillis clock of the exact orders of all weeks, which prove; 0: limited by {@code proofNodes}
 * @param proofNodes nodes of them
 * @param boundMillis longest clock of the bound over all menus; below 0: no bound; 0: no limit
 */
record MonthBudget(int waves, long tries, long menuMillis, int memory, int rounds, long jointTries, long jointMillis, long windowMillis,
        long windowNodes, long proofMillis, long proofNodes, long boundMillis) {
    /** Menus that one search over four weeks looks at in a millisecond; only the memory hangs on it. */
    private static final int TRIES_PER_MILLI = 40;
    private static final int TRIES_A_PLACE = 50_000;
    /** Of menu and orders together so many more are looked at than of menus alone in the same time. */
    private static final int JOINT_A_TRY = 4;
    private static final int WAVES = 2;
    private static final int ROUNDS = 5_000;
    private static final int QUICK_ROUNDS = 1_000;
    private static final int GLANCE_ROUNDS = 100;
    private static final int STRETCH_ROUNDS = 2_000;
    private static final long GLANCE = 1_000;
    private static final int STEP_NODES = 10;
    private static final long BOUND_MILLIS = 180_000;

    /** @param steps menus that each of the two searches side by side looks at */
    static MonthBudget of(Duration time, OptionalLong steps) {
        if (steps.isPresent()) {
            boolean glance = steps.getAsLong() < GLANCE;
            long tries = Math.max(1, steps.getAsLong() / WAVES);
            return new MonthBudget(WAVES, tries, 0, memory(tries), glance ? GLANCE_ROUNDS : ROUNDS, JOINT_A_TRY * tries, 0, 0,
                    glance ? 0 : STEP_NODES, 0, glance ? 0 : 1, 0);
        }
        long millis = time.toMillis();
        long menu = Math.max(1, millis * 25 / 100);
        return new MonthBudget(WAVES, 0, menu, memory(menu * TRIES_PER_MILLI), millis < 20_000 ? QUICK_ROUNDS : ROUNDS, 0,
                Math.max(1, millis * 32 / 100), Math.max(200, millis * 3 / 100), 0, Math.max(1_000, millis * 14 / 100), 0,
                Math.max(BOUND_MILLIS, millis));
    }

    /** For a stretch of a longer plan: nothing proved. One of time and steps is regarded. */
    static MonthBudget ofStretch(Duration time, OptionalLong steps) {
        long tries = steps.orElse(0);
        long millis = steps.isPresent() ? 0 : Math.max(10, time.toMillis());
        return new MonthBudget(1, tries, millis * 25 / 100, memory(tries + millis * 25 / 100 * TRIES_PER_MILLI), STRETCH_ROUNDS,
                JOINT_A_TRY * tries, millis * 60 / 100, 0, 0, 0, 0, -1);
    }

    private static int memory(long tries) {
        return (int) Math.max(4, Math.min(200, tries / TRIES_A_PLACE));
    }
}
