package croftboard.sourcing;

import java.util.Arrays;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Orders for one menu by late acceptance over deliveries: each delivery has a factor on its prices, or is closed; packs
 * are filled greedily item by item at those prices, orders below their minimum are topped up, and a change of factors is
 * judged by true money; the best is bettered pack by pack. Needs nothing but Java; same seed and rounds, same orders.
 */
final class OrderSearch {
    private static final double[] FACTORS = {FactorFill.CLOSED, 1, 1, .9, .8, .65, .45};
    private static final int MEMORY = 60;
    private static final int ASK_EVERY = 64;
    private static final int MOVES_A_ROUND = 20;
    private static final int CYCLE = 10_000;
    private static final double CLOSED_AT_START = 1 / 3.0;
    private final OrderFacts facts;
    private final TopUp topUp;
    private final FactorFill fill;
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
        fill = new FactorFill(facts, localWorth);
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
        while (first || fill.deliveries() > 0 && (rounds == 0 || done < rounds) && !stop.getAsBoolean()) {
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
        for (int v = 0; v < fill.deliveries(); v++) {
            fill.reprice(v, g.nextDouble() < closed ? FactorFill.CLOSED : 1);
        }
        fill.fillAll(now);
    }

    private int once(Random g, int rounds, BooleanSupplier stop) {
        double cents = judge(now);
        for (int v = 0; v < fill.deliveries(); v++) {
            cents = closed(v, cents);
        }
        int done = fill.deliveries() == 0 ? 0 : accept(g, cents, rounds, stop);
        PackMoves moves = new PackMoves(facts, best);
        moves.improve();
        moves.accept(g, (long) MOVES_A_ROUND * done, stop);
        moves.improve();
        return done;
    }

    /** Closes a delivery when that is better at once: many would never reach their minimum. */
    private double closed(int v, double cents) {
        double before = fill.factor(v);
        trial.copy(now);
        fill.set(trial, v, FactorFill.CLOSED);
        double then = judge(trial);
        if (then < cents) {
            now.copy(trial);
            return then;
        }
        fill.reprice(v, before);
        return cents;
    }

    private int accept(Random g, double start, int rounds, BooleanSupplier stop) {
        double[] past = new double[MEMORY];
        Arrays.fill(past, start);
        double cents = start;
        int round = 0;
        for (; round < rounds && !(round % ASK_EVERY == 0 && stop.getAsBoolean()); round++) {
            cents = change(g, cents, past[round % MEMORY]);
            past[round % MEMORY] = cents;
        }
        return round;
    }

    /** Another factor for one delivery, one time in three for two. @return cents after it, or after taking it back */
    private double change(Random g, double cents, double past) {
        int v = g.nextInt(fill.deliveries());
        int other = g.nextInt(3) == 0 ? g.nextInt(fill.deliveries()) : v;
        double oldV = fill.factor(v);
        double oldOther = fill.factor(other);
        double newV = FACTORS[g.nextInt(FACTORS.length)];
        double newOther = other == v ? newV : FACTORS[g.nextInt(FACTORS.length)];
        if (newV == oldV && newOther == oldOther) {
            return cents;
        }
        trial.copy(now);
        fill.set(trial, v, newV);
        if (other != v) {
            fill.set(trial, other, newOther);
        }
        double then = judge(trial);
        if (then <= cents || then <= past) {
            now.copy(trial);
            return then;
        }
        fill.reprice(v, oldV);
        fill.reprice(other, oldOther);
        return cents;
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
