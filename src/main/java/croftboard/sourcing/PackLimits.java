package croftboard.sourcing;

import croftboard.need.Minimums;
import croftboard.need.WeekProblem;

/**
 * How many packs of an offer can be of use: as many as all needs within their life could take. More are bought only to
 * reach a minimum, which {@link Purchases} counts as money added to the delivery; so the limit is not drawn where more
 * packs could pay for themselves: a price break above it, packs for nothing, surplus worth its price.
 */
final class PackLimits {
    private PackLimits() { }

    /** Everything that can be had; of a delivery that cannot reach its minimum only what is promised. */
    static int[] all(WeekProblem problem) {
        boolean[] reachable = Minimums.reachable(problem);
        return problem.offers().stream().mapToInt(o -> reachable[o.delivery()] ? o.maxPacks() : o.minPacks()).toArray();
    }

    /** @param need milligrams by item and day that must be bought */
    static int[] useful(WeekProblem problem, long[][] need) {
        int[] limit = all(problem);
        for (int o = 0; o < limit.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            if (offer.lowestPriceCents() > 0 && keptShare(problem, offer) < 1) {
                long packs = (withinLife(problem, offer, need) + offer.packMg() - 1) / offer.packMg();
                int least = Math.max(offer.minPacks(), lastBreak(offer));
                limit[o] = (int) Math.min(limit[o], Math.max(least, packs));
            }
        }
        return limit;
    }

    private static long withinLife(WeekProblem problem, WeekProblem.Offer offer, long[][] need) {
        int day = problem.deliveries().get(offer.delivery()).day();
        int last = Math.min(problem.days() - 1, day + problem.items().get(offer.item()).lifeDays());
        long mg = 0;
        for (int d = day; d <= last; d++) {
            mg += need[offer.item()][d];
        }
        return mg;
    }

    /** Packs from which on no further price break can be reached; 0 when there is none. */
    private static int lastBreak(WeekProblem.Offer offer) {
        return offer.tiers().stream().skip(1).mapToInt(WeekProblem.Tier::packs).filter(p -> p <= offer.maxPacks())
                .max().orElse(0);
    }

    /** Share of its lowest price that a whole pack of surplus is still worth; 0 when it does not keep. */
    static double keptShare(WeekProblem problem, WeekProblem.Offer offer) {
        WeekProblem.Item item = problem.items().get(offer.item());
        if (!item.keeps(problem.deliveries().get(offer.delivery()).day())) {
            return 0;
        }
        return item.keptCentsPerMg().toDouble() * offer.packMg() / offer.lowestPriceCents();
    }
}
