package croftboard.plan.ask;

import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.WeekRun;
import croftboard.plan.change.ChangedWeek;
import java.util.ArrayList;
import java.util.List;

/**
 * A week after failures with the same menu: orders near the plan's or from a short search over vendor-days; a dish whose food
 * cannot be bought is dropped, the one that brings least for what it frees first, and put back where it can be after all.
 */
final class QuickRepair {
    private static final int ROUNDS = 100;
    private static final int MOST_DROPS = 60;
    private final WeekProblem problem;
    private final int[] packs;

    /** @param packs the plan's */
    QuickRepair(WeekProblem problem, int[] packs) {
        this.problem = problem;
        this.packs = packs;
    }

    /** @param dropped slots whose dish could not be made */
    record Repaired(WeekRun.Found found, List<Integer> dropped) { }

    Repaired run(int[] menu) {
        int[] now = menu.clone();
        List<Integer> dropped = new ArrayList<>();
        int[] most = problem.offers().stream().mapToInt(WeekProblem.Offer::maxPacks).toArray();
        while (dropped.size() < MOST_DROPS && drop(now, most, dropped)) {
            continue;
        }
        WeekRun.Found found = orders(now);
        while (!found.complete() && dropped.size() < MOST_DROPS && drop(now, found.packs(), dropped)) {
            found = orders(now);
        }
        return putBack(menu, now, found, dropped);
    }

    private WeekRun.Found orders(int[] menu) {
        return Nearby.better(WeekRun.near(problem, menu, packs), WeekRun.orders(problem, menu, 1, ROUNDS));
    }

    /** Of the dishes that take what is missing, the one that brings least for what it frees of it. @return whether there was one */
    private boolean drop(int[] menu, int[] bought, List<Integer> dropped) {
        long[][] missing = Buying.of(problem, Workload.of(problem, menu).needMg(), bought).missingMg();
        int least = -1;
        double price = Double.MAX_VALUE;
        for (int s = 0; s < menu.length; s++) {
            if (menu[s] >= 0 && !problem.slots().get(s).id().equals(ChangedWeek.HOUSE)) {
                double frees = frees(problem.slots().get(s).candidates().get(menu[s]), missing);
                double asked = frees == 0 ? Double.MAX_VALUE : (brings(s, menu[s]) + 1) / frees;
                if (asked < price) {
                    price = asked;
                    least = s;
                }
            }
        }
        if (least >= 0) {
            menu[least] = -1;
            dropped.add(least);
        }
        return least >= 0;
    }

    /** Sales and the price of the empty place. */
    private long brings(int s, int k) {
        WeekProblem.Slot slot = problem.slots().get(s);
        return Math.max(0, slot.candidates().get(k).valueCents() + slot.emptyCents());
    }

    /** Parts of what is missing of each item that the dish takes on those days, summed over the items. */
    private static double frees(WeekProblem.Candidate dish, long[][] missing) {
        double[] taken = new double[missing.length];
        for (WeekProblem.LooseNeed n : dish.loose()) {
            for (int d = n.from(); d <= n.to() && d < missing[n.item()].length; d++) {
                if (missing[n.item()][d] > 0) {
                    taken[n.item()] += n.mg();
                    break;
                }
            }
        }
        double all = 0;
        for (int i = 0; i < taken.length; i++) {
            all += taken[i] == 0 ? 0 : Math.min(1, taken[i] / java.util.Arrays.stream(missing[i]).sum());
        }
        return all;
    }

    private Repaired putBack(int[] menu, int[] now, WeekRun.Found found, List<Integer> dropped) {
        WeekRun.Found best = found;
        List<Integer> gone = new ArrayList<>(dropped);
        for (int s : dropped) {
            int[] tried = best.choice().clone();
            tried[s] = menu[s];
            WeekRun.Found with = WeekRun.near(problem, tried, best.packs());
            if (with.complete() && (with.valueCents() > best.valueCents() || !best.complete())) {
                best = with;
                gone.remove(Integer.valueOf(s));
            }
        }
        return new Repaired(best, gone);
    }
}
