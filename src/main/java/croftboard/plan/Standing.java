package croftboard.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What of an earlier plan stands in a new version of it, whatever is decided now.
 *
 * @param rows by slot id: what is made or served
 * @param batches component batches that are made
 * @param hidden ids of slots that are no places of the offer
 * @param orders of the earlier plan: what was promised or asked for there stays so
 */
public record Standing(Map<String, WeekPlan.Served> rows, List<WeekPlan.Batch> batches, Set<String> hidden,
        List<WeekPlan.Order> orders) {
    public static final Standing NOTHING = new Standing(Map.of(), List.of(), Set.of(), List.of());

    Optional<WeekPlan.Order> order(String vendor, java.time.LocalDate delivery) {
        return orders.stream().filter(o -> o.vendor().equals(vendor) && o.delivery().equals(delivery)).findFirst();
    }

    /** The same production in the earlier plan, if it is made. */
    Optional<WeekPlan.Production> made(String slot, WeekPlan.Production now) {
        return Optional.ofNullable(rows.get(slot)).flatMap(row -> row.productions().stream()
                .filter(p -> p.made().equals(now.made()) && p.batches().equals(now.batches())).findFirst());
    }
}
