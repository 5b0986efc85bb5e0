package croftboard.sourcing;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;

/** A linear or integer program to be maximised; names every row and column, as some solvers demand. */
final class Program {
    static final double INF = Double.POSITIVE_INFINITY;
    private final MPSolver solver;
    private final MPObjective worth;
    private int columns;
    private int rows;

    private Program(MPSolver solver) {
        this.solver = solver;
        this.worth = solver.objective();
        worth.setMaximization();
    }

    static Program linear() {
        return new Program(MPSolver.createSolver("GLOP"));
    }

    static Program whole() {
        return new Program(MPSolver.createSolver("SCIP"));
    }

    MPSolver solver() {
        return solver;
    }

    /** A variable and what one unit of it is worth in cents. */
    MPVariable real(double least, double most, double each) {
        MPVariable v = solver.makeNumVar(least, most, "v" + columns++);
        if (each != 0) {
            worth.setCoefficient(v, each);
        }
        return v;
    }

    MPVariable integer(double least, double most, double each) {
        MPVariable v = solver.makeIntVar(least, most, "v" + columns++);
        if (each != 0) {
            worth.setCoefficient(v, each);
        }
        return v;
    }

    void constant(double cents) {
        worth.setOffset(worth.offset() + cents);
    }

    MPConstraint row(double least, double most) {
        return solver.makeConstraint(least, most, "r" + rows++);
    }

    static void add(MPConstraint row, MPVariable v, double factor) {
        if (row != null && factor != 0) {
            row.setCoefficient(v, row.getCoefficient(v) + factor);
        }
    }
}
