package croftboard.menu;

import croftboard.need.WeekProblem;

/**
 * What a pack counts for inside the search: its price, carrying the worth of local money.
 *
 * @param packCents by offer: price x (1 + worth of a local dollar x (target - 1 when local, else target))
 */
record PurchasePrices(double[] packCents) {
    /**
     * @param localWorth dollars that one more dollar spent locally is worth (the dual of the local share), 0 to the
     *     price of a missing dollar
     */
    static PurchasePrices of(WeekProblem problem, double localWorth) {
        double target = problem.prices().localTarget().toDouble();
        double[] cents = new double[problem.offers().size()];
        for (int o = 0; o < cents.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            double local = offer.locality() == WeekProblem.Locality.LOCAL ? 1 : 0;
            cents[o] = offer.priceCents(1) * (1 + localWorth * (target - local));
        }
        return new PurchasePrices(cents);
    }
}
