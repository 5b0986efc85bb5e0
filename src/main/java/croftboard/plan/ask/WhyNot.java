package croftboard.plan.ask;

import croftboard.plan.WeekPlan;
import croftboard.plan.change.Disturbance;
import java.util.List;

/** What a week would be with something forced that the plan does not have. */
public sealed interface WhyNot {
    /** It cannot be at all. @param because in words, each a sentence without its full stop */
    record Cannot(List<String> because) implements WhyNot { }

    /**
     * It can be, and this is the week then, the rest as close to the plan as a short search finds.
     *
     * @param after not kept anywhere
     * @param differs from the plan
     * @param moved how much of the plan had to move, what was asked for among it
     * @param movedCents the same at the kitchen's price of a change
     * @param minutes by station name, more or fewer in the week
     * @param wasteMg more or less thrown away, milligrams as purchased
     */
    record Can(WeekPlan before, WeekPlan after, Comparison differs, Disturbance moved, long movedCents,
            List<Why.Minutes> minutes, long wasteMg) implements WhyNot { }
}
