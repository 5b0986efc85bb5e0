package croftboard.plan.change;

import croftboard.plan.WeekPlan;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How much one plan differs from another, by the three measures of minimal perturbation.
 *
 * @param dishes slots in which another dish, or none, stands
 * @param orderLines offers of a delivery of which another number of packs is ordered
 * @param portions portions that are made more or fewer, summed over slots
 */
public record Disturbance(int dishes, int orderLines, int portions) {
    public static Disturbance between(WeekPlan before, WeekPlan after) {
        Map<String, WeekPlan.Served> a = rows(before);
        Map<String, WeekPlan.Served> b = rows(after);
        int dishes = 0;
        int portions = 0;
        for (String slot : union(a, b)) {
            Optional<WeekPlan.Served> x = Optional.ofNullable(a.get(slot));
            Optional<WeekPlan.Served> y = Optional.ofNullable(b.get(slot));
            Optional<String> was = x.flatMap(WeekPlan.Served::recipe);
            Optional<String> is = y.flatMap(WeekPlan.Served::recipe);
            int wasPortions = x.map(WeekPlan.Served::portions).orElse(0);
            int isPortions = y.map(WeekPlan.Served::portions).orElse(0);
            dishes += was.equals(is) ? 0 : 1;
            portions += was.equals(is) ? Math.abs(wasPortions - isPortions) : wasPortions + isPortions;
        }
        Map<String, Integer> lines = lines(before);
        Map<String, Integer> now = lines(after);
        int changed = (int) union(lines, now).stream().filter(k -> !Optional.ofNullable(lines.get(k))
                .equals(Optional.ofNullable(now.get(k)))).count();
        return new Disturbance(dishes, changed, portions);
    }

    private static <T> java.util.Set<String> union(Map<String, T> a, Map<String, T> b) {
        java.util.Set<String> all = new java.util.TreeSet<>(a.keySet());
        all.addAll(b.keySet());
        return all;
    }

    private static Map<String, WeekPlan.Served> rows(WeekPlan plan) {
        Map<String, WeekPlan.Served> rows = new TreeMap<>();
        plan.menu().forEach(r -> rows.put(r.slot(), r));
        return rows;
    }

    private static Map<String, Integer> lines(WeekPlan plan) {
        Map<String, Integer> lines = new TreeMap<>();
        plan.orders().forEach(o -> o.lines().forEach(l -> lines.merge(o.vendor() + " " + o.delivery() + " " + l.item() + " "
                + l.pack(), l.packs(), Integer::sum)));
        return lines;
    }
}
