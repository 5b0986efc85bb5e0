package croftboard.paper;

import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.Comparator;

/** One order: a vendor and a delivery. */
public record OrderKey(String vendor, LocalDate delivery) implements Comparable<OrderKey> {
    private static final Comparator<OrderKey> ORDER =
            Comparator.comparing(OrderKey::delivery).thenComparing(OrderKey::vendor);

    public static OrderKey of(WeekPlan.Order order) {
        return new OrderKey(order.vendor(), order.delivery());
    }

    @Override
    public int compareTo(OrderKey other) {
        return ORDER.compare(this, other);
    }
}
