package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import croftboard.need.WeekProblem;
import java.util.Optional;

/**
 * Menu and orders as one program with every decision divisible: no plan can be worth more than its value, and its dual
 * of the local share tells what local money is worth. Component needs enter unrounded, component hands not at all,
 * evenness is left out: each makes the program only looser, so the value stays a bound.
 */
public final class JointRelaxation {
    private JointRelaxation() { }

    /** Empty when the native library is not there or the program was not solved. */
    public static Optional<Relaxation> of(WeekProblem problem) {
        if (!Natives.available()) {
            return Optional.empty();
        }
        Program program = Program.linear();
        int[] most = problem.offers().stream().mapToInt(WeekProblem.Offer::maxPacks).toArray();
        BuyingRows buying = new BuyingRows(problem, program, most, false, problem.looseStock());
        new MenuRows(problem, program, buying).build();
        buying.closeFoodCost();
        if (program.solver().solve() != MPSolver.ResultStatus.OPTIMAL) {
            return Optional.empty();
        }
        double value = program.solver().objective().value();
        double price = problem.prices().localPrice().toDouble();
        double worth = Math.max(0, Math.min(price, Math.abs(buying.local.dualValue())));
        return Optional.of(new Relaxation(SafeSide.up(problem, value), worth));
    }

}
