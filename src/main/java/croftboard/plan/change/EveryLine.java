package croftboard.plan.change;

import croftboard.plan.WeekPlan;
import croftboard.safety.DishStatement;
import java.util.Map;
import java.util.TreeMap;

/** Substitutes that an earlier change has put on every line of a dish: they stay. */
final class EveryLine {
    private EveryLine() { }

    /** By dish and ingredient. */
    static Map<String, Map<String, String>> of(WeekPlan plan) {
        Map<String, Map<String, String>> all = new TreeMap<>();
        plan.swaps().forEach((dish, swaps) -> swaps.forEach((item, use) -> {
            if (item.endsWith(DishStatement.EVERY_LINE)) {
                all.computeIfAbsent(dish, k -> new TreeMap<>()).put(item.substring(0, item.length() - 1), use);
            }
        }));
        return all;
    }
}
