package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import croftboard.need.WeekProblem;
import java.util.Optional;

/** The joint program with every decision divisible: a bound at once, and what local money and each item are worth. */
public final class JointRelaxation {
    private JointRelaxation() { }

    /** Empty when the native library is not there or the program was not solved. */
    public static Optional<Relaxation> of(WeekProblem problem) {
        if (!Natives.available()) {
            return Optional.empty();
        }
        JointProgram joint = new JointProgram(problem);
        Program.Loaded loaded = joint.program.load("GLOP", true);
        try {
            return loaded.solver().solve() == MPSolver.ResultStatus.OPTIMAL
                    ? Optional.of(read(problem, joint, DualBound.prices(loaded))) : Optional.empty();
        } finally {
            loaded.solver().delete();
        }
    }

    private static Relaxation read(WeekProblem problem, JointProgram joint, double[] prices) {
        double most = problem.prices().localPrice().toDouble();
        double worth = Math.max(0, Math.min(most, -prices[joint.buying.local.number]));
        double[][] item = new double[problem.items().size()][problem.days()];
        for (int i = 0; i < item.length; i++) {
            for (int d = 0; d < problem.days(); d++) {
                item[i][d] = joint.needs.worth(i, d, prices);
            }
        }
        double[] minimum = new double[joint.buying.minimum.length];
        for (int v = 0; v < minimum.length; v++) {
            minimum[v] = Math.max(0, -prices[joint.buying.minimum[v].number]);
        }
        return new Relaxation(SafeSide.anyMenu(problem, DualBound.of(joint.program, prices)), worth, item, minimum,
                joint.hands.worth(prices));
    }
}
