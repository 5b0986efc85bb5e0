package croftboard.sourcing;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear or integer program to be maximised, as plain numbers; handed to a solver only when whole. Every column has
 * finite limits, so that a bound can be recomputed from any duals ({@link DualBound}).
 */
final class Program {
    static final double INF = Double.POSITIVE_INFINITY;
    final List<Column> columns = new ArrayList<>();
    final List<Row> rows = new ArrayList<>();
    double constant;

    /** @param cents worth of one unit. */
    record Column(double least, double most, double cents, boolean whole) { }

    /** A sum of columns that lies between two limits, one of which may be infinite. */
    static final class Row {
        final int number;
        double least;
        double most;
        int size;
        int[] column = new int[8];
        double[] factor = new double[8];

        private Row(int number, double least, double most) {
            this.number = number;
            this.least = least;
            this.most = most;
        }

        /** Terms of one column add up. */
        Row add(int col, double times) {
            if (times == 0) {
                return this;
            }
            if (size == column.length) {
                column = Arrays.copyOf(column, 2 * size);
                factor = Arrays.copyOf(factor, 2 * size);
            }
            column[size] = col;
            factor[size++] = times;
            return this;
        }
    }

    int real(double least, double most, double cents) {
        return column(least, most, cents, false);
    }

    int whole(double least, double most, double cents) {
        return column(least, most, cents, true);
    }

    int column(double least, double most, double cents, boolean whole) {
        columns.add(new Column(least, Math.max(least, most), cents, whole));
        return columns.size() - 1;
    }

    /** Adds to the worth of one unit of a column. */
    void worth(int col, double cents) {
        Column c = columns.get(col);
        columns.set(col, new Column(c.least, c.most, c.cents + cents, c.whole));
    }

    Row atMost(double most) {
        return row(-INF, most);
    }

    Row atLeast(double least) {
        return row(least, INF);
    }

    Row row(double least, double most) {
        rows.add(new Row(rows.size(), least, most));
        return rows.get(rows.size() - 1);
    }

    /** The program inside a solver. Every row and column has a name of its own, as some solvers demand. */
    record Loaded(MPSolver solver, MPVariable[] columns, MPConstraint[] rows) {
        double value(int column) {
            return columns[column].solutionValue();
        }
    }

    /** @param divisible regard no column as whole */
    Loaded load(String solverName, boolean divisible) {
        MPSolver solver = MPSolver.createSolver(solverName);
        MPObjective worth = solver.objective();
        worth.setMaximization();
        worth.setOffset(constant);
        MPVariable[] variables = new MPVariable[columns.size()];
        for (int c = 0; c < variables.length; c++) {
            Column col = columns.get(c);
            variables[c] = solver.makeVar(col.least, col.most, col.whole && !divisible, "v" + c);
            if (col.cents != 0) {
                worth.setCoefficient(variables[c], col.cents);
            }
        }
        MPConstraint[] constraints = new MPConstraint[rows.size()];
        double[] sum = new double[variables.length];
        for (int r = 0; r < constraints.length; r++) {
            constraints[r] = load(solver, rows.get(r), variables, sum);
        }
        return new Loaded(solver, variables, constraints);
    }

    private static MPConstraint load(MPSolver solver, Row row, MPVariable[] variables, double[] sum) {
        MPConstraint constraint = solver.makeConstraint(row.least, row.most, "r" + row.number);
        for (int k = 0; k < row.size; k++) {
            sum[row.column[k]] += row.factor[k];
        }
        for (int k = 0; k < row.size; k++) {
            if (sum[row.column[k]] != 0) {
                constraint.setCoefficient(variables[row.column[k]], sum[row.column[k]]);
                sum[row.column[k]] = 0;
            }
        }
        return constraint;
    }
}
