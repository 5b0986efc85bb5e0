package croftboard.menu.choice;

import java.util.Arrays;
import java.util.Comparator;

/**
 * The menus of some slots that lose least, about as many as asked for. Each is kept as one change of an earlier one:
 * the first has the best option everywhere.
 */
final class LightMenus {
    private static final int STEPS = 256;
    private final Priced priced;
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
    LightMenus(Priced priced, int[] slots, int about, double mostLoss) {
        this.priced = priced;
        this.slots = Arrays.stream(slots).boxed().sorted(Comparator.comparingDouble(priced::secondLoss))
                .toArray(Integer[]::new);
        most = 2 * about;
        rows = new Rows(priced.choices.limits(), about + 1);
        from = new int[most];
        slot = new int[most];
        option = new int[most];
        int[] units = new int[priced.choices.limits()];
        for (int s : slots) {
            int[] best = priced.choices.units()[s][priced.order[s][0]];
            for (int r = 0; r < units.length; r++) {
                units[r] += best[r];
            }
        }
        rows.add(units, 0);
        grow(0, 0, lossLimit(about, mostLoss));
    }

    /** The greatest loss that about so many menus stay within: menus are counted by rounded losses. */
    private double lossLimit(int about, double mostLoss) {
        double all = 0;
        for (int s : slots) {
            all += priced.loss[s][priced.order[s][priced.order[s].length - 1]];
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
            if (priced.secondLoss(s) > limit) {
                break;
            }
            double[] next = new double[STEPS + 1];
            for (int k : priced.order[s]) {
                if (priced.loss[s][k] > limit) {
                    break;
                }
                int step = (int) Math.round(priced.loss[s][k] / limit * STEPS);
                for (int g = 0; g + step <= STEPS; g++) {
                    next[g + step] += count[g];
                }
            }
            count = next;
        }
        return count;
    }

    private void grow(int menu, int next, double left) {
        for (int i = next; i < slots.length && priced.secondLoss(slots[i]) <= left; i++) {
            int s = slots[i];
            for (int n = 1; n < priced.order[s].length && priced.loss[s][priced.order[s][n]] <= left; n++) {
                if (rows.size() == most) {
                    return;
                }
                int k = priced.order[s][n];
                int added = rows.size();
                rows.addChanged(menu, priced.choices.units()[s][k], priced.choices.units()[s][priced.order[s][0]],
                        rows.loss(menu) + priced.loss[s][k]);
                from[added] = menu;
                slot[added] = s;
                option[added] = k;
                grow(added, i + 1, left - priced.loss[s][k]);
            }
        }
    }

    /** Writes the options of a menu for the slots that vary. */
    void write(int menu, int[] options) {
        for (int s : slots) {
            options[s] = priced.order[s][0];
        }
        for (int m = menu; m > 0; m = from[m]) {
            options[slot[m]] = option[m];
        }
    }
}
