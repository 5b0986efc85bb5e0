package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.stream.IntStream;

/** What does not change while packs do, laid out for speed; with scratch space, so not for several threads. */
final class OrderFacts {
    final FixedMenu menu;
    final WeekProblem problem;
    final int[][] offersOfItem;
    final int[][] offersOfDelivery;
    final int[] dayOf;
    final boolean[] local;
    final double[] keptPerMg;
    final double[] wastePerMg;
    final double target;
    final double localPrice;
    final double foodPrice;
    final double foodFree;
    final long[] lot;
    final long[] left;
    final long[] minutes;

    OrderFacts(FixedMenu menu) {
        this.menu = menu;
        problem = menu.problem;
        IntStream offers = IntStream.range(0, problem.offers().size());
        dayOf = offers.map(o -> problem.deliveries().get(problem.offers().get(o).delivery()).day()).toArray();
        offersOfItem = group(problem.items().size(), o -> problem.offers().get(o).item());
        offersOfDelivery = group(problem.deliveries().size(), o -> problem.offers().get(o).delivery());
        local = new boolean[dayOf.length];
        for (int o = 0; o < local.length; o++) {
            local[o] = problem.offers().get(o).locality() == WeekProblem.Locality.LOCAL;
        }
        keptPerMg = problem.items().stream().mapToDouble(i -> i.keptCentsPerMg().toDouble()).toArray();
        wastePerMg = problem.items().stream().mapToDouble(i -> i.wasteCentsPerMg().toDouble()).toArray();
        target = problem.prices().localTarget().toDouble();
        localPrice = problem.prices().localPrice().toDouble();
        foodPrice = problem.prices().foodCostPrice().toDouble();
        foodFree = problem.prices().foodCostAtMost().toDouble() * menu.salesCents - menu.stapleCents;
        lot = new long[problem.days()];
        left = new long[problem.days()];
        int dock = problem.prices().receivingResource();
        minutes = new long[dock < 0 ? 0 : problem.resources().get(dock).periods()];
    }

    private int[][] group(int groups, java.util.function.IntUnaryOperator of) {
        return IntStream.range(0, groups).mapToObj(g -> IntStream.range(0, dayOf.length)
                .filter(o -> of.applyAsInt(o) == g).toArray()).toArray(int[][]::new);
    }

    /** A pack's price when one is bought, with the worth of local money in it. */
    double weighed(int offer, double localWorth) {
        return problem.offers().get(offer).priceCents(1) * (1 + localWorth * (target - (local[offer] ? 1 : 0)));
    }

    /** What a milligram of surplus of an offer costs; less than nothing when it keeps. */
    double surplusCents(int offer) {
        int item = problem.offers().get(offer).item();
        return problem.items().get(item).keeps(dayOf[offer]) ? -keptPerMg[item] : wastePerMg[item];
    }
}
