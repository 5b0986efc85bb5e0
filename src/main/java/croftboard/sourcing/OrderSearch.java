package croftboard.sourcing;

import croftboard.need.PackFill;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Orders for one menu by late acceptance over deliveries: each delivery has a factor on its prices (or is closed), packs
 * are filled greedily, and changes of a factor are judged by money. Needs nothing but Java; same seed and rounds, same
 * orders.
 */
final class OrderSearch {
    private static final double CLOSED = Double.POSITIVE_INFINITY;
    private static final double[] FACTORS = {CLOSED, 1, 1, .9, .8, .65, .45};
    private static final int MEMORY = 60;
    private static final int ASK_EVERY = 64;
    private final WeekProblem problem;
    private final long[][] need;
    private final OrderCost cost;
    private final PackFill fill;
    private final int[][] itemsOf;
    private final double[] weighed;
    private final double[] price;
    private int[] packs;
    private double[] surplus;
    private long[] missing;
    private int[] best;
    private double bestCost = Double.MAX_VALUE;

    /** @param need milligrams by item and day, stock not yet taken off */
    OrderSearch(WeekProblem problem, long[][] need, double localWorth) {
        this.problem = problem;
        this.need = need;
        cost = new OrderCost(problem, localWorth);
        fill = new PackFill(problem);
        int deliveries = problem.deliveries().size();
        itemsOf = new int[deliveries][];
        for (int v = 0; v < deliveries; v++) {
            itemsOf[v] = Arrays.stream(cost.offersOf(v)).map(o -> problem.offers().get(o).item()).distinct().toArray();
        }
        weighed = new double[problem.offers().size()];
        price = new double[weighed.length];
        for (int o = 0; o < weighed.length; o++) {
            weighed[o] = cost.weighed(o);
        }
        packs = new int[weighed.length];
        surplus = new double[problem.items().size()];
        missing = new long[surplus.length];
    }

    /** @param packs orders with every minimum met where it can be. @param buyable whether nothing is missing */
    record Found(int[] packs, boolean buyable, int rounds) { }

    /** @param rounds changes tried; 0 for no limit, then {@code stop} must end it */
    Found run(long seed, int rounds, BooleanSupplier stop) {
        Random g = new Random(seed);
        double[] factor = new double[problem.deliveries().size()];
        Arrays.fill(factor, 1);
        fillAll(factor);
        double now = worth();
        keep(now);
        now = startFromMinimums(factor, now);
        double[] memory = new double[MEMORY];
        Arrays.fill(memory, now);
        int round = 0;
        for (; (rounds == 0 || round < rounds) && factor.length > 0; round++) {
            if (round % ASK_EVERY == 0 && stop.getAsBoolean()) {
                break;
            }
            int v = g.nextInt(factor.length);
            int other = g.nextInt(3) == 0 ? g.nextInt(factor.length) : v;
            double oldV = factor[v];
            double oldOther = factor[other];
            factor[v] = FACTORS[g.nextInt(FACTORS.length)];
            if (other != v) {
                factor[other] = FACTORS[g.nextInt(FACTORS.length)];
            }
            if (factor[v] == oldV && factor[other] == oldOther) {
                continue;
            }
            int[] oldPacks = packs.clone();
            double[] oldSurplus = surplus.clone();
            long[] oldMissing = missing.clone();
            refill(v, factor);
            if (other != v) {
                refill(other, factor);
            }
            double then = worth();
            int slot = round % MEMORY;
            if (then <= now || then <= memory[slot]) {
                now = then;
                keep(then);
            } else {
                factor[other] = oldOther;
                factor[v] = oldV;
                reprice(v, factor);
                reprice(other, factor);
                packs = oldPacks;
                surplus = oldSurplus;
                missing = oldMissing;
            }
            memory[slot] = now;
        }
        boolean buyable = best != null;
        return new Found(buyable ? best : cost.toppedUp(packs), buyable, round);
    }

    /** Closes, cheapest loss first, deliveries that would not reach their minimum; keeps it when that is better. */
    private double startFromMinimums(double[] factor, double before) {
        double now = before;
        List<Integer> order = new ArrayList<>();
        for (int v = 0; v < factor.length; v++) {
            order.add(v);
        }
        for (int v : order) {
            int[] oldPacks = packs.clone();
            double[] oldSurplus = surplus.clone();
            long[] oldMissing = missing.clone();
            factor[v] = CLOSED;
            refill(v, factor);
            double then = worth();
            if (then < now) {
                now = then;
                keep(then);
            } else {
                factor[v] = 1;
                reprice(v, factor);
                packs = oldPacks;
                surplus = oldSurplus;
                missing = oldMissing;
            }
        }
        return now;
    }

    private void fillAll(double[] factor) {
        for (int v = 0; v < factor.length; v++) {
            reprice(v, factor);
        }
        for (int i = 0; i < surplus.length; i++) {
            fill(i);
        }
    }

    private void reprice(int v, double[] factor) {
        for (int o : cost.offersOf(v)) {
            price[o] = factor[v] == CLOSED ? CLOSED : weighed[o] * factor[v];
        }
    }

    private void refill(int v, double[] factor) {
        reprice(v, factor);
        for (int i : itemsOf[v]) {
            fill(i);
        }
    }

    private void fill(int item) {
        fill.fill(item, need[item], price, packs);
        surplus[item] = fill.surplusCents();
        missing[item] = fill.missingMg();
    }

    private double worth() {
        double cents = cost.of(packs);
        for (int i = 0; i < surplus.length; i++) {
            cents += surplus[i];
            if (missing[i] > 0) {
                cents += 50_000 + missing[i] / 1000.0 * 50;
            }
        }
        return cents;
    }

    private void keep(double worth) {
        if (worth >= bestCost || worth >= OrderCost.CANNOT) {
            return;
        }
        for (long mg : missing) {
            if (mg > 0) {
                return;
            }
        }
        best = cost.toppedUp(packs);
        bestCost = worth;
    }
}
