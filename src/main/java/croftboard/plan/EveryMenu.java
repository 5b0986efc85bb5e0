package croftboard.plan;

import croftboard.need.Workload;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Sourcing;
import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * A week so small that every menu can be tried: each menu that keeps the musts gets exact orders, unless it could not be
 * worth more even if its food were free. Where the exact solver is there, the plan is the best there is.
 */
final class EveryMenu {
    private static final long AT_MOST = 700;
    private static final int ROUNDS = 300;
    private static final long NODES = 5_000;
    private final WeekProblem problem;
    private final Sourcing sourcing;
    private final long seed;
    private int[] bestMenu;
    private Sourcing.Orders best;
    private boolean bestComplete;

    /** @param complete whether what is known already keeps every must */
    EveryMenu(WeekProblem problem, Sourcing sourcing, long seed, int[] menu, Sourcing.Orders known, boolean complete) {
        this.problem = problem;
        this.sourcing = sourcing;
        this.seed = seed;
        bestMenu = menu;
        best = known;
        bestComplete = complete;
    }

    static boolean suits(WeekProblem problem) {
        long menus = 1;
        for (WeekProblem.Slot s : problem.slots()) {
            menus *= Math.max(1, s.candidates().size() + (s.mayBeEmpty() ? 1 : 0));
            if (menus > AT_MOST) {
                return false;
            }
        }
        return true;
    }

    void run(BooleanSupplier stop) {
        int[] menu = new int[problem.slots().size()];
        Arrays.fill(menu, -1);
        each(menu, 0, stop);
    }

    private void each(int[] menu, int slot, BooleanSupplier stop) {
        if (stop.getAsBoolean()) {
            return;
        }
        if (slot == menu.length) {
            judge(menu);
            return;
        }
        WeekProblem.Slot s = problem.slots().get(slot);
        for (int k = s.mayBeEmpty() || s.candidates().isEmpty() ? -1 : 0; k < s.candidates().size(); k++) {
            menu[slot] = k;
            if (!repeats(menu, slot)) {
                each(menu, slot + 1, stop);
            }
        }
        menu[slot] = -1;
    }

    private boolean repeats(int[] menu, int slot) {
        WeekProblem.Slot s = problem.slots().get(slot);
        for (int o = 0; o < slot && menu[slot] >= 0 && s.free(); o++) {
            WeekProblem.Slot other = problem.slots().get(o);
            if (menu[o] >= 0 && other.free()
                    && other.candidates().get(menu[o]).dish() == s.candidates().get(menu[slot]).dish()
                    && Math.abs(other.startDay() - s.startDay()) < problem.prices().gapDays()) {
                return true;
            }
        }
        return false;
    }

    private void judge(int[] menu) {
        Workload work = Workload.of(problem, menu);
        if (work.unitsOver(problem) > 0 || !work.missed().isEmpty()) {
            return;
        }
        if (bestComplete && sourcing.valueWithFreeFood(menu) <= best.valueCents()) {
            return;
        }
        Sourcing.Orders orders = sourcing.exact(menu, sourcing.search(menu, seed, ROUNDS, () -> false), 0, NODES);
        boolean better = orders.complete() && (!bestComplete || orders.valueCents() > best.valueCents());
        if (better) {
            best = orders;
            bestMenu = menu.clone();
            bestComplete = true;
        }
    }

    int[] menu() {
        return bestMenu;
    }

    Sourcing.Orders orders() {
        return best;
    }
}
