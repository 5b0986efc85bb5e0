package croftboard.plan;

import croftboard.measure.IsoWeek;
import java.util.List;
import java.util.Optional;

/**
 * What changed facts do to a rotation, week by week. Weeks that stay as they are, are not in it.
 *
 * @param before value of the whole rotation: cents
 * @param after the same with the changes
 */
public record RotationChange(List<Week> weeks, long before, long after) {

    /**
     * @param was the rotation's plan. @param is the plan after it
     * @param dishes that give way
     * @param packs that are ordered more or less of
     */
    public record Week(IsoWeek week, WeekPlan was, WeekPlan is, List<Dish> dishes, List<Packs> packs) { }

    /** @param is empty: nothing */
    public record Dish(String slot, Optional<String> was, Optional<String> is) { }

    /** @param cents more that is paid; less is negative */
    public record Packs(String vendor, String item, String pack, int was, int is, long cents) { }
}
