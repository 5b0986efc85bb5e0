package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import croftboard.need.ServiceWeeks;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;

/**
 * The divisible joint program of several weeks at once: the same bound as {@link JointRelaxation}, with flows in place of
 * covers ({@link Flows}) and the dual method, which on four weeks takes two thirds of the primal one's time. From its
 * prices a tighter bound can be had, week by week in whole numbers ({@link SplitBound}).
 */
public final class MonthRelaxation {
    private final WeekProblem problem;
    private final Program program = new Program();
    private final Purchases buying;
    private final MenuRows menu;
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
        menu = new MenuRows(problem, program, flows, hands, food);
        menu.build();
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

    /**
     * A bound no looser than {@link #boundCents()}: what ties the weeks together (gaps across weeks, carried stock, the
     * local share) at its prices here, each week alone in whole numbers.
     *
     * @param millis clock limit of each week; 0: none
     * @param nodes limit of each week's tree, repeatable; 0: none
     * @param threads where the weeks are reckoned
     */
    public long tighterCents(long millis, long nodes, Executor threads, BooleanSupplier stop) {
        ServiceWeeks weeks = new ServiceWeeks(problem);
        SplitBound split = new SplitBound(program, weekOfColumn(weeks), weeks.count(), prices);
        List<CompletableFuture<Double>> parts = new ArrayList<>();
        for (int w = 0; w < split.parts(); w++) {
            int own = w;
            parts.add(CompletableFuture.supplyAsync(() -> split.bound(own, millis, nodes, stop), threads));
        }
        double sum = split.fixed();
        for (CompletableFuture<Double> p : parts) {
            sum += p.join();
        }
        return Double.isFinite(sum) ? Math.min(boundCents(), SafeSide.anyMenu(problem, sum)) : boundCents();
    }

    private int[] weekOfColumn(ServiceWeeks weeks) {
        int[] week = new int[program.columns.size()];
        Arrays.fill(week, -1);
        for (int s = 0; s < menu.dish().length; s++) {
            for (int x : menu.dish()[s]) {
                week[x] = weeks.ofSlot(s);
            }
        }
        for (int v = 0; v < buying.open.length; v++) {
            week[buying.open[v]] = weeks.ofDay(problem.deliveries().get(v).day());
        }
        for (int o = 0; o < buying.packs.length; o++) {
            week[buying.packs[o]] = weeks.ofDay(problem.deliveries().get(problem.offers().get(o).delivery()).day());
        }
        return week;
    }
}
