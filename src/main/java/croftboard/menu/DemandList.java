package croftboard.menu;

import java.util.Arrays;

/** Open demands of one component: parallel arrays, small. */
final class DemandList {
    int[] use = new int[8];
    int[] last = new int[8];
    long[] mg = new long[8];
    int count;

    void add(int useDay, int lastDay, long milligrams) {
        if (count == use.length) {
            use = Arrays.copyOf(use, 2 * count);
            last = Arrays.copyOf(last, 2 * count);
            mg = Arrays.copyOf(mg, 2 * count);
        }
        use[count] = useDay;
        last[count] = lastDay;
        mg[count++] = milligrams;
    }

    void remove(int useDay, int lastDay, long milligrams) {
        int i = 0;
        while (use[i] != useDay || last[i] != lastDay || mg[i] != milligrams) {
            i++;
        }
        count--;
        use[i] = use[count];
        last[i] = last[count];
        mg[i] = mg[count];
    }

    void copyOf(DemandList other) {
        count = 0;
        for (int i = 0; i < other.count; i++) {
            add(other.use[i], other.last[i], other.mg[i]);
        }
    }

    void sort() {
        for (int i = 1; i < count; i++) {
            int u = use[i];
            int l = last[i];
            long m = mg[i];
            int j = i - 1;
            while (j >= 0 && after(j, u, l, m)) {
                use[j + 1] = use[j];
                last[j + 1] = last[j];
                mg[j + 1] = mg[j];
                j--;
            }
            use[j + 1] = u;
            last[j + 1] = l;
            mg[j + 1] = m;
        }
    }

    private boolean after(int j, int u, int l, long m) {
        return use[j] != u ? use[j] > u : last[j] != l ? last[j] > l : mg[j] > m;
    }
}
