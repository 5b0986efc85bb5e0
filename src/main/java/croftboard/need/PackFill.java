package croftboard.need;

/**
 * Whole packs for one item by one greedy rule: each time the pack that costs least for the milligrams it serves, surplus
 * counted at its worth. Deliveries that cannot reach their minimum even sold out are left alone. Fast: no allocation
 * after the start. Not safe for several threads.
 */
public final class PackFill {
    /** Price of a day on which something is missing, beside {@link #SHORT_PER_GRAM}: steep, or menus come out that cannot be bought. */
    public static final long SHORT_CENTS = 30_000;
    private static final double SHORT_PER_GRAM = 40;
    private final FillFacts facts;
    private final long[] left;
    private final int[] free;
    private final long[] ahead;
    private int[] packs;
    private double surplusCents;
    private long missingMg;

    public PackFill(WeekProblem problem) {
        facts = new FillFacts(problem);
        left = new long[facts.days];
        ahead = new long[facts.days];
        free = new int[facts.widest()];
    }

    /**
     * Buys for one item.
     *
     * @param need milligrams by day, stock not yet taken off
     * @param packCents what a pack of each offer counts for; infinite: it cannot be had
     * @param bought set to the packs of the item's offers; others are left alone
     * @return cents for packs and surplus, rounded; what is missing counts steeply
     */
    public long fill(int item, long[] need, double[] packCents, int[] bought) {
        packs = bought;
        missingMg = 0;
        surplusCents = 0;
        double total = start(item, need, packCents);
        for (int d = 0; d < facts.days; d++) {
            total += left[d] > 0 ? day(item, d, packCents) : 0;
        }
        return Math.round(total + surplusCents);
    }

    /** Needs less stock and promised packs, and what can be bought beyond them. @return cents of promised packs */
    private double start(int item, long[] need, double[] packCents) {
        System.arraycopy(need, 0, left, 0, facts.days);
        facts.takeStock(item, left);
        double total = 0;
        int[] ids = facts.offer[item];
        for (int q = 0; q < ids.length; q++) {
            free[q] = facts.more[item][q];
            packs[ids[q]] = facts.least[item][q];
            for (int k = 0; k < facts.least[item][q]; k++) {
                total += packCents[ids[q]] == Double.POSITIVE_INFINITY ? 0 : packCents[ids[q]];
                surplusCents += facts.serve(item, q, facts.day[item][q], left) * facts.surplusPerMg[item][q];
            }
        }
        return total;
    }

    /** Buys what is left to be met on a day. @return cents of the packs, surplus aside, and of what is missing */
    private double day(int item, int d, double[] packCents) {
        double total = 0;
        while (left[d] > 0) {
            int best = cheapest(item, d, packCents);
            if (best < 0) {
                total += SHORT_CENTS + left[d] / 1000.0 * SHORT_PER_GRAM;
                missingMg += left[d];
                left[d] = 0;
            } else {
                free[best]--;
                packs[facts.offer[item][best]]++;
                total += packCents[facts.offer[item][best]];
                surplusCents += facts.serve(item, best, d, left) * facts.surplusPerMg[item][best];
            }
        }
        return total;
    }

    /** Of the last fill: what its surplus costs; less than nothing when it keeps. */
    public double surplusCents() {
        return surplusCents;
    }

    /** Of the last fill: milligrams that nothing can meet. */
    public long missingMg() {
        return missingMg;
    }

    /** The place of the pack with the least cents for a milligram that it serves; -1 when there is none. */
    private int cheapest(int item, int d, double[] packCents) {
        int[] ids = facts.offer[item];
        int[] last = facts.lastDay[item];
        long[] size = facts.packMg[item];
        double[] surplus = facts.surplusPerMg[item];
        long sum = 0;
        for (int e = d, end = Math.min(facts.days - 1, d + facts.life[item]); e <= end; e++) {
            sum += left[e];
            ahead[e] = sum;
        }
        int best = -1;
        double least = Double.MAX_VALUE;
        for (int q = facts.from[item][d], until = facts.until[item][d]; q < until; q++) {
            double price = packCents[ids[q]];
            if (free[q] > 0 && price != Double.POSITIVE_INFINITY) {
                long served = Math.min(size[q], ahead[last[q]]);
                double each = (price + (size[q] - served) * surplus[q]) / served;
                if (each < least) {
                    least = each;
                    best = q;
                }
            }
        }
        return best;
    }
}
