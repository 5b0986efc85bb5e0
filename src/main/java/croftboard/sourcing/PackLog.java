package croftboard.sourcing;

import java.util.Arrays;

/** Packs as they were before each change, so that changes can be taken back. */
final class PackLog {
    int[] offer = new int[64];
    int[] packs = new int[64];
    int count;

    void clear() {
        count = 0;
    }

    void add(int changed, int before) {
        if (count == offer.length) {
            offer = Arrays.copyOf(offer, 2 * count);
            packs = Arrays.copyOf(packs, 2 * count);
        }
        offer[count] = changed;
        packs[count++] = before;
    }
}
