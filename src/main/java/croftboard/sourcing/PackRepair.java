package croftboard.sourcing;

/**
 * Packs of one item for changed needs: what is missing is bought, each time the pack that costs least for what it
 * serves, opening a delivery and reaching its minimum regarded; what is no longer needed is given back. The same is
 * tried from nothing, and the cheaper of the two stays.
 */
final class PackRepair {
    private static final double LEAST = 0.5;
    private static final int MOST_PACKS = 40;
    private final OpenOrders orders;
    private final OfferTable table;
    private int[] held = new int[16];

    PackRepair(OpenOrders orders) {
        this.orders = orders;
        table = orders.table;
    }

    void settle(int i, double foodFree) {
        int[] near = orders.near(i);
        mend(i, near);
        double mended = orders.centsWithoutDock(foodFree);
        int[] own = orders.serving(i);
        held = held.length < own.length ? new int[own.length] : held;
        for (int k = 0; k < own.length; k++) {
            held[k] = orders.packs[own[k]];
            orders.put(own[k], table.least[own[k]]);
        }
        mend(i, near);
        if (orders.centsWithoutDock(foodFree) >= mended) {
            for (int k = 0; k < own.length; k++) {
                orders.put(own[k], held[k]);
            }
            orders.use(i);
        }
    }

    /** From the packs at hand. */
    void mend(int i) {
        mend(i, table.offersOfItem[i]);
    }

    private void mend(int i, int[] among) {
        orders.use(i);
        int best = 0;
        for (int n = 0; best >= 0 && orders.lacks(i) && n < MOST_PACKS; n++) {
            best = cheapest(i, among);
            if (best >= 0) {
                orders.put(best, orders.packs[best] + 1);
                orders.use(i);
            }
        }
        giveBack(i, -1, among);
    }

    private int cheapest(int i, int[] among) {
        int best = -1;
        double least = Double.MAX_VALUE;
        for (int o : among) {
            long served = orders.packs[o] < table.most[o] ? served(i, o) : 0;
            if (served > 0) {
                double each = (price(o) + (table.packMg[o] - served) * table.surplus(i, table.day[o])) / served;
                if (each < least) {
                    least = each;
                    best = o;
                }
            }
        }
        return best;
    }

    private long served(int i, int o) {
        long served = 0;
        int end = Math.min(table.days - 1, table.day[o] + table.life[i]);
        for (int d = table.day[o]; d <= end && served < table.packMg[o]; d++) {
            served += orders.left[d];
        }
        return Math.min(served, table.packMg[o]);
    }

    /** Of one more pack: what it costs, the fee and the minimum of its delivery regarded. */
    private double price(int o) {
        int v = table.delivery[o];
        long cents = table.cost(o, orders.packs[o] + 1) - table.cost(o, orders.packs[o]);
        double opening = orders.bought[v] == 0 ? table.fee[v] : 0;
        return cents * table.weight[o] + opening + smaller(v, cents);
    }

    /** What an order counts for being below its minimum, after so much more money less before. */
    private double smaller(int v, long cents) {
        long now = orders.money[v];
        return OpenOrders.SMALL * (orders.below(v, now + cents) - orders.below(v, now));
    }

    /** Packs whose going saves money go, the one that saves most first. @param spared a delivery that keeps its packs; -1 */
    void giveBack(int i, int spared) {
        giveBack(i, spared, table.offersOfItem[i]);
    }

    private void giveBack(int i, int spared, int[] among) {
        int best = 0;
        while (best >= 0) {
            best = -1;
            double most = LEAST;
            long spare = orders.spare(i);
            for (int o : among) {
                if (orders.packs[o] > table.least[o] && table.packMg[o] <= spare && table.delivery[o] != spared) {
                    double gain = gain(i, o);
                    if (gain > most) {
                        most = gain;
                        best = o;
                    }
                }
            }
            if (best >= 0) {
                orders.put(best, orders.packs[best] - 1);
                orders.use(i);
            }
        }
    }

    private double gain(int i, int o) {
        int v = table.delivery[o];
        long saved = table.cost(o, orders.packs[o]) - table.cost(o, orders.packs[o] - 1);
        double closing = orders.bought[v] == 1 ? table.fee[v] : 0;
        return saved * table.weight[o] + closing - smaller(v, -saved) + orders.surplusSaved(i, o);
    }
}
