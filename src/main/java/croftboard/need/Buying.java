package croftboard.need;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What packs bought do for given needs: which delivery feeds which day, what is left over, and whether it keeps.
 *
 * <p>Stock is used first, soonest expiry first; then the oldest delivery that is still good. As all deliveries of an
 * item live equally long, oldest first leaves the least waste.
 *
 * @param flows grams of a delivery or stock lot used on a day
 * @param keptMg surplus that is still good after the week, by item
 * @param wastedMg surplus that is not, by item; stock that nobody uses is not counted
 * @param missingMg needs that nothing meets, by item and day: a must is broken
 */
public record Buying(List<Flow> flows, long[] keptMg, long[] wastedMg, long[][] missingMg) {

    /** @param delivery day of the delivery; -1 for stock */
    public record Flow(int item, int delivery, int stockLot, int day, long mg) { }

    /** @param packs of each offer */
    public static Buying of(WeekProblem problem, long[][] needMg, int[] packs) {
        int items = problem.items().size();
        List<Flow> flows = new ArrayList<>();
        long[][] left = afterStock(problem, needMg, flows);
        long[][] bought = new long[items][problem.days()];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            bought[offer.item()][problem.deliveries().get(offer.delivery()).day()] += packs[o] * offer.packMg();
        }
        long[] kept = new long[items];
        long[] wasted = new long[items];
        for (int i = 0; i < items; i++) {
            WeekProblem.Item item = problem.items().get(i);
            long[] lot = bought[i];
            for (int d = 0; d < problem.days(); d++) {
                for (int t = Math.max(0, d - item.lifeDays()); t <= d && left[i][d] > 0; t++) {
                    long take = Math.min(lot[t], left[i][d]);
                    if (take > 0) {
                        lot[t] -= take;
                        left[i][d] -= take;
                        flows.add(new Flow(i, t, -1, d, take));
                    }
                }
            }
            for (int t = 0; t < problem.days(); t++) {
                if (item.keeps(t)) {
                    kept[i] += lot[t];
                } else {
                    wasted[i] += lot[t];
                }
            }
        }
        return new Buying(List.copyOf(flows), kept, wasted, left);
    }

    /** Needs less what dated stock covers. */
    public static long[][] afterStock(WeekProblem problem, long[][] needMg) {
        return afterStock(problem, needMg, new ArrayList<>());
    }

    private static long[][] afterStock(WeekProblem problem, long[][] needMg, List<Flow> flows) {
        long[][] left = new long[needMg.length][];
        for (int i = 0; i < left.length; i++) {
            left[i] = Arrays.copyOf(needMg[i], needMg[i].length);
        }
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < problem.stock().size(); k++) {
            order.add(k);
        }
        order.sort(java.util.Comparator.comparingInt((Integer k) -> problem.stock().get(k).until())
                .thenComparingInt(k -> k));
        for (int k : order) {
            WeekProblem.ItemStock lot = problem.stock().get(k);
            long mg = lot.mg();
            int last = Math.min(lot.until(), problem.days() - 1);
            for (int d = Math.max(0, lot.from()); d <= last && mg > 0; d++) {
                long take = Math.min(mg, left[lot.item()][d]);
                if (take > 0) {
                    mg -= take;
                    left[lot.item()][d] -= take;
                    flows.add(new Flow(lot.item(), -1, k, d, take));
                }
            }
        }
        return left;
    }

    public boolean complete() {
        return Arrays.stream(missingMg).flatMapToLong(Arrays::stream).allMatch(mg -> mg == 0);
    }
}
