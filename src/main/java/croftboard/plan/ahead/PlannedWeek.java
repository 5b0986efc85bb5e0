package croftboard.plan.ahead;

import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;

/** @param from where it was found, as it is asked for: {@code 2027-W36@2} or the rotation's name */
public record PlannedWeek(WeekPlan plan, String from) {
    public IsoWeek week() {
        return plan.week();
    }
}
