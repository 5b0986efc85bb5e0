package croftboard.sourcing;

import croftboard.need.Minimums;
import croftboard.need.WeekProblem;

/** How many packs of each offer a program may buy. */
final class PackLimits {
    private PackLimits() { }

    /** Everything that can be had; of a delivery that cannot reach its minimum only what is promised. */
    static int[] all(WeekProblem problem) {
        boolean[] reachable = Minimums.reachable(problem);
        return problem.offers().stream().mapToInt(o -> reachable[o.delivery()] ? o.maxPacks() : o.minPacks()).toArray();
    }
}
