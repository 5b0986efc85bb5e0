package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;

/** Whole packs for one item by one greedy rule, fast: no allocation after the start. Not safe for several threads. */
final class GreedyFill {
    /** Price of a day on which something is missing, beside {@link #SHORT_PER_GRAM}: steep, or menus come out that cannot be bought. */
    static final long SHORT_CENTS = 30_000;
    private static final double SHORT_PER_GRAM = 40;
    private final int days;
    private final double[][] cents;
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

    GreedyFill(WeekProblem problem, double[] packCents) {
        int items = problem.items().size();
        days = problem.days();
        cents = new double[items][];
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
        for (int o = 0; o < packCents.length; o++) {
            offers.get(problem.offers().get(o).item()).add(o);
        }
        int widest = 1;
        for (int i = 0; i < items; i++) {
            load(problem, i, offers.get(i), packCents);
            widest = Math.max(widest, offers.get(i).size());
        }
        free = new int[widest];
    }

    private void load(WeekProblem problem, int i, List<Integer> offers, double[] packCents) {
        WeekProblem.Item item = problem.items().get(i);
        life[i] = item.lifeDays();
        keptPerMg[i] = item.keptCentsPerMg().toDouble();
        wastePerMg[i] = item.wasteCentsPerMg().toDouble();
        int n = offers.size();
        cents[i] = new double[n];
        packMg[i] = new long[n];
        day[i] = new int[n];
        most[i] = new int[n];
        least[i] = new int[n];
        keeps[i] = new boolean[n];
        for (int q = 0; q < n; q++) {
            WeekProblem.Offer offer = problem.offers().get(offers.get(q));
            cents[i][q] = packCents[offers.get(q)];
            packMg[i][q] = offer.packMg();
            day[i][q] = problem.deliveries().get(offer.delivery()).day();
            most[i][q] = offer.maxPacks();
            least[i][q] = offer.minPacks();
            keeps[i][q] = item.keeps(day[i][q]);
        }
        List<WeekProblem.ItemStock> lots = problem.stock().stream().filter(s -> s.item() == i)
                .sorted(java.util.Comparator.comparingInt(WeekProblem.ItemStock::until)).toList();
        stock[i] = lots.stream().mapToLong(WeekProblem.ItemStock::mg).toArray();
        stockFrom[i] = lots.stream().mapToInt(s -> Math.max(0, s.from())).toArray();
        stockUntil[i] = lots.stream().mapToInt(s -> Math.min(days - 1, s.until())).toArray();
    }

    /** Cents, rounded, for the packs that meet the need; what is missing counts steeply. @param need mg by day */
    long cents(int item, long[] need) {
        System.arraycopy(need, 0, left, 0, days);
        takeStock(item);
        double total = 0;
        for (int q = 0; q < day[item].length; q++) {
            free[q] = most[item][q] - least[item][q];
            for (int k = 0; k < least[item][q]; k++) {
                total += buy(item, q);
            }
        }
        for (int d = 0; d < days; d++) {
            while (left[d] > 0) {
                int best = cheapest(item, d);
                if (best < 0) {
                    total += SHORT_CENTS + left[d] / 1000.0 * SHORT_PER_GRAM;
                    left[d] = 0;
                } else {
                    free[best]--;
                    total += buy(item, best);
                }
            }
        }
        return Math.round(total);
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
    private int cheapest(int item, int d) {
        int best = -1;
        double least = Double.MAX_VALUE;
        for (int q = 0; q < day[item].length; q++) {
            int t = day[item][q];
            if (free[q] == 0 || t > d || d > t + life[item]) {
                continue;
            }
            long pack = packMg[item][q];
            long served = 0;
            int end = Math.min(days - 1, t + life[item]);
            for (int e = d; e <= end && served < pack; e++) {
                served += left[e];
            }
            served = Math.min(served, pack);
            double each = (cents[item][q] + surplus(item, q, pack - served)) / served;
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

    private double buy(int item, int q) {
        long pack = packMg[item][q];
        int end = Math.min(days - 1, day[item][q] + life[item]);
        for (int d = day[item][q]; d <= end && pack > 0; d++) {
            long take = Math.min(pack, left[d]);
            pack -= take;
            left[d] -= take;
        }
        return cents[item][q] + surplus(item, q, pack);
    }
}
