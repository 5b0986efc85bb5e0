package croftboard.sourcing;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import croftboard.need.WeekProblem;
import java.util.Optional;

/**
 * The best packs for one menu as an integer program, started from a known order, with a proof of how good it is.
 * Packs are limited to what can be of use (see {@link BuyingRows}); only whole numbers are taken from the solver.
 */
final class ExactOrders {
    private final WeekProblem problem;
    private final long[][] need;

    /** @param need milligrams by item and day, what stock covers already taken off */
    ExactOrders(WeekProblem problem, long[][] need) {
        this.problem = problem;
        this.need = need;
    }

    /**
     * @param boundCents value of purchases and what hangs on them: nothing is above it (the menu's own money is not in it)
     * @param packs empty when the program found none
     */
    record Found(double boundCents, Optional<int[]> packs) { }

    /**
     * What the menu brings to the program: the food cost promise needs sales and staples.
     *
     * @param salesCents expected sales with events
     */
    record MenuMoney(long salesCents, long stapleCents) { }

    /** @param millis clock limit; 0: none. @param nodes limit of the tree, repeatable; 0: none */
    Optional<Found> solve(int[] start, MenuMoney menu, long millis, long nodes) {
        if (!Natives.available()) {
            return Optional.empty();
        }
        Program program = Program.whole();
        BuyingRows rows = new BuyingRows(problem, program, useful(), true, java.util.List.of());
        for (int i = 0; i < need.length; i++) {
            for (int d = 0; d < problem.days(); d++) {
                if (need[i][d] > 0) {
                    MPConstraint row = rows.needRow(i, d, d);
                    row.setLb(need[i][d] / 1000.0);
                }
            }
        }
        if (rows.food != null) {
            rows.food.setUb(problem.prices().foodCostAtMost().toDouble() * menu.salesCents - menu.stapleCents);
        }
        rows.closeFoodCost();
        hint(program.solver(), rows, start);
        return run(program.solver(), rows, millis, nodes);
    }

    private Optional<Found> run(MPSolver solver, BuyingRows rows, long millis, long nodes) {
        solver.setSolverSpecificParametersAsString("randomization/randomseedshift = 7\nparallel/maxnthreads = 1\n"
                + (nodes > 0 ? "limits/nodes = " + nodes + "\n" : ""));
        if (millis > 0) {
            solver.setTimeLimit(millis);
        }
        MPSolverParameters exact = new MPSolverParameters();
        exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        MPSolver.ResultStatus status = solver.solve(exact);
        boolean found = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
        if (status == MPSolver.ResultStatus.INFEASIBLE || status == MPSolver.ResultStatus.ABNORMAL) {
            return Optional.empty();
        }
        double bound = solver.objective().bestBound();
        return Optional.of(new Found(bound, found ? Optional.of(rows.packsFound()) : Optional.empty()));
    }

    private void hint(MPSolver solver, BuyingRows rows, int[] start) {
        MPVariable[] variables = new MPVariable[start.length + rows.open.length];
        double[] values = new double[variables.length];
        for (int o = 0; o < start.length; o++) {
            variables[o] = rows.packs[o];
            values[o] = start[o];
            if (start[o] > 0) {
                values[start.length + problem.offers().get(o).delivery()] = 1;
            }
        }
        System.arraycopy(rows.open, 0, variables, start.length, rows.open.length);
        solver.setHint(variables, values);
    }

    /** Packs of each offer that the needs within its life can use at all. */
    private int[] useful() {
        int[] most = new int[problem.offers().size()];
        for (int o = 0; o < most.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            int day = problem.deliveries().get(offer.delivery()).day();
            int last = Math.min(problem.days() - 1, day + problem.items().get(offer.item()).lifeDays());
            long mg = 0;
            for (int d = day; d <= last; d++) {
                mg += need[offer.item()][d];
            }
            most[o] = (int) Math.min(offer.maxPacks(), (mg + offer.packMg() - 1) / offer.packMg());
        }
        return most;
    }
}
