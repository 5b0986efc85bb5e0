package croftboard.bench;

import croftboard.need.WeekProblem;
import croftboard.plan.Engine;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Value against time on one week, a line for each way of planning; {@code docs/value-over-time.svg}. */
final class ValueChart {
    private static final String FILE = "value-over-time.svg";
    private static final double LOWEST = .7;
    private final String name;
    private final double seconds;
    private final List<Plot.Line> lines = new ArrayList<>();
    private final List<double[]> ends = new ArrayList<>();
    private List<double[]> longest = List.of();
    private double best;
    private double bound = Double.POSITIVE_INFINITY;

    ValueChart(WeekProblem problem, int seconds) {
        this.name = problem.name();
        this.seconds = seconds;
    }

    void flat(String label, Optional<Judged> plan) {
        plan.ifPresent(p -> lines.add(new Plot.Line(label,
                List.of(new double[] {0, p.cents() / 100.0}, new double[] {seconds, p.cents() / 100.0}), false)));
    }

    void steps(String label, List<SolverLog.Step> steps) {
        if (!steps.isEmpty()) {
            lines.add(new Plot.Line(label, stairs(steps.stream()
                    .map(s -> new double[] {s.seconds(), s.cents() / 100}).toList()), false));
        }
    }

    /** Called for each time given to the program; the longest gives the line. */
    void ours(Solved solved) {
        double end = solved.answer().moments().isEmpty() ? 0
                : solved.answer().moments().get(solved.answer().moments().size() - 1).seconds();
        ends.add(new double[] {Math.min(end, seconds), solved.value() / 100.0});
        best = Math.max(best, solved.value() / 100.0);
        bound = Math.min(bound, solved.answer().bestAtAll().map(b -> b / 100.0).orElse(Double.POSITIVE_INFINITY));
        longest = stairs(solved.answer().moments().stream().map(ValueChart::point).toList());
    }

    private static double[] point(Engine.Moment m) {
        return new double[] {m.seconds(), m.valueCents() / 100.0};
    }

    private List<double[]> stairs(List<double[]> points) {
        List<double[]> all = new ArrayList<>();
        double now = Double.NaN;
        for (double[] p : points) {
            double at = Math.min(p[0], seconds);
            if (!all.isEmpty()) {
                all.add(new double[] {at, now});
            }
            all.add(new double[] {at, p[1]});
            now = p[1];
        }
        all.add(new double[] {seconds, now});
        return all;
    }

    /** @return words that show the picture */
    String write(Request request) throws IOException {
        if (Double.isFinite(bound)) {
            lines.add(new Plot.Line("no plan passes",
                    List.of(new double[] {0, bound}, new double[] {seconds, bound}), false));
        }
        lines.add(new Plot.Line("Croftboard", longest, true));
        Plot plot = new Plot("Value of the plan in hand, " + name, "seconds", "dollars", seconds, best * LOWEST,
                Math.max(best, Double.isFinite(bound) ? bound : best) * 1.01);
        String svg = plot.draw(lines, ends);
        if (!request.print()) {
            Files.writeString(request.folder().resolve("docs").resolve(FILE), svg);
        }
        return "\n![Value against time](" + FILE + ")\n\nThe first week of the table. Integer solvers by their own word as they"
                + " went; the table has what their plans are worth. Circles: Croftboard given just that time.\n";
    }
}
