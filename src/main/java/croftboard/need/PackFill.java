package croftboard.need;

import java.util.ArrayList;
import java.util.List;

/**
 * Whole packs for one item by one greedy rule: each time the pack that costs least for the milligrams it serves, surplus
 * counted at its worth. Deliveries that cannot reach their minimum even sold out are left alone. Fast: no allocation
 * after the start. Not safe for several threads.
 */
public final class PackFill {
    /** Price of a day on which something is missing, beside {@link #SHORT_PER_GRAM}: steep, or menus come out that cannot be bought. */
    public static final long SHORT_CENTS = 30_000;
    private static final double SHORT_PER_GRAM = 40;
    private final int days;
    private final int[][] offer;
    private final long[][] packMg;
    private final int[][] day;
    private final int[][] most;
    private final int[][] least;
    private final int[] life;
    private final double[] keptPerMg;
    private final double[] wastePerMg;
    private final boolean[][] keeps;
    private final long[][] stock;
    private final int[][] stockFrom;
    private final int[][] stockUntil;
    private final long[] left;
    private final int[] free;
    private double surplusCents;
    private long missingMg;

    public PackFill(WeekProblem problem) {
        int items = problem.items().size();
        days = problem.days();
        offer = new int[items][];
        packMg = new long[items][];
        day = new int[items][];
        most = new int[items][];
        least = new int[items][];
        keeps = new boolean[items][];
        life = new int[items];
        keptPerMg = new double[items];
        wastePerMg = new double[items];
        stock = new long[items][];
        stockFrom = new int[items][];
        stockUntil = new int[items][];
        left = new long[days];
        List<List<Integer>> offers = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            offers.add(new ArrayList<>());
        }
        for (int o = 0; o < problem.offers().size(); o++) {
            offers.get(problem.offers().get(o).item()).add(o);
        }
        int widest = 1;
        boolean[] reachable = Minimums.reachable(problem);
        for (int i = 0; i < items; i++) {
            load(problem, i, offers.get(i), reachable);
            widest = Math.max(widest, offers.get(i).size());
        }
        free = new int[widest];
    }

    private void load(WeekProblem problem, int i, List<Integer> offers, boolean[] reachable) {
        WeekProblem.Item item = problem.items().get(i);
        life[i] = item.lifeDays();
        keptPerMg[i] = item.keptCentsPerMg().toDouble();
        wastePerMg[i] = item.wasteCentsPerMg().toDouble();
        int n = offers.size();
        offer[i] = offers.stream().mapToInt(o -> o).toArray();
        packMg[i] = new long[n];
        day[i] = new int[n];
        most[i] = new int[n];
        least[i] = new int[n];
        keeps[i] = new boolean[n];
        for (int q = 0; q < n; q++) {
            WeekProblem.Offer o = problem.offers().get(offer[i][q]);
            packMg[i][q] = o.packMg();
            day[i][q] = problem.deliveries().get(o.delivery()).day();
            most[i][q] = reachable[o.delivery()] ? o.maxPacks() : o.minPacks();
            least[i][q] = o.minPacks();
            keeps[i][q] = item.keeps(day[i][q]);
        }
        List<WeekProblem.ItemStock> lots = problem.stock().stream().filter(s -> s.item() == i)
                .sorted(java.util.Comparator.comparingInt(WeekProblem.ItemStock::until)).toList();
        stock[i] = lots.stream().mapToLong(WeekProblem.ItemStock::mg).toArray();
        stockFrom[i] = lots.stream().mapToInt(s -> Math.max(0, s.from())).toArray();
        stockUntil[i] = lots.stream().mapToInt(s -> Math.min(days - 1, s.until())).toArray();
    }

    /**
     * Buys for one item.
     *
     * @param need milligrams by day, stock not yet taken off
     * @param packCents what a pack of each offer counts for; infinite: it cannot be had
     * @param packs set to the packs of the item's offers; others are left alone
     * @return cents for packs and surplus, rounded; what is missing counts steeply
     */
    public long fill(int item, long[] need, double[] packCents, int[] packs) {
        System.arraycopy(need, 0, left, 0, days);
        takeStock(item);
        surplusCents = 0;
        missingMg = 0;
        double total = 0;
        int[] ids = offer[item];
        for (int q = 0; q < ids.length; q++) {
            free[q] = most[item][q] - least[item][q];
            packs[ids[q]] = least[item][q];
            for (int k = 0; k < least[item][q]; k++) {
                total += packCents[ids[q]] == Double.POSITIVE_INFINITY ? 0 : packCents[ids[q]];
                buy(item, q);
            }
        }
        for (int d = 0; d < days; d++) {
            while (left[d] > 0) {
                int best = cheapest(item, d, packCents);
                if (best < 0) {
                    total += SHORT_CENTS + left[d] / 1000.0 * SHORT_PER_GRAM;
                    missingMg += left[d];
                    left[d] = 0;
                } else {
                    free[best]--;
                    packs[ids[best]]++;
                    total += packCents[ids[best]];
                    buy(item, best);
                }
            }
        }
        return Math.round(total + surplusCents);
    }

    /** Of the last fill: what its surplus costs; less than nothing when it keeps. */
    public double surplusCents() {
        return surplusCents;
    }

    /** Of the last fill: milligrams that nothing can meet. */
    public long missingMg() {
        return missingMg;
    }

    private void takeStock(int item) {
        for (int k = 0; k < stock[item].length; k++) {
            long mg = stock[item][k];
            for (int d = stockFrom[item][k]; d <= stockUntil[item][k] && mg > 0; d++) {
                long take = Math.min(mg, left[d]);
                mg -= take;
                left[d] -= take;
            }
        }
    }

    /** The pack with the least cents for a milligram that it serves. */
    private int cheapest(int item, int d, double[] packCents) {
        int best = -1;
        double least = Double.MAX_VALUE;
        for (int q = 0; q < day[item].length; q++) {
            int t = day[item][q];
            double price = packCents[offer[item][q]];
            if (free[q] == 0 || t > d || d > t + life[item] || price == Double.POSITIVE_INFINITY) {
                continue;
            }
            long pack = packMg[item][q];
            long served = 0;
            int end = Math.min(days - 1, t + life[item]);
            for (int e = d; e <= end && served < pack; e++) {
                served += left[e];
            }
            served = Math.min(served, pack);
            double each = (price + surplus(item, q, pack - served)) / served;
            if (each < least) {
                least = each;
                best = q;
            }
        }
        return best;
    }

    /** What surplus of a pack costs: less than nothing when it keeps. */
    private double surplus(int item, int q, long mg) {
        return mg * (keeps[item][q] ? -keptPerMg[item] : wastePerMg[item]);
    }

    private void buy(int item, int q) {
        long pack = packMg[item][q];
        int end = Math.min(days - 1, day[item][q] + life[item]);
        for (int d = day[item][q]; d <= end && pack > 0; d++) {
            long take = Math.min(pack, left[d]);
            pack -= take;
            left[d] -= take;
        }
        surplusCents += surplus(item, q, pack);
    }
}
