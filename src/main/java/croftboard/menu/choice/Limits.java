package croftboard.menu.choice;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The periods of hands and equipment that some menu would overrun, numbered as limits. */
final class Limits {
    private final WeekProblem problem;
    private final int[][] number;
    private final List<int[]> limits = new ArrayList<>();

    private Limits(WeekProblem problem) {
        this.problem = problem;
        number = new int[problem.resources().size()][];
        for (int r = 0; r < number.length; r++) {
            number[r] = new int[problem.resources().get(r).periods()];
            java.util.Arrays.fill(number[r], -1);
        }
    }

    /** Empty when hands above their hours could be bought. */
    static Optional<Limits> of(WeekProblem problem) {
        Limits all = new Limits(problem);
        long[][] most = all.mostUsed();
        boolean overtime = false;
        for (int r = 0; r < most.length; r++) {
            WeekProblem.Resource resource = problem.resources().get(r);
            for (int t = 0; t < most[r].length; t++) {
                if (most[r][t] > resource.regular()[t]) {
                    all.number[r][t] = all.limits.size();
                    all.limits.add(new int[] {r, t});
                    overtime |= resource.overtime()[t] > 0;
                }
            }
        }
        return overtime ? Optional.empty() : Optional.of(all);
    }

    /** By resource and period: units if every slot took the dish that uses most. */
    private long[][] mostUsed() {
        long[][] most = new long[number.length][];
        for (int r = 0; r < most.length; r++) {
            most[r] = new long[number[r].length];
        }
        for (WeekProblem.Slot slot : problem.slots()) {
            long[][] slotMost = new long[most.length][];
            for (WeekProblem.Candidate c : slot.candidates()) {
                for (WeekProblem.Use u : c.uses()) {
                    if (slotMost[u.resource()] == null) {
                        slotMost[u.resource()] = new long[most[u.resource()].length];
                    }
                    int t = period(u);
                    slotMost[u.resource()][t] = Math.max(slotMost[u.resource()][t], of(c, u.resource(), t));
                }
            }
            for (int r = 0; r < most.length; r++) {
                for (int t = 0; slotMost[r] != null && t < most[r].length; t++) {
                    most[r][t] += slotMost[r][t];
                }
            }
        }
        return most;
    }

    private int period(WeekProblem.Use use) {
        return problem.resources().get(use.resource()).period()[use.day()];
    }

    private long of(WeekProblem.Candidate c, int resource, int period) {
        return c.uses().stream().filter(u -> u.resource() == resource && period(u) == period)
                .mapToLong(WeekProblem.Use::units).sum();
    }

    int[] units(WeekProblem.Candidate c) {
        int[] units = new int[limits.size()];
        for (WeekProblem.Use u : c.uses()) {
            int limit = number[u.resource()][period(u)];
            if (limit >= 0) {
                units[limit] += u.units();
            }
        }
        return units;
    }

    int count() {
        return limits.size();
    }

    int[] most() {
        return limits.stream().mapToInt(l -> Math.toIntExact(problem.resources().get(l[0]).regular()[l[1]])).toArray();
    }

    int[] resource() {
        return limits.stream().mapToInt(l -> l[0]).toArray();
    }

    int[] period() {
        return limits.stream().mapToInt(l -> l[1]).toArray();
    }
}
