package croftboard.sourcing;

import croftboard.need.Minimums;
import croftboard.need.PackFill;
import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.Comparator;

/** Greedy packs item by item, at prices that carry the worth of local money and a factor for each delivery. */
final class FactorFill {
    /** Factor of a delivery at which nothing is bought. */
    static final double CLOSED = Double.POSITIVE_INFINITY;
    private final OrderFacts facts;
    private final PackFill fill;
    private final int[][] itemsOf;
    private final double[] weighed;
    private final double[] price;
    private final double[] factor;

    FactorFill(OrderFacts facts, double localWorth) {
        this.facts = facts;
        WeekProblem problem = facts.problem;
        fill = new PackFill(problem);
        itemsOf = new int[facts.offersOfDelivery.length][];
        for (int v = 0; v < itemsOf.length; v++) {
            itemsOf[v] = Arrays.stream(facts.offersOfDelivery[v]).map(o -> problem.offers().get(o).item())
                    .distinct().toArray();
        }
        boolean[] reachable = Minimums.reachable(problem);
        weighed = new double[facts.dayOf.length];
        for (int o = 0; o < weighed.length; o++) {
            weighed[o] = reachable[problem.offers().get(o).delivery()] ? facts.weighed(o, localWorth) : CLOSED;
        }
        price = weighed.clone();
        factor = new double[itemsOf.length];
        Arrays.fill(factor, 1);
    }

    int deliveries() {
        return factor.length;
    }

    double factor(int delivery) {
        return factor[delivery];
    }

    /** Sets a factor without buying anything. */
    void reprice(int delivery, double to) {
        factor[delivery] = to;
        for (int o : facts.offersOfDelivery[delivery]) {
            price[o] = to == CLOSED ? CLOSED : weighed[o] * to;
        }
    }

    /** Sets a factor and buys anew every item that the delivery offers. */
    void set(OrderState state, int delivery, double to) {
        reprice(delivery, to);
        for (int item : itemsOf[delivery]) {
            fill(state, item);
        }
    }

    void fillAll(OrderState state) {
        for (int i = 0; i < facts.offersOfItem.length; i++) {
            fill(state, i);
        }
    }

    private void fill(OrderState state, int item) {
        state.enterItem(item, -1);
        fill.fill(item, facts.menu.work.needMg()[item], price, state.packs);
        state.enterItem(item, 1);
        if (fill.missingMg() > 0) {
            coverFirst(state, item);
        }
    }

    /** Greedy left a day uncovered: buy all that can be had of the item, then give back the dearest that is not needed. */
    private void coverFirst(OrderState state, int item) {
        int[] dearestFirst = Arrays.stream(facts.offersOfItem[item]).filter(o -> price[o] != CLOSED).boxed()
                .sorted(Comparator.comparingDouble((Integer o) -> -price[o] / facts.problem.offers().get(o).packMg())
                        .thenComparingInt(o -> o)).mapToInt(o -> o).toArray();
        for (int o : dearestFirst) {
            state.set(o, Math.max(state.packs[o], facts.problem.offers().get(o).maxPacks()));
        }
        double missing = state.missing(item);
        for (int o : dearestFirst) {
            giveBack(state, o, missing);
        }
    }

    private void giveBack(OrderState state, int o, double missing) {
        WeekProblem.Offer offer = facts.problem.offers().get(o);
        while (state.packs[o] > offer.minPacks()) {
            state.set(o, state.packs[o] - 1);
            if (state.missing(offer.item()) > missing) {
                state.set(o, state.packs[o] + 1);
                return;
            }
        }
    }
}
