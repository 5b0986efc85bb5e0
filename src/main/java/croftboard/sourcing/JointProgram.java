package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Menu and orders of a week as one program over all menus. Every plan is a point of it that is worth no less there than
 * in the account: component needs enter unrounded and on their widest days, component hands not at all, needs may be
 * more than met for nothing, evenness is left out. So whatever bounds the program bounds every plan.
 */
final class JointProgram {
    final Program program = new Program();
    final Covers needs;
    final Purchases buying;
    final MenuRows menu;
    final HandsRows hands;

    JointProgram(WeekProblem problem) {
        List<WeekProblem.ItemStock> stock = new ArrayList<>(problem.stock());
        stock.addAll(problem.looseStock());
        needs = new Covers(problem, program, windows(problem), stock, false);
        FoodCost food = new FoodCost(problem, program, staples(problem));
        buying = new Purchases(problem, program, needs, food);
        hands = new HandsRows(problem, program, HandsRows.nothing(problem));
        menu = new MenuRows(problem, program, needs, hands, food);
        menu.build();
        buying.receiveWith(hands);
    }

    private static SortedSet<Covers.Window> windows(WeekProblem problem) {
        SortedSet<Covers.Window> all = new TreeSet<>();
        problem.slots().forEach(s -> s.candidates().forEach(c -> c.loose()
                .forEach(n -> all.add(new Covers.Window(n.item(), n.from(), n.to())))));
        return all;
    }

    static double staples(WeekProblem problem) {
        return problem.slots().stream().mapToDouble(s -> s.candidates().stream()
                .mapToDouble(c -> c.stapleCents() + c.looseStapleCents()).max().orElse(0)).sum();
    }
}
