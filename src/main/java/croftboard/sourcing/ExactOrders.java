package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The best packs for one menu as an integer program, started from a known order, with a proof of how good it is. First
 * with packs limited to what can be of use, which proves fast; where its best answer needs more packs than that to reach
 * a minimum, again without the limits. Only whole numbers of packs are taken from the solver.
 */
final class ExactOrders {
    private static final double MONEY = 0.5;
    private final FixedMenu menu;

    ExactOrders(FixedMenu menu) {
        this.menu = menu;
    }

    /**
     * @param millis clock limit; 0: none
     * @param nodes limit of each tree, repeatable; 0: none
     */
    record Effort(long millis, long nodes) { }

    /**
     * @param mostCents value of a plan with this menu that no order passes, rounded up to the safe side; empty when
     *     nothing was proved
     * @param packs the solver's, not judged yet; empty when it found none
     * @param impossible no order keeps the musts
     */
    record Answer(OptionalLong mostCents, Optional<int[]> packs, boolean impossible) { }

    /** @param start packs to start from */
    Answer solve(int[] start, Effort effort) {
        long began = System.nanoTime();
        Run tight = new Run(true).solve(start, effort);
        long left = effort.millis - (System.nanoTime() - began) / 1_000_000;
        if (!tight.finished || !tight.toppedUp || effort.millis > 0 && left < 1) {
            return tight.answer();
        }
        Run all = new Run(false).solve(start, new Effort(effort.millis > 0 ? left : 0, effort.nodes));
        return all.bound < tight.bound ? all.answer()
                : new Answer(tight.answer().mostCents, all.packs, all.impossible);
    }

    /** One program, solved once. */
    private final class Run {
        private final Program program = new Program();
        private final Purchases buying;
        private final int[] topUp;
        private double bound = Double.POSITIVE_INFINITY;
        private Optional<int[]> packs = Optional.empty();
        private boolean finished;
        private boolean toppedUp;
        private boolean impossible;

        Run(boolean tight) {
            int[] limit = tight ? PackLimits.useful(menu.problem, menu.toBuy) : PackLimits.all(menu.problem);
            Lots lots = new Lots(menu.problem, program, limit, List.of());
            for (int i = 0; i < menu.toBuy.length; i++) {
                for (int d = 0; d < menu.toBuy[i].length; d++) {
                    if (menu.toBuy[i][d] > 0) {
                        lots.need(new Lots.Window(i, d, d), menu.toBuy[i][d] / 1000.0);
                    }
                }
            }
            FoodCost food = new FoodCost(menu.problem, program, menu.stapleCents);
            food.fixed(menu.salesCents, menu.stapleCents);
            buying = new Purchases(menu.problem, program, lots, limit, food);
            buying.receiveWith(new HandsRows(menu.problem, program, menu.work.used()));
            topUp = tight ? buying.topUp() : new int[0];
            program.constant = menu.cents;
        }

        Run solve(int[] start, Effort effort) {
            Program.Loaded loaded = program.load("SCIP", false);
            MPSolver solver = loaded.solver();
            try {
                hint(loaded, start);
                solver.setSolverSpecificParametersAsString("randomization/randomseedshift = 7\n"
                        + "parallel/maxnthreads = 1\n" + (effort.nodes > 0 ? "limits/nodes = " + effort.nodes + "\n" : ""));
                if (effort.millis > 0) {
                    solver.setTimeLimit(effort.millis);
                }
                MPSolverParameters exact = new MPSolverParameters();
                exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
                read(loaded, solver.solve(exact));
                return this;
            } finally {
                solver.delete();
            }
        }

        private void read(Program.Loaded loaded, MPSolver.ResultStatus status) {
            impossible = status == MPSolver.ResultStatus.INFEASIBLE;
            finished = status == MPSolver.ResultStatus.OPTIMAL;
            if (finished || status == MPSolver.ResultStatus.FEASIBLE) {
                bound = loaded.solver().objective().bestBound();
                int[] found = new int[buying.packs.length];
                for (int o = 0; o < found.length; o++) {
                    found[o] = (int) Math.round(loaded.value(buying.packs[o]));
                }
                packs = Optional.of(found);
                for (int column : topUp) {
                    toppedUp |= loaded.value(column) > MONEY;
                }
            }
        }

        private void hint(Program.Loaded loaded, int[] start) {
            MPVariable[] variables = new MPVariable[buying.packs.length + buying.open.length];
            double[] values = new double[variables.length];
            for (int o = 0; o < start.length; o++) {
                variables[o] = loaded.columns()[buying.packs[o]];
                values[o] = Math.min(start[o], program.columns.get(buying.packs[o]).most());
                if (start[o] > 0) {
                    values[start.length + menu.problem.offers().get(o).delivery()] = 1;
                }
            }
            for (int v = 0; v < buying.open.length; v++) {
                variables[start.length + v] = loaded.columns()[buying.open[v]];
            }
            loaded.solver().setHint(variables, values);
        }

        Answer answer() {
            boolean proved = Math.abs(bound) < 1e15;
            return new Answer(proved ? OptionalLong.of(SafeSide.oneMenu(menu.problem, bound)) : OptionalLong.empty(),
                    packs, impossible);
        }
    }
}
