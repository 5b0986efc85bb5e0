package croftboard.cli;

import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import croftboard.plan.Rotation;
import croftboard.plan.ahead.PlannedWeek;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.RotationStore;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Weeks that are planned, wherever: the week's own plan (posted before current) stands before the rotation that covers it. */
final class AheadWeeks {
    private final PlanStore plans;
    private final RotationStore rotations;
    /** A rotation of a year is read once, not once a week. */
    private Optional<Rotation> last = Optional.empty();

    AheadWeeks(BookAt at) {
        plans = at.plans();
        rotations = new RotationStore(at.folder());
    }

    /** In order; weeks without any are left out. @throws WrongUse when there is none at all */
    List<PlannedWeek> of(WeekSpan span) {
        List<PlannedWeek> all = new ArrayList<>();
        span.weeks().forEach(w -> of(w).ifPresent(all::add));
        if (all.isEmpty()) {
            throw new WrongUse("no week of " + span + " is planned -> croftboard rotate " + span.first() + " --weeks "
                    + Math.min(53, span.weeks().size()) + ", or croftboard plan " + span.first());
        }
        return all;
    }

    private Optional<PlannedWeek> of(IsoWeek week) {
        OptionalInt posted = plans.postedVersion(week);
        OptionalInt version = posted.isPresent() ? posted : plans.current(week);
        if (version.isPresent()) {
            PlanRef ref = new PlanRef(week, version);
            return Optional.of(new PlannedWeek(Kept.plan(plans, ref), ref.toString()));
        }
        if (last.isEmpty() || !last.get().span().holds(week)) {
            last = rotations.covering(week);
        }
        return last.flatMap(r -> r.week(week).map(w -> planned(r, w)));
    }

    private static PlannedWeek planned(Rotation rotation, Rotation.Week week) {
        return new PlannedWeek(week.plan(), "rotation " + rotation.span());
    }
}
