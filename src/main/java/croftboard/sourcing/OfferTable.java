package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Offers, items and stock of a week as plain arrays, for speed. Nothing here changes. */
final class OfferTable {
    /** Up to so many days a search looks at all offers of an item; beyond, at those near the days that changed. */
    static final int SHORT = 21;
    final WeekProblem problem;
    final int days;
    final int[][] offersOfItem;
    final int[][] offersOfDelivery;
    final int[] item;
    final int[] delivery;
    final int[] day;
    final long[] packMg;
    final int[] least;
    final int[] most;
    final boolean[] local;
    /** What a cent spent on an offer counts for when packs are compared: it carries the worth of local money. */
    final double[] weight;
    final long[] minimum;
    final long[] fee;
    final int[] life;
    final double[] keptPerMg;
    final double[] wastePerMg;
    private final WeekProblem.Offer[] offers;
    private final long[] flatPrice;
    private final boolean[][] keeps;
    private final List<List<WeekProblem.ItemStock>> stock;

    /** @param localWorth dollars that one more dollar spent locally is worth */
    OfferTable(WeekProblem problem, double localWorth) {
        this.problem = problem;
        days = problem.days();
        offers = problem.offers().toArray(new WeekProblem.Offer[0]);
        int n = offers.length;
        item = IntStream.range(0, n).map(o -> offers[o].item()).toArray();
        delivery = IntStream.range(0, n).map(o -> offers[o].delivery()).toArray();
        day = IntStream.of(delivery).map(v -> problem.deliveries().get(v).day()).toArray();
        packMg = IntStream.range(0, n).mapToLong(o -> offers[o].packMg()).toArray();
        least = IntStream.range(0, n).map(o -> offers[o].minPacks()).toArray();
        most = IntStream.range(0, n).map(o -> offers[o].maxPacks()).toArray();
        flatPrice = IntStream.range(0, n).mapToLong(o -> offers[o].tiers().size() == 1 ? offers[o].priceCents(1) : -1)
                .toArray();
        local = new boolean[n];
        weight = new double[n];
        for (int o = 0; o < n; o++) {
            local[o] = offers[o].locality() == WeekProblem.Locality.LOCAL;
            weight[o] = 1 + localWorth * (problem.prices().localTarget().toDouble() - (local[o] ? 1 : 0));
        }
        minimum = problem.deliveries().stream().mapToLong(WeekProblem.Delivery::minimumCents).toArray();
        fee = problem.deliveries().stream().mapToLong(WeekProblem.Delivery::feeCents).toArray();
        List<WeekProblem.Item> items = problem.items();
        offersOfItem = group(items.size(), item);
        offersOfDelivery = group(minimum.length, delivery);
        life = items.stream().mapToInt(WeekProblem.Item::lifeDays).toArray();
        keptPerMg = items.stream().mapToDouble(i -> i.keptCentsPerMg().toDouble()).toArray();
        wastePerMg = items.stream().mapToDouble(i -> i.wasteCentsPerMg().toDouble()).toArray();
        keeps = new boolean[items.size()][days];
        for (int i = 0; i < keeps.length; i++) {
            for (int d = 0; d < days; d++) {
                keeps[i][d] = items.get(i).keeps(d);
            }
        }
        stock = IntStream.range(0, items.size()).mapToObj(i -> problem.stock().stream().filter(s -> s.item() == i)
                .sorted(Comparator.comparingInt(WeekProblem.ItemStock::until)).toList()).toList();
    }

    /** Offers of an item on deliveries from the one day to the other. */
    int[] between(int i, int from, int until) {
        int[] own = offersOfItem[i];
        int n = 0;
        for (int o : own) {
            n += day[o] >= from && day[o] <= until ? 1 : 0;
        }
        if (n == own.length) {
            return own;
        }
        int[] near = new int[n];
        n = 0;
        for (int o : own) {
            if (day[o] >= from && day[o] <= until) {
                near[n++] = o;
            }
        }
        return near;
    }

    private static int[][] group(int groups, int[] of) {
        return IntStream.range(0, groups).mapToObj(g -> IntStream.range(0, of.length).filter(o -> of[o] == g).toArray())
                .toArray(int[][]::new);
    }

    long cost(int o, int packs) {
        return flatPrice[o] >= 0 ? flatPrice[o] * packs : offers[o].costCents(packs);
    }

    /** What a milligram of surplus of a delivery costs; less than nothing when it keeps. */
    double surplus(int i, int deliveryDay) {
        return keeps[i][deliveryDay] ? -keptPerMg[i] : wastePerMg[i];
    }

    /** Needs of an item less its dated stock, as {@link croftboard.need.Buying} takes it. @return their sum */
    long afterStock(int i, long[] need, long[] toBuy) {
        System.arraycopy(need, 0, toBuy, 0, days);
        for (WeekProblem.ItemStock lot : stock.get(i)) {
            long mg = lot.mg();
            for (int d = Math.max(0, lot.from()); d <= Math.min(days - 1, lot.until()) && mg > 0; d++) {
                long take = Math.min(mg, toBuy[d]);
                mg -= take;
                toBuy[d] -= take;
            }
        }
        long sum = 0;
        for (long mg : toBuy) {
            sum += mg;
        }
        return sum;
    }
}
