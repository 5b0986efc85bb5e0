package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * A second bound over all menus, tighter and slower than the relaxation: the joint program with whole dishes, packs and
 * deliveries, as far as the integer solver comes within its limits. The menu it may come upon is worth a look where food
 * is a small matter; its packs are not looked at.
 */
public final class JointRoot {
    private JointRoot() { }

    /**
     * @param boundCents no plan is worth more, rounded up to the safe side; empty when nothing was proved
     * @param menu candidate of each slot, -1 for none; empty when the solver came upon none but the one it started from
     */
    public record Found(OptionalLong boundCents, Optional<int[]> menu) {
        static final Found NOTHING = new Found(OptionalLong.empty(), Optional.empty());
    }

    /** The bound alone. See {@link #look}. */
    public static OptionalLong bound(WeekProblem problem, int[] choice, int[] packs, long millis, long nodes) {
        return look(problem, choice, packs, millis, nodes, () -> false).boundCents();
    }

    /**
     * Nothing when the native library is not there.
     *
     * @param choice a known menu to start from
     * @param packs its orders
     * @param millis clock limit; 0: none
     * @param nodes limit of the tree, repeatable; 0: none
     * @param stop asked now and then; true ends with what is proved so far
     */
    public static Found look(WeekProblem problem, int[] choice, int[] packs, long millis, long nodes,
            BooleanSupplier stop) {
        if (!Natives.available()) {
            return Found.NOTHING;
        }
        JointProgram joint = new JointProgram(problem);
        Program.Loaded loaded = joint.program.load("SCIP", false);
        MPSolver solver = loaded.solver();
        try {
            hint(joint, loaded, choice, packs);
            MPSolver.ResultStatus status = solve(problem, solver, millis, nodes, stop);
            boolean proved = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
            double bound = proved ? solver.objective().bestBound() : Double.POSITIVE_INFINITY;
            return new Found(Math.abs(bound) < WholeNumbers.ANY ? OptionalLong.of(SafeSide.anyMenu(problem, bound))
                    : OptionalLong.empty(), proved ? Optional.of(menu(joint, loaded)).filter(m -> !Arrays.equals(m, choice))
                            : Optional.empty());
        } finally {
            solver.delete();
        }
    }

    /** The bound is all that is wanted: searches of their own find the menus, also where nothing is bought. */
    private static MPSolver.ResultStatus solve(WeekProblem problem, MPSolver solver, long millis, long nodes,
            BooleanSupplier stop) {
        WholeNumbers.Watch watch = new WholeNumbers.Watch(solver, stop);
        try {
            return needsFood(problem) ? WholeNumbers.bound(solver, millis, nodes)
                    : WholeNumbers.choose(solver, millis, nodes);
        } finally {
            watch.close();
        }
    }

    private static boolean needsFood(WeekProblem problem) {
        return problem.slots().stream().flatMap(s -> s.candidates().stream()).anyMatch(c -> !c.loose().isEmpty());
    }

    private static int[] menu(JointProgram joint, Program.Loaded loaded) {
        int[][] dish = joint.menu.dish();
        int[] menu = new int[dish.length];
        for (int s = 0; s < menu.length; s++) {
            menu[s] = -1;
            for (int k = 0; k < dish[s].length; k++) {
                menu[s] = loaded.value(dish[s][k]) > 0.5 ? k : menu[s];
            }
        }
        return menu;
    }

    private static void hint(JointProgram joint, Program.Loaded loaded, int[] choice, int[] packs) {
        int[][] dish = joint.menu.dish();
        int dishes = Arrays.stream(dish).mapToInt(d -> d.length).sum();
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
