package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;

/**
 * Menu and orders of a week as one program over all menus. Every plan is a point of it that is worth no less there than
 * in the account: component needs enter unrounded and on their widest days, component hands not at all, needs may be
 * more than met for nothing, evenness is left out. So whatever bounds the program bounds every plan.
 */
final class JointProgram {
    final Program program = new Program();
    final Lots lots;
    final Purchases buying;
    final MenuRows menu;

    JointProgram(WeekProblem problem) {
        int[] limit = PackLimits.all(problem);
        List<WeekProblem.ItemStock> stock = new ArrayList<>(problem.stock());
        stock.addAll(problem.looseStock());
        lots = new Lots(problem, program, limit, stock);
        FoodCost food = new FoodCost(problem, program, staples(problem));
        buying = new Purchases(problem, program, lots, food);
        HandsRows hands = new HandsRows(problem, program, HandsRows.nothing(problem));
        menu = new MenuRows(problem, program, lots, hands, food);
        menu.build();
        buying.receiveWith(hands);
    }

    private static double staples(WeekProblem problem) {
        return problem.slots().stream().mapToDouble(s -> s.candidates().stream()
                .mapToDouble(c -> c.stapleCents() + c.looseStapleCents()).max().orElse(0)).sum();
    }
}
