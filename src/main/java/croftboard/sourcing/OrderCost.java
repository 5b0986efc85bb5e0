package croftboard.sourcing;

import croftboard.need.WeekProblem;

/**
 * Cents of a set of packs for a fixed menu, fast and nearly the account's: purchases, fees, local share, surplus,
 * receiving. The account itself judges what is kept in the end.
 */
final class OrderCost {
    /** What an order that cannot reach its minimum, or a dock without hands, counts for. */
    static final double CANNOT = 1e7;
    private final WeekProblem problem;
    private final double localWorth;
    private final double target;
    private final double localPrice;
    private final int[][] offersOf;
    private final boolean[] local;
    private final double[] net;
    private final long[] money;

    OrderCost(WeekProblem problem, double localWorth) {
        this.problem = problem;
        this.localWorth = localWorth;
        target = problem.prices().localTarget().toDouble();
        localPrice = problem.prices().localPrice().toDouble();
        int deliveries = problem.deliveries().size();
        money = new long[deliveries];
        offersOf = new int[deliveries][];
        for (int v = 0; v < deliveries; v++) {
            int delivery = v;
            offersOf[v] = java.util.stream.IntStream.range(0, problem.offers().size())
                    .filter(o -> problem.offers().get(o).delivery() == delivery).toArray();
        }
        local = new boolean[problem.offers().size()];
        net = new double[local.length];
        for (int o = 0; o < local.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            local[o] = offer.locality() == WeekProblem.Locality.LOCAL;
            WeekProblem.Item item = problem.items().get(offer.item());
            double surplus = item.keeps(problem.deliveries().get(offer.delivery()).day())
                    ? -item.keptCentsPerMg().toDouble() : item.wasteCentsPerMg().toDouble();
            net[o] = weighed(o) + surplus * offer.packMg();
        }
    }

    int[] offersOf(int delivery) {
        return offersOf[delivery];
    }

    /** A pack's price with the worth of local money in it. */
    double weighed(int offer) {
        return problem.offers().get(offer).priceCents(1) * (1 + localWorth * (target - (local[offer] ? 1 : 0)));
    }

    double of(int[] packs) {
        java.util.Arrays.fill(money, 0);
        long total = 0;
        long localMoney = 0;
        for (int o = 0; o < packs.length; o++) {
            if (packs[o] > 0) {
                WeekProblem.Offer offer = problem.offers().get(o);
                long cents = offer.costCents(packs[o]);
                money[offer.delivery()] += cents;
                total += cents;
                localMoney += local[o] ? cents : 0;
            }
        }
        double cost = total + localPrice * Math.max(0, target * total - localMoney);
        for (int v = 0; v < money.length; v++) {
            if (money[v] > 0) {
                WeekProblem.Delivery d = problem.deliveries().get(v);
                cost += d.feeCents();
                if (money[v] < d.minimumCents()) {
                    cost += topUp(v, d.minimumCents() - money[v], packs, false);
                }
            }
        }
        return cost + receiving();
    }

    private double receiving() {
        int dock = problem.prices().receivingResource();
        if (dock < 0) {
            return 0;
        }
        WeekProblem.Resource r = problem.resources().get(dock);
        long[] used = new long[r.periods()];
        for (int v = 0; v < money.length; v++) {
            if (money[v] > 0) {
                used[r.period()[problem.deliveries().get(v).day()]] += problem.prices().receivingMinutes();
            }
        }
        double cents = 0;
        for (int t = 0; t < used.length; t++) {
            cents += r.overtimeCents(t, used[t]);
            cents += used[t] > r.regular()[t] + r.overtime()[t] ? CANNOT : 0;
        }
        return cents;
    }

    /**
     * The least net loss of extra packs that reach the minimum of a delivery: one offer alone if one can, else several.
     *
     * @param apply put the packs into {@code packs}
     */
    private double topUp(int delivery, long shortBy, int[] packs, boolean apply) {
        int best = -1;
        int bestPacks = 0;
        double least = Double.MAX_VALUE;
        for (int o : offersOf[delivery]) {
            int extra = extraPacks(o, packs[o], shortBy);
            if (extra > 0 && extra * net[o] < least) {
                least = extra * net[o];
                best = o;
                bestPacks = extra;
            }
        }
        if (best < 0) {
            return several(delivery, shortBy, packs, apply);
        }
        if (apply) {
            packs[best] += bestPacks;
        }
        return least;
    }

    /** Fewest more packs whose money makes up the shortfall, price breaks regarded; 0 when there are not enough. */
    private int extraPacks(int o, int now, long shortBy) {
        WeekProblem.Offer offer = problem.offers().get(o);
        long have = offer.costCents(now);
        for (int extra = 1; now + extra <= offer.maxPacks(); extra++) {
            if (offer.costCents(now + extra) - have >= shortBy) {
                return extra;
            }
        }
        return 0;
    }

    private double several(int delivery, long shortBy, int[] packs, boolean apply) {
        Integer[] order = java.util.Arrays.stream(offersOf[delivery]).boxed().toArray(Integer[]::new);
        java.util.Arrays.sort(order, java.util.Comparator.comparingDouble(
                (Integer o) -> net[o] / problem.offers().get(o).priceCents(1)).thenComparingInt(o -> o));
        int[] trial = apply ? packs : packs.clone();
        double loss = 0;
        long left = shortBy;
        for (int o : order) {
            WeekProblem.Offer offer = problem.offers().get(o);
            while (left > 0 && trial[o] < offer.maxPacks()) {
                left -= offer.costCents(trial[o] + 1) - offer.costCents(trial[o]);
                trial[o]++;
                loss += net[o];
            }
        }
        return left > 0 ? CANNOT : loss;
    }

    /** The packs with every open delivery brought to its minimum where that can be done. */
    int[] toppedUp(int[] packs) {
        int[] all = packs.clone();
        long[] sum = new long[money.length];
        for (int o = 0; o < all.length; o++) {
            sum[problem.offers().get(o).delivery()] += problem.offers().get(o).costCents(all[o]);
        }
        for (int v = 0; v < sum.length; v++) {
            long minimum = problem.deliveries().get(v).minimumCents();
            if (sum[v] > 0 && sum[v] < minimum) {
                topUp(v, minimum - sum[v], all, true);
            }
        }
        return all;
    }
}
