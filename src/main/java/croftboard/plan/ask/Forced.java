package croftboard.plan.ask;

import croftboard.need.WeekProblem;
import croftboard.plan.WeekRun;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A week in which one dish stands where it is wanted; what stands too near to it gives way. */
final class Forced {
    static final long TRIES = 20_000;

    private Forced() { }

    /** The problem with that dish as the only one of its slot. */
    static WeekProblem dish(WeekProblem p, int slot, int candidate) {
        List<WeekProblem.Slot> slots = new ArrayList<>(p.slots());
        WeekProblem.Slot s = slots.get(slot);
        slots.set(slot, new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), s.free(), s.emptyCents(), false,
                List.of(s.candidates().get(candidate))));
        return Problems.withSlots(p, slots);
    }

    /**
     * The best week near a menu; of a tiny week the best there is.
     *
     * @param p with one candidate in that slot
     * @param start the plan's menu
     * @param packs the plan's
     */
    static WeekRun.Found best(WeekProblem p, int slot, int[] start, int[] packs) {
        return new Nearby(p, packs, 1).best(menu(p, slot, start), TRIES);
    }

    /** The plan's menu with the dish in its slot and nothing where it stands too near. */
    static int[] menu(WeekProblem p, int slot, int[] start) {
        int[] menu = start.clone();
        menu[slot] = 0;
        for (int s = 0; s < menu.length; s++) {
            if (s != slot && menu[s] >= 0 && near(p, slot, s, menu)) {
                menu[s] = -1;
            }
        }
        return menu;
    }

    /** The same, with the dish that stood there where the wanted one stood too near, as far as it may stand there. */
    static int[] swapped(WeekProblem p, int slot, int[] start, Optional<String> stood) {
        int[] menu = menu(p, slot, start);
        for (int s = 0; s < menu.length; s++) {
            List<WeekProblem.Candidate> may = p.slots().get(s).candidates();
            for (int k = 0; k < may.size() && menu[s] != start[s] && s != slot; k++) {
                menu[s] = stood.equals(Optional.of(may.get(k).recipe())) ? k : menu[s];
            }
        }
        return menu;
    }

    /** Whether the same dish stands in both places nearer than its gap. */
    static boolean near(WeekProblem p, int a, int b, int[] menu) {
        WeekProblem.Slot x = p.slots().get(a);
        WeekProblem.Slot y = p.slots().get(b);
        return menu[a] >= 0 && menu[b] >= 0 && x.free() && y.free() && Math.abs(x.startDay() - y.startDay()) < p.prices().gapDays()
                && x.candidates().get(menu[a]).dish() == y.candidates().get(menu[b]).dish();
    }
}
