package croftboard.sourcing;

import croftboard.need.WeekProblem;

/** Orders for a menu without any search: packs filled greedily at list prices, orders below their minimum topped up. */
public final class GreedyOrders {
    private GreedyOrders() { }

    /** Packs of each offer. Deliveries that no top-up brings to their minimum are left alone. */
    public static int[] of(WeekProblem problem, int[] choice) {
        FixedMenu menu = new FixedMenu(problem, choice);
        OrderFacts facts = new OrderFacts(menu);
        FactorFill fill = new FactorFill(facts, 0);
        OrderState state = new OrderState(facts);
        fill.fillAll(state);
        TopUp topUp = new TopUp(facts, 0);
        OrderState full = topped(facts, topUp, state);
        for (int v = 0; v < fill.deliveries() && !menu.complete(full.packs); v++) {
            if (full.belowMinimum(v) > 0) {
                fill.set(state, v, FactorFill.CLOSED);
                full = topped(facts, topUp, state);
            }
        }
        return full.packs.clone();
    }

    private static OrderState topped(OrderFacts facts, TopUp topUp, OrderState state) {
        OrderState full = new OrderState(facts);
        full.copy(state);
        topUp.apply(full);
        return full;
    }
}
