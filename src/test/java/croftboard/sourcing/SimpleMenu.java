package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.Arrays;

/** In each slot the dish that brings most before anything is bought, as far as the gap allows; no hands, no promises. */
final class SimpleMenu {
    private SimpleMenu() { }

    static int[] of(WeekProblem problem) {
        int[] menu = new int[problem.slots().size()];
        Arrays.fill(menu, -1);
        for (int s = 0; s < menu.length; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            for (int k = 0; k < slot.candidates().size(); k++) {
                boolean better = menu[s] < 0
                        || slot.candidates().get(k).valueCents() > slot.candidates().get(menu[s]).valueCents();
                if (better && !near(problem, menu, s, slot.candidates().get(k).dish())) {
                    menu[s] = k;
                }
            }
        }
        return menu;
    }

    private static boolean near(WeekProblem problem, int[] menu, int s, int dish) {
        for (int o = 0; o < s; o++) {
            WeekProblem.Slot other = problem.slots().get(o);
            if (menu[o] >= 0 && other.candidates().get(menu[o]).dish() == dish
                    && Math.abs(other.startDay() - problem.slots().get(s).startDay()) < problem.prices().gapDays()) {
                return true;
            }
        }
        return false;
    }
}
