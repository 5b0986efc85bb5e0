package croftboard.cli;

import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanReading;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import java.util.Optional;
import java.util.OptionalInt;

/** Plans that are kept in a book. */
final class Kept {
    private Kept() { }

    /** @throws WrongUse when there is no such plan or its file is none */
    static WeekPlan plan(PlanStore plans, PlanRef ref) {
        return plans.read(ref).fold(PlanReading.Read::plan, absent -> {
            throw new WrongUse(absent.why() + " -> croftboard plan " + ref.week());
        }, refused -> {
            throw new WrongUse(refused.why());
        });
    }

    /** The version that a changed plan changes; empty: it was planned anew, or that version is gone. */
    static Optional<WeekPlan> base(PlanStore plans, WeekPlan plan) {
        return plan.inputs().revision().flatMap(r -> plans.read(plan.week(), r.of()).fold(
                read -> Optional.of(read.plan()), absent -> Optional.empty(), refused -> Optional.empty()));
    }

    /** @throws WrongUse when the week has no plan */
    static int version(PlanStore plans, PlanRef ref) {
        OptionalInt version = ref.version().isPresent() ? ref.version() : plans.current(ref.week());
        return version.orElseThrow(() -> new WrongUse("there is no plan of " + ref.week() + " yet -> croftboard plan "
                + ref.week()));
    }
}
