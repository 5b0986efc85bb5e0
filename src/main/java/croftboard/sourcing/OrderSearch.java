package croftboard.sourcing;

import croftboard.need.Minimums;
import croftboard.need.PackFill;
import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Orders for one menu by late acceptance over deliveries: each delivery has a factor on its prices, or is closed; packs
 * are filled greedily item by item at those prices, orders below their minimum are topped up, and a change of factors is
 * judged by true money; the best is bettered pack by pack. Needs nothing but Java; same seed and rounds, same orders.
 */
final class OrderSearch {
    private static final double CLOSED = Double.POSITIVE_INFINITY;
    private static final double[] FACTORS = {CLOSED, 1, 1, .9, .8, .65, .45};
    private static final int MEMORY = 60;
    private static final int ASK_EVERY = 64;
    private static final int MOVES_A_ROUND = 20;
    private static final int CYCLE = 20_000;
    private static final double CLOSED_AT_START = 1 / 3.0;
    private final OrderFacts facts;
    private final TopUp topUp;
    private final PackFill fill;
    private final int[][] itemsOf;
    private final double[] weighed;
    private final double[] price;
    private final double[] factor;
    private final OrderState now;
    private final OrderState trial;
    private final OrderState full;
    private final OrderState best;
    private double bestCents = Double.MAX_VALUE;
    private double bestEstimate = Double.MAX_VALUE;

    /** @param localWorth dollars that one more dollar spent locally is worth */
    OrderSearch(FixedMenu menu, double localWorth) {
        facts = new OrderFacts(menu);
        topUp = new TopUp(facts, localWorth);
        fill = new PackFill(menu.problem);
        itemsOf = new int[facts.offersOfDelivery.length][];
        for (int v = 0; v < itemsOf.length; v++) {
            itemsOf[v] = Arrays.stream(facts.offersOfDelivery[v]).map(o -> menu.problem.offers().get(o).item())
                    .distinct().toArray();
        }
        boolean[] reachable = Minimums.reachable(menu.problem);
        weighed = new double[facts.dayOf.length];
        for (int o = 0; o < weighed.length; o++) {
            boolean can = reachable[menu.problem.offers().get(o).delivery()];
            weighed[o] = can ? facts.weighed(o, localWorth) : CLOSED;
        }
        price = weighed.clone();
        factor = new double[itemsOf.length];
        Arrays.fill(factor, 1);
        now = new OrderState(facts);
        trial = new OrderState(facts);
        full = new OrderState(facts);
        best = new OrderState(facts);
    }

    /** @param packs the best orders met; where no order keeps the musts, those that break least */
    record Found(int[] packs, int rounds) { }

    /**
     * One or more searches, each from another start; the best of them.
     *
     * @param rounds changes of factors tried in all; 0 for no limit, then {@code stop} must end it
     */
    Found run(long seed, int rounds, BooleanSupplier stop) {
        Random g = new Random(seed);
        OrderState champion = new OrderState(facts);
        double least = Double.MAX_VALUE;
        int done = 0;
        boolean first = true;
        while (first || factor.length > 0 && (rounds == 0 || done < rounds) && !stop.getAsBoolean()) {
            start(first ? 0 : CLOSED_AT_START, g);
            done += once(g, rounds == 0 ? CYCLE : Math.min(CYCLE, rounds - done), stop);
            double cents = best.centsWithSmallOrders();
            if (cents < least) {
                least = cents;
                champion.copy(best);
            }
            first = false;
        }
        return new Found(champion.packs.clone(), done);
    }

    private void start(double closed, Random g) {
        bestCents = Double.MAX_VALUE;
        bestEstimate = Double.MAX_VALUE;
        for (int v = 0; v < factor.length; v++) {
            reprice(v, g.nextDouble() < closed ? CLOSED : 1);
        }
        for (int i = 0; i < facts.offersOfItem.length; i++) {
            fill(now, i);
        }
    }

    private int once(Random g, int rounds, BooleanSupplier stop) {
        double cents = judge(now);
        for (int v = 0; v < factor.length; v++) {
            cents = closed(v, cents);
        }
        int done = factor.length == 0 ? 0 : accept(g, cents, rounds, stop);
        PackMoves moves = new PackMoves(facts, best);
        moves.improve();
        moves.accept(g, (long) MOVES_A_ROUND * done, stop);
        moves.improve();
        return done;
    }

    /** Closes a delivery when that is better at once: many would never reach their minimum. */
    private double closed(int v, double cents) {
        double before = factor[v];
        trial.copy(now);
        set(v, CLOSED);
        double then = judge(trial);
        if (then < cents) {
            now.copy(trial);
            return then;
        }
        reprice(v, before);
        return cents;
    }

    private int accept(Random g, double start, int rounds, BooleanSupplier stop) {
        double[] memory = new double[MEMORY];
        Arrays.fill(memory, start);
        double cents = start;
        int round = 0;
        for (; round < rounds; round++) {
            if (round % ASK_EVERY == 0 && stop.getAsBoolean()) {
                break;
            }
            int v = g.nextInt(factor.length);
            int other = g.nextInt(3) == 0 ? g.nextInt(factor.length) : v;
            double oldV = factor[v];
            double oldOther = factor[other];
            double newV = FACTORS[g.nextInt(FACTORS.length)];
            double newOther = other == v ? newV : FACTORS[g.nextInt(FACTORS.length)];
            if (newV == oldV && newOther == oldOther) {
                continue;
            }
            trial.copy(now);
            set(v, newV);
            if (other != v) {
                set(other, newOther);
            }
            double then = judge(trial);
            if (then <= cents || then <= memory[round % MEMORY]) {
                now.copy(trial);
                cents = then;
            } else {
                reprice(v, oldV);
                reprice(other, oldOther);
            }
            memory[round % MEMORY] = cents;
        }
        return round;
    }

    private void set(int v, double to) {
        reprice(v, to);
        for (int item : itemsOf[v]) {
            fill(trial, item);
        }
    }

    private void reprice(int v, double to) {
        factor[v] = to;
        for (int o : facts.offersOfDelivery[v]) {
            price[o] = to == CLOSED ? CLOSED : weighed[o] * to;
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
                .sorted(java.util.Comparator.comparingDouble(
                        (Integer o) -> -price[o] / facts.problem.offers().get(o).packMg()).thenComparingInt(o -> o))
                .mapToInt(o -> o).toArray();
        for (int o : dearestFirst) {
            state.set(o, Math.max(state.packs[o], facts.problem.offers().get(o).maxPacks()));
        }
        double missing = state.missing(item);
        for (int o : dearestFirst) {
            WeekProblem.Offer offer = facts.problem.offers().get(o);
            while (state.packs[o] > offer.minPacks()) {
                state.set(o, state.packs[o] - 1);
                if (state.missing(item) > missing) {
                    state.set(o, state.packs[o] + 1);
                    break;
                }
            }
        }
    }

    /** Cents of a state with its small orders topped up; remembers the best. */
    private double judge(OrderState state) {
        double estimate = state.cents() + topUp.loss(state);
        if (estimate < bestEstimate) {
            bestEstimate = estimate;
            full.copy(state);
            topUp.apply(full);
            double cents = full.centsWithSmallOrders();
            if (cents < bestCents) {
                bestCents = cents;
                best.copy(full);
            }
        }
        return estimate;
    }
}
