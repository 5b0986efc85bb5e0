package croftboard.bench;

import croftboard.need.Minimums;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.util.stream.IntStream;

/**
 * Orders as they are written by hand: item by item from the cheapest vendor by the gram that still comes in time and still
 * has packs, for as long as the item keeps, rounded up to whole packs. An order of less than half its minimum is dropped
 * and its items bought elsewhere, where that can be; any other is filled up with more of its cheapest pack.
 */
final class HandOrders {
    private final WeekProblem problem;
    private final long[][] need;
    private final boolean[] dropped;
    private int[] packs;
    private boolean missing;

    private HandOrders(WeekProblem problem, int[] choice) {
        this.problem = problem;
        need = Workload.of(problem, choice).needMg();
        boolean[] reachable = Minimums.reachable(problem);
        dropped = new boolean[reachable.length];
        for (int v = 0; v < dropped.length; v++) {
            dropped[v] = !reachable[v];
        }
    }

    /** Packs of each offer. */
    static int[] of(WeekProblem problem, int[] choice) {
        HandOrders orders = new HandOrders(problem, choice);
        orders.buyAll();
        for (int v = orders.smallest(); v >= 0; v = orders.smallest()) {
            orders.dropped[v] = true;
            orders.buyAll();
            if (orders.missing) {
                orders.dropped[v] = false;
                orders.buyAll();
                break;
            }
        }
        orders.fillUp();
        return orders.packs;
    }

    private WeekProblem.Offer offer(int o) {
        return problem.offers().get(o);
    }

    private int day(int o) {
        return problem.deliveries().get(offer(o).delivery()).day();
    }

    private void buyAll() {
        packs = problem.offers().stream().mapToInt(WeekProblem.Offer::minPacks).toArray();
        missing = false;
        for (int i = 0; i < need.length; i++) {
            buy(i);
        }
    }

    private void buy(int item) {
        int[] offers = IntStream.range(0, packs.length).filter(o -> offer(o).item() == item
                && !dropped[offer(o).delivery()]).toArray();
        int life = problem.items().get(item).lifeDays();
        long[] left = need[item].clone();
        for (int d = 0; d < left.length; d++) {
            while (left[d] > 0) {
                int best = cheapest(offers, d, life);
                if (best < 0) {
                    missing = true;
                    break;
                }
                packs[best]++;
                long pack = offer(best).packMg();
                for (int e = d; e < left.length && e <= day(best) + life && pack > 0; e++) {
                    long take = Math.min(pack, left[e]);
                    left[e] -= take;
                    pack -= take;
                }
            }
        }
    }

    private int cheapest(int[] offers, int d, int life) {
        int best = -1;
        for (int o : offers) {
            boolean open = day(o) <= d && d <= day(o) + life && packs[o] < offer(o).maxPacks();
            if (open && (best < 0 || perMg(o) < perMg(best))) {
                best = o;
            }
        }
        return best;
    }

    private double perMg(int o) {
        return offer(o).priceCents(1) / (double) offer(o).packMg();
    }

    private long money(int delivery) {
        return IntStream.range(0, packs.length).filter(o -> offer(o).delivery() == delivery)
                .mapToLong(o -> offer(o).costCents(packs[o])).sum();
    }

    /** The delivery furthest below half its minimum; -1 when there is none. */
    private int smallest() {
        int worst = -1;
        double least = .5;
        for (int v = 0; v < dropped.length; v++) {
            double share = money(v) / (double) Math.max(1, problem.deliveries().get(v).minimumCents());
            if (share > 0 && share < least) {
                least = share;
                worst = v;
            }
        }
        return worst;
    }

    private void fillUp() {
        for (int v = 0; v < dropped.length; v++) {
            int delivery = v;
            int[] cheapFirst = IntStream.range(0, packs.length).filter(o -> offer(o).delivery() == delivery)
                    .boxed().sorted((a, b) -> Long.compare(offer(a).priceCents(1), offer(b).priceCents(1)))
                    .mapToInt(o -> o).toArray();
            for (int o : cheapFirst) {
                while (money(v) > 0 && money(v) < problem.deliveries().get(v).minimumCents()
                        && packs[o] < offer(o).maxPacks()) {
                    packs[o]++;
                }
            }
        }
    }
}
