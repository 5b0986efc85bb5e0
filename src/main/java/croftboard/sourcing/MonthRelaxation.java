package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The divisible joint program of several weeks at once: the same bound as {@link JointRelaxation}, with flows in place of
 * covers ({@link Flows}) and the dual method, which on four weeks takes two thirds of the primal one's time.
 */
public final class MonthRelaxation {
    private final WeekProblem problem;
    private final Program program = new Program();
    private final Purchases buying;
    private double[] prices;

    private MonthRelaxation(WeekProblem problem) {
        this.problem = problem;
        SortedSet<Covers.Window> windows = new TreeSet<>();
        problem.slots().forEach(s -> s.candidates().forEach(c -> c.loose()
                .forEach(n -> windows.add(new Covers.Window(n.item(), n.from(), n.to())))));
        List<WeekProblem.ItemStock> stock = new ArrayList<>(problem.stock());
        stock.addAll(problem.looseStock());
        Flows flows = new Flows(problem, program, windows, stock);
        FoodCost food = new FoodCost(problem, program, JointProgram.staples(problem));
        buying = new Purchases(problem, program, flows, food);
        HandsRows hands = new HandsRows(problem, program, HandsRows.nothing(problem));
        new MenuRows(problem, program, flows, hands, food).build();
        buying.receiveWith(hands);
    }

    /**
     * Empty when the native library is not there or the program was not solved in time.
     *
     * @param millis clock limit; 0: none
     */
    public static Optional<MonthRelaxation> of(WeekProblem problem, long millis) {
        return Natives.available() ? Optional.of(new MonthRelaxation(problem)).filter(m -> m.solve(millis)) : Optional.empty();
    }

    private boolean solve(long millis) {
        Program.Loaded loaded = program.load("GLOP", true);
        MPSolver solver = loaded.solver();
        try {
            if (millis > 0) {
                solver.setTimeLimit(millis);
            }
            MPSolverParameters dual = new MPSolverParameters();
            dual.setIntegerParam(MPSolverParameters.IntegerParam.LP_ALGORITHM,
                    MPSolverParameters.LpAlgorithmValues.DUAL.swigValue());
            boolean solved = solver.solve(dual) == MPSolver.ResultStatus.OPTIMAL;
            prices = solved ? DualBound.prices(loaded) : new double[0];
            return solved;
        } finally {
            solver.delete();
        }
    }

    /** No plan of these weeks is worth more; rounded up to the safe side. */
    public long boundCents() {
        return SafeSide.anyMenu(problem, DualBound.of(program, prices));
    }

    /** Dollars that one more dollar spent locally is worth, 0 to the price of a missing dollar. */
    public double localWorth() {
        return Math.max(0, Math.min(problem.prices().localPrice().toDouble(), -prices[buying.local.number]));
    }
}
