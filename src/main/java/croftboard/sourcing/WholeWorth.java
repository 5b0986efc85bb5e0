package croftboard.sourcing;

import croftboard.need.WeekProblem;

/** Weeks in which nothing is bought and no minute is paid: a plan's value is a sum of stated amounts, never rounded. */
final class WholeWorth {
    private WholeWorth() { }

    /** The greatest amount, in cents, of which every plan's value is a multiple; 0 when the week is of another kind. */
    static long step(WeekProblem problem) {
        if (!problem.items().isEmpty() || !problem.components().isEmpty() || !problem.prices().coverage().isEmpty()
                || !problem.prices().variety().isEmpty() || problem.prices().evennessCentsPerMinute().signum() != 0
                || problem.resources().stream().anyMatch(WholeWorth::paid)) {
            return 0;
        }
        long step = problem.constantCents();
        for (WeekProblem.Slot slot : problem.slots()) {
            step = slot.mayBeEmpty() || slot.candidates().isEmpty() ? common(step, slot.emptyCents()) : step;
            for (WeekProblem.Candidate c : slot.candidates()) {
                if (c.stapleCents() != 0 || c.looseStapleCents() != 0) {
                    return 0;
                }
                step = common(step, c.valueCents());
            }
        }
        return Math.abs(step);
    }

    private static boolean paid(WeekProblem.Resource resource) {
        for (long overtime : resource.overtime()) {
            if (overtime > 0) {
                return true;
            }
        }
        return false;
    }

    private static long common(long a, long b) {
        return b == 0 ? a : common(b, a % b);
    }
}
