package croftboard.bench;

import croftboard.need.WeekProblem;
import croftboard.plan.Engine;
import java.util.Arrays;
import java.util.Optional;

/** A plan, whoever made it, judged as the program judges its own. @param cents by the account */
record Judged(int[] choice, int[] packs, boolean complete, long cents) {
    static Judged of(WeekProblem problem, int[] choice, int[] packs) {
        return new Judged(choice, packs, Engine.complete(problem, choice, packs), Engine.value(problem, choice, packs));
    }

    /** The complete one that is worth most. */
    static Optional<Judged> better(Judged... plans) {
        return Arrays.stream(plans).filter(Judged::complete).max(java.util.Comparator.comparingLong(Judged::cents));
    }
}
