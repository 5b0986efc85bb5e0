package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import croftboard.need.WeekProblem;
import java.util.OptionalLong;

/**
 * A second bound over all menus, tighter and slower than the relaxation: the joint program with whole dishes, packs and
 * deliveries, as far as the integer solver comes within its limits. Its own plans are not looked at.
 */
public final class JointRoot {
    private JointRoot() { }

    /**
     * Cents that no plan is worth more than, rounded up to the safe side; empty when the native library is not there or
     * nothing was proved.
     *
     * @param choice a known menu to start from
     * @param packs its orders
     * @param millis clock limit; 0: none
     * @param nodes limit of the tree, repeatable; 0: none
     */
    public static OptionalLong bound(WeekProblem problem, int[] choice, int[] packs, long millis, long nodes) {
        if (!Natives.available()) {
            return OptionalLong.empty();
        }
        JointProgram joint = new JointProgram(problem);
        Program.Loaded loaded = joint.program.load("SCIP", false);
        MPSolver solver = loaded.solver();
        try {
            hint(joint, loaded, choice, packs);
            MPSolver.ResultStatus status = WholeNumbers.solve(solver, millis, nodes);
            boolean proved = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
            double bound = proved ? solver.objective().bestBound() : Double.POSITIVE_INFINITY;
            return Math.abs(bound) < WholeNumbers.ANY ? OptionalLong.of(SafeSide.anyMenu(problem, bound))
                    : OptionalLong.empty();
        } finally {
            solver.delete();
        }
    }

    private static void hint(JointProgram joint, Program.Loaded loaded, int[] choice, int[] packs) {
        int[][] dish = joint.menu.dish();
        int dishes = java.util.Arrays.stream(dish).mapToInt(d -> d.length).sum();
        MPVariable[] variables = new MPVariable[dishes + packs.length];
        double[] values = new double[variables.length];
        int n = 0;
        for (int s = 0; s < dish.length; s++) {
            for (int k = 0; k < dish[s].length; k++) {
                variables[n] = loaded.columns()[dish[s][k]];
                values[n++] = choice[s] == k ? 1 : 0;
            }
        }
        for (int o = 0; o < packs.length; o++) {
            variables[n] = loaded.columns()[joint.buying.packs[o]];
            values[n++] = packs[o];
        }
        loaded.solver().setHint(variables, values);
    }
}
