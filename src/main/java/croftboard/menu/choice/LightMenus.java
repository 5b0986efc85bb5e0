package croftboard.menu.choice;

import java.util.Arrays;
import java.util.Comparator;

/**
 * The menus of some slots that lose least, about as many as asked for. Each is kept as one change of an earlier one:
 * the first has the best option everywhere.
 */
final class LightMenus {
    private static final int STEPS = 256;
    private final Ranked ranked;
    private final Integer[] slots;
    private final int most;
    private final int[] from;
    private final int[] slot;
    private final int[] option;
    final Rows rows;

    /**
     * @param slots that vary
     * @param about how many menus
     * @param mostLoss menus that lose more are of no use
     */
    LightMenus(Ranked ranked, int[] slots, int about, double mostLoss) {
        this.ranked = ranked;
        this.slots = Arrays.stream(slots).boxed().sorted(Comparator.comparingDouble(ranked::step))
                .toArray(Integer[]::new);
        most = 2 * about;
        rows = new Rows(ranked.priced.choices.limits(), about + 1);
        from = new int[most];
        slot = new int[most];
        option = new int[most];
        int[] units = new int[ranked.priced.choices.limits()];
        double lost = 0;
        for (int s : slots) {
            lost += ranked.priced.loss[s][ranked.best(s)];
            int[] best = ranked.priced.choices.units()[s][ranked.best(s)];
            for (int r = 0; r < units.length; r++) {
                units[r] += best[r];
            }
        }
        rows.add(units, lost);
        grow(0, 0, lossLimit(about, mostLoss));
    }

    /** The greatest loss that about so many menus stay within: menus are counted by rounded losses. */
    private double lossLimit(int about, double mostLoss) {
        double all = 0;
        for (int s : slots) {
            all += ranked.extra(s, ranked.order[s][ranked.order[s].length - 1]);
        }
        double limit = Math.min(all, mostLoss);
        while (limit > 1e-9) {
            double[] count = counts(limit);
            int step = 0;
            double sum = count[0];
            while (step < STEPS && sum + count[step + 1] <= about) {
                sum += count[++step];
            }
            if (step >= STEPS / 8) {
                return limit * step / STEPS;
            }
            limit = limit * (step + 1) / STEPS * 2;
        }
        return limit;
    }

    /** Menus by loss, in steps of a part of the limit. */
    private double[] counts(double limit) {
        double[] count = new double[STEPS + 1];
        count[0] = 1;
        for (int s : slots) {
            if (ranked.step(s) > limit) {
                break;
            }
            double[] next = new double[STEPS + 1];
            for (int k : ranked.order[s]) {
                if (ranked.extra(s, k) > limit) {
                    break;
                }
                int step = (int) Math.round(ranked.extra(s, k) / limit * STEPS);
                for (int g = 0; g + step <= STEPS; g++) {
                    next[g + step] += count[g];
                }
            }
            count = next;
        }
        return count;
    }

    private void grow(int menu, int next, double left) {
        for (int i = next; i < slots.length && ranked.step(slots[i]) <= left; i++) {
            int s = slots[i];
            for (int n = 1; n < ranked.order[s].length && ranked.extra(s, ranked.order[s][n]) <= left; n++) {
                if (rows.size() == most) {
                    return;
                }
                int k = ranked.order[s][n];
                int added = rows.size();
                rows.addChanged(menu, ranked.priced.choices.units()[s][k],
                        ranked.priced.choices.units()[s][ranked.best(s)],
                        rows.loss(menu) + ranked.priced.loss[s][k] - ranked.priced.loss[s][ranked.best(s)]);
                from[added] = menu;
                slot[added] = s;
                option[added] = k;
                grow(added, i + 1, left - ranked.extra(s, k));
            }
        }
    }

    /** Writes the options of a menu for the slots that vary. */
    void write(int menu, int[] options) {
        for (int s : slots) {
            options[s] = ranked.best(s);
        }
        for (int m = menu; m > 0; m = from[m]) {
            options[slot[m]] = option[m];
        }
    }
}
