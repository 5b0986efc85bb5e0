package croftboard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads from what an integer solver prints when it came to which plan. */
final class SolverLog {
    private static final Pattern SAT = Pattern.compile("#\\d+ +([\\d.]+)s best:(\\S+) .*");
    private static final Pattern HIGHS =
            Pattern.compile(".* [\\d.]+% +\\S+ +(\\S+) +\\S+ +\\d+ +\\d+ +\\d+ +\\d+ +([\\d.]+)s");
    private static final Pattern SCIP_TIME = Pattern.compile(".? *([\\d.]+)s");
    private static final int SCIP_FROM_END = 3;

    private SolverLog() { }

    /** @param cents by the solver's own word */
    record Step(double seconds, double cents) { }

    /** Each better value as it came; lines of any of the three solvers. */
    static List<Step> steps(List<String> lines) {
        List<Step> steps = new ArrayList<>();
        for (String line : lines) {
            step(line, steps);
        }
        return steps;
    }

    private static void step(String line, List<Step> steps) {
        Matcher sat = SAT.matcher(line);
        Matcher highs = HIGHS.matcher(line);
        String[] cells = line.split("\\|");
        if (sat.matches()) {
            add(sat.group(1), sat.group(2), steps);
        } else if (cells.length > 10) {
            Matcher time = SCIP_TIME.matcher(cells[0]);
            if (time.matches()) {
                add(time.group(1), cells[cells.length - SCIP_FROM_END], steps);
            }
        } else if (highs.matches()) {
            add(highs.group(2), highs.group(1), steps);
        }
    }

    private static void add(String seconds, String cents, List<Step> steps) {
        OptionalDouble at = number(seconds);
        OptionalDouble value = number(cents);
        boolean better = at.isPresent() && value.isPresent()
                && (steps.isEmpty() || value.getAsDouble() > steps.get(steps.size() - 1).cents);
        if (better) {
            steps.add(new Step(at.getAsDouble(), value.getAsDouble()));
        }
    }

    private static OptionalDouble number(String text) {
        try {
            double d = Double.parseDouble(text.strip());
            return Double.isFinite(d) ? OptionalDouble.of(d) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }
}
