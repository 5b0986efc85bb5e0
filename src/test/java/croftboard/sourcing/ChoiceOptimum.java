package croftboard.sourcing;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import croftboard.need.ChoiceWeek;
import java.util.ArrayList;
import java.util.List;

/** The best there is of a small choice week, by another solver than the program's own, which counts in whole numbers. */
public final class ChoiceOptimum {
    private ChoiceOptimum() { }

    /** Dollars; every line has a dish. */
    public static long of(ChoiceWeek week) {
        if (!Natives.available()) {
            throw new IllegalStateException("no solver on this machine");
        }
        CpModel model = new CpModel();
        LinearExprBuilder worth = LinearExpr.newBuilder();
        LinearExprBuilder[] used = new LinearExprBuilder[week.most().length];
        for (int r = 0; r < used.length; r++) {
            used[r] = LinearExpr.newBuilder();
        }
        for (int s = 0; s < week.worth().length; s++) {
            List<Literal> one = new ArrayList<>();
            for (int k = 0; k < week.worth()[s].length; k++) {
                Literal dish = model.newBoolVar("");
                one.add(dish);
                worth.addTerm(dish, week.worth()[s][k]);
                for (int r = 0; r < used.length; r++) {
                    used[r].addTerm(dish, week.units()[s][k][r]);
                }
            }
            model.addExactlyOne(one);
        }
        for (int r = 0; r < used.length; r++) {
            model.addLessOrEqual(used[r], week.most()[r]);
        }
        model.maximize(worth);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1);
        if (solver.solve(model) != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("not solved: " + week.name());
        }
        return Math.round(solver.objectiveValue());
    }
}
