package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.Comparator;

/** The cheapest extra packs that bring an order to its minimum: of one offer if one has enough, else of several. */
final class TopUp {
    private final OrderFacts facts;
    private final double[] weight;
    private final int[][] byLoss;

    TopUp(OrderFacts facts, double localWorth) {
        this.facts = facts;
        weight = new double[facts.dayOf.length];
        for (int o = 0; o < weight.length; o++) {
            weight[o] = 1 + localWorth * (facts.target - (facts.local[o] ? 1 : 0));
        }
        byLoss = new int[facts.offersOfDelivery.length][];
        for (int v = 0; v < byLoss.length; v++) {
            byLoss[v] = Arrays.stream(facts.offersOfDelivery[v]).boxed()
                    .sorted(Comparator.comparingDouble(this::lossPerCent).thenComparingInt(o -> o))
                    .mapToInt(o -> o).toArray();
        }
    }

    private double lossPerCent(int o) {
        WeekProblem.Offer offer = facts.problem.offers().get(o);
        return weight[o] + facts.surplusCents(o) * offer.packMg() / Math.max(1, offer.priceCents(1));
    }

    /** What the extra packs of all orders below their minimum would cost, nearly; steep where they cannot be had. */
    double loss(OrderState state) {
        double loss = 0;
        for (int v = 0; v < byLoss.length; v++) {
            long below = state.belowMinimum(v);
            loss += below > 0 ? loss(state, v, below) : 0;
        }
        return loss;
    }

    private double loss(OrderState state, int v, long below) {
        int single = single(state, v, below);
        if (single >= 0) {
            return loss(single, state.packs[single], extra(single, state.packs[single], below));
        }
        double loss = 0;
        long left = below;
        for (int o : byLoss[v]) {
            int n = state.packs[o];
            int more = Math.min(fewest(o, left), facts.problem.offers().get(o).maxPacks() - n);
            if (left > 0 && more > 0) {
                loss += loss(o, n, more);
                left -= money(o, n, more);
            }
        }
        return loss + OrderState.tooSmall(left);
    }

    /** Adds the packs. */
    void apply(OrderState state) {
        for (int v = 0; v < byLoss.length; v++) {
            long below = state.belowMinimum(v);
            int single = below > 0 ? single(state, v, below) : -1;
            if (single >= 0) {
                state.set(single, state.packs[single] + extra(single, state.packs[single], below));
                continue;
            }
            for (int k = 0; k < byLoss[v].length && below > 0; k++) {
                int o = byLoss[v][k];
                int n = state.packs[o];
                state.set(o, Math.max(n, Math.min(facts.problem.offers().get(o).maxPacks(), n + fewest(o, below))));
                below = state.belowMinimum(v);
            }
        }
    }

    private int single(OrderState state, int v, long below) {
        int best = -1;
        double least = Double.MAX_VALUE;
        for (int o : facts.offersOfDelivery[v]) {
            int extra = extra(o, state.packs[o], below);
            double loss = extra > 0 ? loss(o, state.packs[o], extra) : Double.MAX_VALUE;
            if (loss < least) {
                least = loss;
                best = o;
            }
        }
        return best;
    }

    private double loss(int o, int now, int more) {
        return money(o, now, more) * weight[o]
                + facts.surplusCents(o) * facts.problem.offers().get(o).packMg() * more;
    }

    private long money(int o, int now, int more) {
        WeekProblem.Offer offer = facts.problem.offers().get(o);
        return offer.costCents(now + more) - offer.costCents(now);
    }

    private int fewest(int o, long below) {
        long price = Math.max(1, facts.problem.offers().get(o).priceCents(1));
        return (int) Math.min(Integer.MAX_VALUE / 2, (below + price - 1) / price);
    }

    /** Fewest more packs whose money makes up what is missing, price breaks regarded; 0 when there are not enough. */
    private int extra(int o, int now, long below) {
        WeekProblem.Offer offer = facts.problem.offers().get(o);
        int most = offer.maxPacks() - now;
        int first = fewest(o, below);
        for (int more = first; more <= most; more++) {
            if (money(o, now, more) >= below) {
                return more;
            }
        }
        return 0;
    }
}
