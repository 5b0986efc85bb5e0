package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The best packs for one menu as an integer program, started from a known order, with a proof of how good it is. Only
 * whole numbers of packs are taken from the solver.
 */
final class ExactOrders {
    private final FixedMenu menu;
    private final Program program = new Program();
    private final Purchases buying;

    ExactOrders(FixedMenu menu) {
        this.menu = menu;
        FoodCost food = new FoodCost(menu.problem, program, menu.stapleCents);
        food.fixed(menu.salesCents, menu.stapleCents);
        buying = new Purchases(menu.problem, program, needs(), food);
        buying.receiveWith(new HandsRows(menu.problem, program, menu.work.used()));
        program.constant += menu.cents;
    }

    private Covers needs() {
        SortedMap<Covers.Window, Long> needs = new TreeMap<>();
        for (int i = 0; i < menu.toBuy.length; i++) {
            for (int d = 0; d < menu.toBuy[i].length; d++) {
                if (menu.toBuy[i][d] > 0) {
                    needs.put(new Covers.Window(i, d, d), menu.toBuy[i][d]);
                }
            }
        }
        Covers covers = new Covers(menu.problem, program, new TreeSet<>(needs.keySet()), List.of(), true);
        needs.forEach(covers::need);
        return covers;
    }

    /**
     * @param millis clock limit; 0: none
     * @param nodes limit of the tree, repeatable; 0: none
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
        Program.Loaded loaded = program.load("SCIP", false);
        MPSolver solver = loaded.solver();
        try {
            hint(loaded, start);
            return read(loaded, WholeNumbers.solve(solver, effort.millis, effort.nodes));
        } finally {
            solver.delete();
        }
    }

    private Answer read(Program.Loaded loaded, MPSolver.ResultStatus status) {
        if (status != MPSolver.ResultStatus.OPTIMAL && status != MPSolver.ResultStatus.FEASIBLE) {
            return new Answer(OptionalLong.empty(), Optional.empty(), status == MPSolver.ResultStatus.INFEASIBLE);
        }
        double bound = loaded.solver().objective().bestBound();
        int[] found = new int[buying.packs.length];
        for (int o = 0; o < found.length; o++) {
            found[o] = (int) Math.round(loaded.value(buying.packs[o]));
        }
        OptionalLong most = Math.abs(bound) < WholeNumbers.ANY ? OptionalLong.of(SafeSide.oneMenu(menu.problem, bound))
                : OptionalLong.empty();
        return new Answer(most, Optional.of(found), false);
    }

    private void hint(Program.Loaded loaded, int[] start) {
        MPVariable[] variables = new MPVariable[buying.packs.length + buying.open.length];
        double[] values = new double[variables.length];
        for (int o = 0; o < start.length; o++) {
            variables[o] = loaded.columns()[buying.packs[o]];
            values[o] = start[o];
            if (start[o] > 0) {
                values[start.length + menu.problem.offers().get(o).delivery()] = 1;
            }
        }
        for (int v = 0; v < buying.open.length; v++) {
            variables[start.length + v] = loaded.columns()[buying.open[v]];
        }
        loaded.solver().setHint(variables, values);
    }
}
