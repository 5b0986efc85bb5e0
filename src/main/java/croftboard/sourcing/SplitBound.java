package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * A bound of a program that falls into parts but for a few rows. Those rows are given up for a price; with any prices of
 * the right sign no point of the whole is worth more than the rows' limits at their prices and the best of each part
 * alone. The parts are small enough for whole numbers, which the divisible program of the whole leaves out.
 */
final class SplitBound {
    private static final int NONE = -1;
    private final Program whole;
    private final double[] prices;
    private final int[] part;
    private final Program[] parts;
    private double fixed;

    /**
     * @param part of each column; -1 where it follows from the rows it stands in
     * @param prices of the rows, best those of the divisible program
     */
    SplitBound(Program whole, int[] part, int count, double[] prices) {
        this.whole = whole;
        this.prices = prices;
        this.part = part.clone();
        parts = new Program[count];
        follow();
        build();
    }

    /** Columns without a part join the earliest of those they share a row with. */
    private void follow() {
        int[] joined = part.clone();
        Arrays.setAll(joined, c -> part[c] == NONE ? Integer.MAX_VALUE : part[c]);
        for (Program.Row row : whole.rows) {
            int least = Integer.MAX_VALUE;
            for (int k = 0; k < row.size; k++) {
                least = part[row.column[k]] == NONE ? least : Math.min(least, part[row.column[k]]);
            }
            for (int k = 0; k < row.size; k++) {
                int c = row.column[k];
                joined[c] = part[c] == NONE ? Math.min(joined[c], least) : joined[c];
            }
        }
        Arrays.setAll(part, c -> joined[c] == Integer.MAX_VALUE ? 0 : joined[c]);
    }

    private void build() {
        double[] worth = whole.columns.stream().mapToDouble(Program.Column::cents).toArray();
        fixed = whole.constant;
        for (Program.Row row : whole.rows) {
            if (partOf(row) == NONE) {
                double price = DualBound.usable(row, prices[row.number]);
                fixed += price > 0 ? price * row.most : price < 0 ? price * row.least : 0;
                for (int k = 0; k < row.size; k++) {
                    worth[row.column[k]] -= price * row.factor[k];
                }
            }
        }
        int[] number = new int[part.length];
        for (int p = 0; p < parts.length; p++) {
            parts[p] = new Program();
        }
        for (int c = 0; c < part.length; c++) {
            Program.Column column = whole.columns.get(c);
            number[c] = parts[part[c]].column(column.least(), column.most(), worth[c], column.whole());
        }
        for (Program.Row row : whole.rows) {
            int p = partOf(row);
            if (p != NONE && row.size > 0) {
                Program.Row own = parts[p].row(row.least, row.most);
                for (int k = 0; k < row.size; k++) {
                    own.add(number[row.column[k]], row.factor[k]);
                }
            }
        }
    }

    private int partOf(Program.Row row) {
        int p = row.size == 0 ? 0 : part[row.column[0]];
        for (int k = 1; k < row.size; k++) {
            if (part[row.column[k]] != p) {
                return NONE;
            }
        }
        return p;
    }

    int parts() {
        return parts.length;
    }

    /** What the rows given up add to the parts. */
    double fixed() {
        return fixed;
    }

    /** No point of the part is worth more; infinite when the solver told nothing. Parts may run side by side. */
    double bound(int p, long millis, long nodes, BooleanSupplier stop) {
        Program.Loaded loaded = parts[p].load("SCIP", false);
        MPSolver solver = loaded.solver();
        WholeNumbers.Watch watch = new WholeNumbers.Watch(solver, stop);
        try {
            MPSolver.ResultStatus status = WholeNumbers.bound(solver, millis, nodes);
            boolean told = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
            double bound = told ? solver.objective().bestBound() : Double.POSITIVE_INFINITY;
            return Math.abs(bound) < WholeNumbers.ANY ? bound : Double.POSITIVE_INFINITY;
        } finally {
            watch.close();
            solver.delete();
        }
    }
}
