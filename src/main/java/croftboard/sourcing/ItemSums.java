package croftboard.sourcing;

/** What surplus and shortage cost, by item and in all, in thousandths of a cent: whole numbers, so that nothing drifts. */
final class ItemSums {
    final long[] surplusOf;
    final long[] missingOf;
    long surplus;
    long kept;
    long missing;
    private final long[] keptOf;
    private final int[] changed;
    private final long[][] before;
    private final int[] stamp;
    private int count;
    private int now = 1;

    ItemSums(int items) {
        surplusOf = new long[items];
        keptOf = new long[items];
        missingOf = new long[items];
        changed = new int[items];
        before = new long[items][3];
        stamp = new int[items];
    }

    void begin() {
        now++;
        count = 0;
    }

    /** Remembers an item as it is, the first time since {@link #begin}. */
    void touch(int i) {
        if (stamp[i] != now) {
            stamp[i] = now;
            before[count][0] = surplusOf[i];
            before[count][1] = keptOf[i];
            before[count][2] = missingOf[i];
            changed[count++] = i;
        }
    }

    void set(int i, long surplusCost, long keptWorth, long missingCost) {
        surplus += surplusCost - surplusOf[i];
        kept += keptWorth - keptOf[i];
        missing += missingCost - missingOf[i];
        surplusOf[i] = surplusCost;
        keptOf[i] = keptWorth;
        missingOf[i] = missingCost;
    }

    void undo() {
        while (count > 0) {
            count--;
            set(changed[count], before[count][0], before[count][1], before[count][2]);
        }
    }
}
