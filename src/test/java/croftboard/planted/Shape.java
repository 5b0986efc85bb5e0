package croftboard.planted;

/**
 * How large a planted week is.
 *
 * @param open service days a week, 3 or 6; every three of them are one run of a long line
 * @param daily kind of dish of each line with a dish a day
 * @param longer kind of dish of each line with a dish for three days
 * @param partsOfDish items a dish needs
 * @param planVendors of the vendors, those from which the planted plan buys
 * @param decoys dishes that stand nowhere in the planted menu
 * @param listed most candidates of a slot
 * @param packs most packs that the plan takes of one item from one vendor, nearly
 * @param tied whether one decoy in seven comes within a cent of the planted dish, or only within a hundredth
 */
record Shape(int weeks, int open, int[] daily, int[] longer, int items, int partsOfDish, int vendors, int planVendors,
        int decoys, int listed, int packs,
        boolean tied) {
    private static final int[] DAILY = {0, 0, 1, 1, 2, 3, 3, 4};
    private static final int[] LONGER = {3, 4, 1};

    /** 54 slots. */
    static Shape week(boolean tied) {
        return new Shape(1, 6, DAILY, LONGER, 60, 5, 14, 10, 116, 40, 6, tied);
    }

    /** 54 slots in each of several weeks. */
    static Shape weeks(int weeks, boolean tied) {
        return new Shape(weeks, 6, DAILY, LONGER, 60, 5, 14, 10, 62, 40, 6, tied);
    }

    /** Three slots: every menu can be tried with every order. */
    static Shape tiny() {
        return new Shape(1, 3, new int[] {0}, new int[0], 2, 2, 3, 2, 3, 4, 2, false);
    }

    int days() {
        return 7 * weeks - 1;
    }

    int runs() {
        return open / 3;
    }

    int slotsOfWeek() {
        return open * daily.length + runs() * longer.length;
    }

    /** Two menus that take turns, so that a dish comes back after two weeks. */
    int menus() {
        return Math.min(2, weeks);
    }

    int gapDays() {
        return weeks == 1 ? 7 : 10;
    }
}
