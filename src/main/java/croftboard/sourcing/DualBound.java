package croftboard.sourcing;

import java.util.Arrays;

/**
 * An upper bound of a {@link Program} from any row prices. Weak duality needs no optimal prices and no solver's word:
 * for prices y of the right sign, no point is worth more than sum(y x limit of the row) + sum over columns of
 * (worth - y x column) at the better end of the column's limits. So a solver's tolerances cannot make the bound wrong,
 * only a little loose. Doubles add an error near 1e-12 of the sums, which {@link SafeSide} covers.
 */
final class DualBound {
    private DualBound() { }

    /** @param prices of the rows; positive on upper limits, negative on lower ones; others are taken as 0 */
    static double of(Program program, double[] prices) {
        double[] left = new double[program.columns.size()];
        for (int c = 0; c < left.length; c++) {
            left[c] = program.columns.get(c).cents();
        }
        double bound = program.constant;
        for (Program.Row row : program.rows) {
            double price = usable(row, prices[row.number]);
            bound += price > 0 ? price * row.most : price < 0 ? price * row.least : 0;
            for (int k = 0; k < row.size && price != 0; k++) {
                left[row.column[k]] -= price * row.factor[k];
            }
        }
        for (int c = 0; c < left.length; c++) {
            Program.Column column = program.columns.get(c);
            bound += left[c] * (left[c] > 0 ? column.most() : column.least());
        }
        return bound;
    }

    private static double usable(Program.Row row, double price) {
        boolean limit = price > 0 ? row.most < Program.INF : row.least > -Program.INF;
        return limit && Double.isFinite(price) ? price : 0;
    }

    static double[] prices(Program.Loaded loaded) {
        return Arrays.stream(loaded.rows()).mapToDouble(r -> r.dualValue()).toArray();
    }
}
