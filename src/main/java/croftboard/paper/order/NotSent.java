package croftboard.paper.order;

import croftboard.paper.OrderKey;
import croftboard.plan.WeekPlan;
import java.time.LocalDateTime;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which orders count as not sent. An order is sent when somebody has said so; until there is a command for that, a posted
 * plan's orders are taken as sent, since posting is what makes people send them. A draft's are not: when the cut-off of one
 * is past, nothing comes of it.
 */
public final class NotSent {
    private NotSent() { }

    /** @param now local time of the kitchen */
    public static Set<OrderKey> of(WeekPlan plan, boolean posted, LocalDateTime now) {
        Set<OrderKey> keys = new TreeSet<>();
        plan.orders().stream().filter(o -> !posted && o.cutOff().isBefore(now)).forEach(o -> keys.add(OrderKey.of(o)));
        return keys;
    }
}
