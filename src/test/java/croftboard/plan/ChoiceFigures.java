package croftboard.plan;

import croftboard.need.ChoiceWeek;
import croftboard.need.WeekProblem;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;

/**
 * Figures of plain choice weeks, not a test: how near plans come to the bound over all menus.
 * Arguments: a kind, {@code 5s} or {@code 20000} (steps) for each column, the greatest seed.
 */
final class ChoiceFigures {
    private ChoiceFigures() { }

    private record Shape(int lines, int dishes, boolean uneven, int ovens) { }

    private static final List<Shape> SHAPES = List.of(new Shape(5, 5, false, 5), new Shape(10, 5, false, 5),
            new Shape(15, 10, false, 10), new Shape(20, 10, false, 10), new Shape(25, 10, false, 10),
            new Shape(30, 10, false, 10), new Shape(50, 10, true, 10), new Shape(50, 20, true, 10),
            new Shape(100, 10, false, 10), new Shape(250, 10, false, 10), new Shape(400, 10, false, 10));

    public static void main(String[] args) {
        int seeds = Integer.parseInt(args[args.length - 1]);
        ChoiceWeek.Kind kind = ChoiceWeek.Kind.valueOf(args[0]);
        for (Shape s : SHAPES) {
            for (long seed = 1; seed <= seeds; seed++) {
                ChoiceWeek week = ChoiceWeek.of(kind, s.lines, s.dishes, s.uneven, s.ovens, seed);
                StringBuilder row = new StringBuilder("| ").append(week.name());
                for (int n = 1; n < args.length - 1; n++) {
                    row.append(" | ").append(figures(week.problem(), args[n]));
                }
                System.out.println(row.append(" |"));
            }
        }
    }

    private static String figures(WeekProblem week, String effort) {
        Budget budget = effort.endsWith("s")
                ? Budget.of(Duration.ofSeconds(Long.parseLong(effort.substring(0, effort.length() - 1))), OptionalLong.empty())
                : Budget.of(Duration.ZERO, OptionalLong.of(Long.parseLong(effort)));
        int[] nothing = new int[week.slots().size()];
        Arrays.fill(nothing, -1);
        long began = System.nanoTime();
        long cpu = cpu();
        WeekSolver.Solved solved = new WeekSolver(week, budget, 1, new Deaf(), () -> false).solve(nothing);
        long value = solved.orders().valueCents();
        long bound = solved.bestAtAll().orElseThrow();
        return String.format(Locale.ROOT, "%.0f | %.0f | %s | %.1f s (cpu %.1f)", value / 100.0, bound / 100.0,
                bound == value ? "proved" : String.format(Locale.ROOT, "%.4f %%", 100.0 * (bound - value) / bound),
                (System.nanoTime() - began) / 1e9, (cpu() - cpu) / 1e9);
    }

    private static long cpu() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private static final class Deaf implements WeekSolver.Listener {
        @Override
        public void doing(String what) {
            // figures are taken at the end
        }

        @Override
        public void better(WeekSolver.Solved solved) {
            // figures are taken at the end
        }
    }
}
