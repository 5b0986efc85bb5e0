package croftboard.need;

import java.util.Arrays;
import java.util.OptionalLong;

/** The best plan of a tiny week by trying every menu and every number of packs, judged by the account. */
public final class Enumeration {
    private final WeekProblem problem;
    private long best = Long.MIN_VALUE;

    private Enumeration(WeekProblem problem) {
        this.problem = problem;
    }

    /** Value in cents of the best plan that keeps every must; empty when there is none. */
    public static OptionalLong best(WeekProblem problem) {
        Enumeration all = new Enumeration(problem);
        int[] menu = new int[problem.slots().size()];
        Arrays.fill(menu, -1);
        all.menus(menu, 0);
        return all.best == Long.MIN_VALUE ? OptionalLong.empty() : OptionalLong.of(all.best);
    }

    /** The best value for one menu. */
    public static OptionalLong bestFor(WeekProblem problem, int[] menu) {
        Enumeration all = new Enumeration(problem);
        all.packs(menu, Workload.of(problem, menu), new int[problem.offers().size()], 0);
        return all.best == Long.MIN_VALUE ? OptionalLong.empty() : OptionalLong.of(all.best);
    }

    private void menus(int[] menu, int slot) {
        if (slot == menu.length) {
            Workload work = Workload.of(problem, menu);
            if (work.unitsOver(problem) == 0 && work.missed().isEmpty() && gapsHold(menu)) {
                packs(menu, work, new int[problem.offers().size()], 0);
            }
            return;
        }
        WeekProblem.Slot s = problem.slots().get(slot);
        for (int k = s.mayBeEmpty() ? -1 : 0; k < s.candidates().size(); k++) {
            menu[slot] = k;
            menus(menu, slot + 1);
        }
        menu[slot] = -1;
    }

    private boolean gapsHold(int[] menu) {
        for (int a = 0; a < menu.length; a++) {
            for (int b = a + 1; b < menu.length; b++) {
                WeekProblem.Slot x = problem.slots().get(a);
                WeekProblem.Slot y = problem.slots().get(b);
                if (menu[a] >= 0 && menu[b] >= 0 && x.free() && y.free()
                        && x.candidates().get(menu[a]).dish() == y.candidates().get(menu[b]).dish()
                        && Math.abs(x.startDay() - y.startDay()) < problem.prices().gapDays()) {
                    return false;
                }
            }
        }
        return true;
    }

    private void packs(int[] menu, Workload work, int[] packs, int offer) {
        if (offer == packs.length) {
            judge(menu, work, packs);
            return;
        }
        WeekProblem.Offer o = problem.offers().get(offer);
        for (int n = o.minPacks(); n <= o.maxPacks(); n++) {
            packs[offer] = n;
            packs(menu, work, packs, offer + 1);
        }
        packs[offer] = 0;
    }

    private void judge(int[] menu, Workload work, int[] packs) {
        long[] money = new long[problem.deliveries().size()];
        for (int o = 0; o < packs.length; o++) {
            money[problem.offers().get(o).delivery()] += problem.offers().get(o).costCents(packs[o]);
        }
        for (int v = 0; v < money.length; v++) {
            if (money[v] > 0 && money[v] < problem.deliveries().get(v).minimumCents()) {
                return;
            }
        }
        if (Buying.of(problem, work.needMg(), packs).complete()) {
            best = Math.max(best, Account.of(problem, menu, packs, work).value());
        }
    }
}
