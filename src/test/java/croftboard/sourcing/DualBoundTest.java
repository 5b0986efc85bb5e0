package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DualBoundTest {
    private static final int MOST = 3;

    @Test
    void anyPrices_boundEveryPointOfTheProgram() {
        int held = 0;
        for (long seed = 1; seed <= 300; seed++) {
            Random g = new Random(seed);
            Program program = random(g);
            double best = best(program, new int[program.columns.size()], 0);
            for (int n = 0; n < 20 && best > Double.NEGATIVE_INFINITY; n++) {
                double[] prices = g.doubles(program.rows.size(), -3, 3).toArray();
                assertThat(DualBound.of(program, prices)).as("seed %d", seed).isGreaterThanOrEqualTo(best - 1e-9);
                held++;
            }
        }
        assertThat(held).isGreaterThan(1000);
    }

    @Test
    void pricesOfAnOptimum_giveTheOptimum() {
        Program program = new Program();
        int x = program.real(0, 10, 3);
        int y = program.real(0, 10, 2);
        program.atMost(4).add(x, 1).add(y, 1);
        program.atMost(5).add(x, 2).add(y, 1);
        assertThat(DualBound.of(program, new double[] {1, 1})).isEqualTo(9);
    }

    @Test
    void pricesOfTheWrongSign_countAsNothing() {
        Program program = new Program();
        int x = program.real(0, 2, 1);
        program.atMost(1).add(x, 1);
        assertThat(DualBound.of(program, new double[] {-5})).isEqualTo(2);
        assertThat(DualBound.of(program, new double[] {Double.NaN})).isEqualTo(2);
    }

    private static Program random(Random g) {
        Program program = new Program();
        program.constant = g.nextInt(10) - 5;
        for (int c = 0; c < 4; c++) {
            program.whole(0, MOST, g.nextInt(9) - 3);
        }
        for (int r = 0; r < 3; r++) {
            int least = g.nextInt(6) - 4;
            Program.Row row = switch (g.nextInt(3)) {
                case 0 -> program.atMost(least + 6);
                case 1 -> program.atLeast(least);
                default -> program.row(least, least + 5);
            };
            for (int k = 0; k < 5; k++) {
                row.add(g.nextInt(4), g.nextInt(5) - 1);
            }
        }
        return program;
    }

    private static double best(Program program, int[] point, int column) {
        if (column < point.length) {
            double best = Double.NEGATIVE_INFINITY;
            for (point[column] = 0; point[column] <= MOST; point[column]++) {
                best = Math.max(best, best(program, point, column + 1));
            }
            return best;
        }
        for (Program.Row row : program.rows) {
            double sum = 0;
            for (int k = 0; k < row.size; k++) {
                sum += row.factor[k] * point[row.column[k]];
            }
            if (sum < row.least || sum > row.most) {
                return Double.NEGATIVE_INFINITY;
            }
        }
        double worth = program.constant;
        for (int c = 0; c < point.length; c++) {
            worth += program.columns.get(c).cents() * point[c];
        }
        return worth;
    }
}
