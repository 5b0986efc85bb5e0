package croftboard.need;

import java.util.stream.LongStream;

/** Which deliveries can reach their minimum at all. */
public final class Minimums {
    private Minimums() { }

    /** By delivery: whether the money of everything it offers comes up to its minimum. Where not, nothing can be ordered. */
    public static boolean[] reachable(WeekProblem problem) {
        long[] most = new long[problem.deliveries().size()];
        for (WeekProblem.Offer offer : problem.offers()) {
            most[offer.delivery()] += LongStream.rangeClosed(0, offer.maxPacks())
                    .map(n -> offer.costCents(Math.toIntExact(n))).max().orElse(0);
        }
        boolean[] reachable = new boolean[most.length];
        for (int v = 0; v < most.length; v++) {
            reachable[v] = most[v] >= problem.deliveries().get(v).minimumCents();
        }
        return reachable;
    }
}
