package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.Map;
import java.util.TreeMap;

/** Minutes of stations and units of equipment, a row for each period that is used, with the overtime that can be bought. */
final class HandsRows {
    private final WeekProblem problem;
    private final Program program;
    private final long[][] taken;
    private final Map<Integer, Map<Integer, Program.Row>> rows = new TreeMap<>();

    /** @param taken units by resource and period that are used whatever is decided; their overtime is not counted here */
    HandsRows(WeekProblem problem, Program program, long[][] taken) {
        this.problem = problem;
        this.program = program;
        this.taken = taken;
    }

    /** Nothing is used beforehand. */
    static long[][] nothing(WeekProblem problem) {
        return problem.resources().stream().map(r -> new long[r.periods()]).toArray(long[][]::new);
    }

    void use(int column, int resource, int day, double units) {
        int period = problem.resources().get(resource).period()[day];
        rows.computeIfAbsent(resource, r -> new TreeMap<>())
                .computeIfAbsent(period, t -> row(problem.resources().get(resource), t, taken[resource][t]))
                .add(column, units);
    }

    /** @return by resource and period what one more unit is worth at these row prices, cents, 0 or more */
    double[][] worth(double[] prices) {
        double[][] worth = new double[taken.length][];
        for (int r = 0; r < worth.length; r++) {
            worth[r] = new double[taken[r].length];
            for (Map.Entry<Integer, Program.Row> row : rows.getOrDefault(r, Map.of()).entrySet()) {
                worth[r][row.getKey()] = Math.max(0, prices[row.getValue().number]);
            }
        }
        return worth;
    }

    private Program.Row row(WeekProblem.Resource r, int period, long used) {
        long free = Math.max(0, r.regular()[period] - used);
        long overtime = r.overtime()[period] - Math.max(0, used - r.regular()[period]);
        Program.Row row = program.atMost(free);
        if (overtime > 0) {
            row.add(program.real(0, overtime, -r.overtimeCentsPerHour() / 60.0), -1);
        }
        return row;
    }
}
