package croftboard.bench;

import static croftboard.bench.Figures.dollars;
import static croftboard.bench.Figures.head;
import static croftboard.bench.Figures.median;
import static croftboard.bench.Figures.number;
import static croftboard.bench.Figures.row;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The same random weeks by what one would use instead. */
final class Baselines {
    private static final double EXACT_BAR = .08;
    private final int ours;
    private final int exact;

    private Baselines(int ours, int exact) {
        this.ours = ours;
        this.exact = exact;
    }

    /** One week by everything. @param exact empty where the integer solvers were not asked */
    private record Line(WeekProblem problem, Optional<Judged> hand, Optional<Judged> search,
            Map<ExactAlone, ExactAlone.Answer> exact, Solved ours) {
        List<Judged> others() {
            List<Judged> all = new ArrayList<>();
            hand.ifPresent(all::add);
            search.ifPresent(all::add);
            exact.values().forEach(a -> a.plan().ifPresent(all::add));
            return all;
        }

        double ahead(Judged other) {
            return ours.value() / (double) other.cents() - 1;
        }
    }

    static String measure(Request request) throws IOException, InterruptedException {
        int ours = request.secondsOr("20", "5").get(0);
        Baselines all = new Baselines(ours, 3 * ours);
        List<Integer> seeds = request.seedsOr("1-20", "1-2");
        int withExact = request.quick() ? 1 : 5;
        List<Line> lines = new ArrayList<>();
        for (int n = 0; n < seeds.size(); n++) {
            lines.add(all.line(seeds.get(n), n < withExact));
        }
        String chart = all.chart(request, lines.get(0));
        return all.text(lines) + chart;
    }

    private Line line(int seed, boolean withExact) throws IOException, InterruptedException {
        WeekProblem problem = RandomWeek.week(seed);
        Map<ExactAlone, ExactAlone.Answer> answers = new EnumMap<>(ExactAlone.class);
        for (ExactAlone solver : withExact ? ExactAlone.values() : new ExactAlone[0]) {
            answers.put(solver, solver.solve(seed, exact));
        }
        return new Line(problem, HandRule.plan(problem), SearchAlone.plan(problem, ours), answers,
                Solved.week(problem, ours, 1));
    }

    private String text(List<Line> lines) {
        StringBuilder text = new StringBuilder("Croftboard and OptaPlanner alone ").append(ours)
                .append(" s a week, integer solvers ").append(exact).append(" s; money in dollars.\n\n")
                .append(head("week", "by hand", "OptaPlanner alone", "SCIP alone", "CP-SAT alone", "HiGHS alone",
                        "Croftboard", "above the best of them, %"));
        List<Double> ahead = new ArrayList<>();
        for (Line l : lines) {
            double least = l.others().stream().mapToDouble(l::ahead).min().orElse(0);
            ahead.add(least);
            text.append(row(l.ours.name(), cell(l.hand), cell(l.search), cell(l, ExactAlone.SCIP),
                    cell(l, ExactAlone.CP_SAT), cell(l, ExactAlone.HIGHS), dollars(l.ours.value()),
                    number("%.2f", 100 * least)));
        }
        text.append(row("Croftboard above it, median %", over(lines, Line::hand), over(lines, Line::search),
                over(lines, l -> plan(l, ExactAlone.SCIP)), over(lines, l -> plan(l, ExactAlone.CP_SAT)),
                over(lines, l -> plan(l, ExactAlone.HIGHS)), "", number("%.2f", 100 * median(ahead))));
        return text.append("\n").append(checks(lines)).toString();
    }

    private static Optional<Judged> plan(Line l, ExactAlone solver) {
        return Optional.ofNullable(l.exact.get(solver)).flatMap(ExactAlone.Answer::plan);
    }

    private static String cell(Line l, ExactAlone solver) {
        return l.exact.containsKey(solver) ? cell(plan(l, solver)) : "";
    }

    private static String cell(Optional<Judged> plan) {
        return plan.map(p -> dollars(p.cents())).orElse("no answer");
    }

    private static List<Double> leads(List<Line> lines, java.util.function.Function<Line, Optional<Judged>> of) {
        return lines.stream().filter(l -> of.apply(l).isPresent())
                .map(l -> l.ahead(of.apply(l).orElseThrow())).toList();
    }

    private static String over(List<Line> lines, java.util.function.Function<Line, Optional<Judged>> of) {
        List<Double> leads = leads(lines, of);
        return leads.isEmpty() ? "" : number("%.2f", 100 * median(leads));
    }

    private static String checks(List<Line> lines) {
        long worse = lines.stream().filter(l -> !l.ours.answer().complete()
                || l.others().stream().anyMatch(o -> o.cents() > l.ours.value())).count();
        StringBuilder text = new StringBuilder("- Never worse than any of them on any seed: ")
                .append(worse == 0 ? "yes" : "no, on " + worse + " of " + lines.size()).append(".\n");
        for (ExactAlone solver : ExactAlone.values()) {
            List<Double> leads = leads(lines, l -> plan(l, solver));
            long asked = lines.stream().filter(l -> l.exact.containsKey(solver)).count();
            text.append("- Median at least ").append(number("%.0f", 100 * EXACT_BAR)).append(" % better than ")
                    .append(solver.title()).append(" alone: ")
                    .append(leads.isEmpty() ? "it gave no answer" : median(leads) >= EXACT_BAR ? "yes" : "no")
                    .append(leads.isEmpty() ? "" : ", " + number("%.2f", 100 * median(leads)) + " % ("
                            + leads.size() + " answers of " + asked + ")").append(".\n");
        }
        return text.toString();
    }

    private String chart(Request request, Line line) throws IOException {
        ValueChart chart = new ValueChart(line.problem, exact);
        chart.flat("by hand", line.hand);
        chart.flat("OptaPlanner alone, " + ours + " s", line.search);
        line.exact.forEach((solver, answer) -> chart.steps(solver.title() + " alone", answer.steps()));
        for (int seconds : new int[] {Math.max(2, ours / 4), Math.max(3, ours / 2), ours, exact}) {
            chart.ours(seconds == ours ? line.ours : Solved.week(line.problem, seconds, 1));
        }
        return chart.write(request);
    }
}
