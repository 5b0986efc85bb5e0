package croftboard.menu;

import java.util.Arrays;

/**
 * What needs of one item cost the last times they were asked for. A search puts a dish and mostly takes it away again,
 * so the same needs come back at once; looking is cheaper than filling packs anew.
 */
final class KnownFills {
    private static final int PLACES = 64;
    private final long[][] needs = new long[PLACES][];
    private final long[] cents = new long[PLACES];
    private int place;

    /** Whether the cents of these needs are known; {@link #cents()} then tells them. Else {@link #learn} may follow. */
    boolean knows(long[] need) {
        place = (int) (mixed(need) & PLACES - 1);
        return needs[place] != null && Arrays.equals(needs[place], need);
    }

    long cents() {
        return cents[place];
    }

    /** Keeps the answer for the needs just asked about, in the place of older ones. */
    void learn(long[] need, long answer) {
        if (needs[place] == null) {
            needs[place] = need.clone();
        } else {
            System.arraycopy(need, 0, needs[place], 0, need.length);
        }
        cents[place] = answer;
    }

    private static long mixed(long[] need) {
        long hash = 1;
        for (long mg : need) {
            hash = hash * 0x9E3779B97F4A7C15L + mg;
        }
        return hash ^ hash >>> 32 ^ hash >>> 17;
    }
}
