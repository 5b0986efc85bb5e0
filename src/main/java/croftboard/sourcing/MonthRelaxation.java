package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import croftboard.need.WeekProblem;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The divisible joint program of several weeks at once: the same bound as {@link JointRelaxation}, with flows in place of
 * covers ({@link Flows}) and the dual method, which on four weeks takes two thirds of the primal one's time.
 */
public final class MonthRelaxation {
    private MonthRelaxation() { }

    /**
     * @param boundCents no plan of these weeks is worth more; rounded up to the safe side
     * @param localWorth dollars that one more dollar spent locally is worth, 0 to the price of a missing dollar
     */
    public record Found(long boundCents, double localWorth) { }

    /**
     * Empty when the native library is not there or the program was not solved in time.
     *
     * @param millis clock limit; 0: none
     */
    public static Optional<Found> of(WeekProblem problem, long millis) {
        if (!Natives.available()) {
            return Optional.empty();
        }
        Program program = new Program();
        SortedSet<Covers.Window> windows = new TreeSet<>();
        problem.slots().forEach(s -> s.candidates().forEach(c -> c.loose()
                .forEach(n -> windows.add(new Covers.Window(n.item(), n.from(), n.to())))));
        java.util.List<WeekProblem.ItemStock> stock = new java.util.ArrayList<>(problem.stock());
        stock.addAll(problem.looseStock());
        Flows flows = new Flows(problem, program, windows, stock);
        FoodCost food = new FoodCost(problem, program, JointProgram.staples(problem));
        Purchases buying = new Purchases(problem, program, flows, food);
        HandsRows hands = new HandsRows(problem, program, HandsRows.nothing(problem));
        new MenuRows(problem, program, flows, hands, food).build();
        buying.receiveWith(hands);
        Program.Loaded loaded = program.load("GLOP", true);
        try {
            return solve(loaded.solver(), millis)
                    ? Optional.of(read(problem, program, buying, DualBound.prices(loaded))) : Optional.empty();
        } finally {
            loaded.solver().delete();
        }
    }

    private static boolean solve(MPSolver solver, long millis) {
        if (millis > 0) {
            solver.setTimeLimit(millis);
        }
        MPSolverParameters dual = new MPSolverParameters();
        dual.setIntegerParam(MPSolverParameters.IntegerParam.LP_ALGORITHM,
                MPSolverParameters.LpAlgorithmValues.DUAL.swigValue());
        return solver.solve(dual) == MPSolver.ResultStatus.OPTIMAL;
    }

    private static Found read(WeekProblem problem, Program program, Purchases buying, double[] prices) {
        double most = problem.prices().localPrice().toDouble();
        return new Found(SafeSide.anyMenu(problem, DualBound.of(program, prices)),
                Math.max(0, Math.min(most, -prices[buying.local.number])));
    }
}
