package croftboard.sourcing;

import croftboard.need.Enumeration;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Menus of a tiny week that keep the musts of the kitchen, drawn at random. */
final class TinyMenus {
    private TinyMenus() { }

    static List<int[]> of(WeekProblem problem, int howMany) {
        Random g = new Random(problem.offers().size() * 31L + problem.items().size());
        List<int[]> menus = new ArrayList<>();
        for (int n = 0; n < 20 && menus.size() < howMany; n++) {
            int[] menu = new int[problem.slots().size()];
            for (int s = 0; s < menu.length; s++) {
                int dishes = problem.slots().get(s).candidates().size();
                menu[s] = problem.slots().get(s).mayBeEmpty() ? g.nextInt(dishes + 1) - 1 : g.nextInt(dishes);
            }
            Workload work = Workload.of(problem, menu);
            if (work.missed().isEmpty() && work.unitsOver(problem) == 0 && Enumeration.gapsHold(problem, menu)) {
                menus.add(menu);
            }
        }
        return menus;
    }
}
