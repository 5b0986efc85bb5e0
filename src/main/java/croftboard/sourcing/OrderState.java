package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.Arrays;

/**
 * Packs for one menu and what they cost, kept up to date item by item: the account's money in doubles (each part within
 * a cent of it), and steep prices for broken musts, so that less broken is always cheaper. The account itself judges
 * what is kept in the end.
 */
final class OrderState {
    private static final double MISSING_DAY = 50_000;
    private static final double MISSING_MG = 0.05;
    private static final double DOCK_MINUTE = 100_000;
    private static final double BELOW_MINIMUM = 20_000;
    private static final double BELOW_CENT = 10;
    private final OrderFacts facts;
    final int[] packs;
    private final long[] money;
    private final int[] bought;
    private final double[] surplus;
    private final double[] kept;
    private final double[] missing;
    private long total;
    private long localMoney;

    /** With nothing bought but what is promised. */
    OrderState(OrderFacts facts) {
        this.facts = facts;
        packs = facts.problem.offers().stream().mapToInt(WeekProblem.Offer::minPacks).toArray();
        money = new long[facts.offersOfDelivery.length];
        bought = new int[money.length];
        int items = facts.offersOfItem.length;
        surplus = new double[items];
        kept = new double[items];
        missing = new double[items];
        refresh();
    }

    void copy(OrderState other) {
        System.arraycopy(other.packs, 0, packs, 0, packs.length);
        System.arraycopy(other.money, 0, money, 0, money.length);
        System.arraycopy(other.bought, 0, bought, 0, bought.length);
        System.arraycopy(other.surplus, 0, surplus, 0, surplus.length);
        System.arraycopy(other.kept, 0, kept, 0, kept.length);
        System.arraycopy(other.missing, 0, missing, 0, missing.length);
        total = other.total;
        localMoney = other.localMoney;
    }

    void copy(int[] from) {
        System.arraycopy(from, 0, packs, 0, packs.length);
        refresh();
    }

    private void refresh() {
        Arrays.fill(money, 0);
        Arrays.fill(bought, 0);
        total = 0;
        localMoney = 0;
        for (int o = 0; o < packs.length; o++) {
            enter(o, 1);
        }
        for (int i = 0; i < surplus.length; i++) {
            use(i);
        }
    }

    /** Before and after the packs of an item are changed from outside: {@code sign} -1, then 1 and {@link #use}. */
    void enterItem(int item, int sign) {
        for (int o : facts.offersOfItem[item]) {
            enter(o, sign);
        }
        if (sign > 0) {
            use(item);
        }
    }

    void set(int offer, int n) {
        enter(offer, -1);
        packs[offer] = n;
        enter(offer, 1);
        use(facts.problem.offers().get(offer).item());
    }

    private void enter(int o, int sign) {
        if (packs[o] > 0) {
            WeekProblem.Offer offer = facts.problem.offers().get(o);
            long cents = sign * offer.costCents(packs[o]);
            money[offer.delivery()] += cents;
            total += cents;
            localMoney += facts.local[o] ? cents : 0;
            bought[offer.delivery()] += sign * packs[o];
        }
    }

    /** Oldest delivery first, as {@link croftboard.need.Buying} does. */
    private void use(int item) {
        long[] lot = facts.lot;
        long[] left = facts.left;
        Arrays.fill(lot, 0);
        for (int o : facts.offersOfItem[item]) {
            lot[facts.dayOf[o]] += packs[o] * facts.problem.offers().get(o).packMg();
        }
        System.arraycopy(facts.menu.toBuy[item], 0, left, 0, left.length);
        WeekProblem.Item shelf = facts.problem.items().get(item);
        double cannot = 0;
        for (int d = 0; d < left.length; d++) {
            for (int t = Math.max(0, d - shelf.lifeDays()); t <= d && left[d] > 0; t++) {
                long take = Math.min(lot[t], left[d]);
                lot[t] -= take;
                left[d] -= take;
            }
            cannot += left[d] > 0 ? MISSING_DAY + left[d] * MISSING_MG : 0;
        }
        double worth = 0;
        double cost = 0;
        for (int t = 0; t < lot.length; t++) {
            if (shelf.keeps(t)) {
                worth += lot[t] * facts.keptPerMg[item];
            } else {
                cost += lot[t] * facts.wastePerMg[item];
            }
        }
        missing[item] = cannot;
        kept[item] = worth;
        surplus[item] = cost - worth;
    }

    /** Steep price of what cannot be met of an item; 0 when all is. */
    double missing(int item) {
        return missing[item];
    }

    /** Cents ordered of a delivery. */
    long money(int delivery) {
        return money[delivery];
    }

    /** Cents below the delivery's minimum; 0 when nothing is ordered. */
    long belowMinimum(int delivery) {
        long least = facts.problem.deliveries().get(delivery).minimumCents();
        return money[delivery] > 0 ? Math.max(0, least - money[delivery]) : 0;
    }

    /** Steep price of an order so many cents below its minimum. */
    static double tooSmall(long below) {
        return below > 0 ? BELOW_MINIMUM + BELOW_CENT * below : 0;
    }

    /** Cents of everything that hangs on the packs; orders below their minimum are left to the caller. */
    double cents() {
        double cost = 0;
        for (int v = 0; v < money.length; v++) {
            cost += bought[v] > 0 ? facts.problem.deliveries().get(v).feeCents() : 0;
        }
        double keeps = 0;
        for (int i = 0; i < surplus.length; i++) {
            cost += surplus[i] + missing[i];
            keeps += kept[i];
        }
        cost += facts.localPrice * Math.max(0, facts.target * total - localMoney);
        cost += facts.foodPrice * Math.max(0, total - keeps - facts.foodFree);
        return cost + total + (facts.minutes.length == 0 ? 0 : receiving());
    }

    /** The same, with a steep price on orders below their minimum. */
    double centsWithSmallOrders() {
        double cost = cents();
        for (int v = 0; v < money.length; v++) {
            cost += tooSmall(belowMinimum(v));
        }
        return cost;
    }

    private double receiving() {
        int dock = facts.problem.prices().receivingResource();
        WeekProblem.Resource r = facts.problem.resources().get(dock);
        System.arraycopy(facts.menu.work.used()[dock], 0, facts.minutes, 0, facts.minutes.length);
        for (int v = 0; v < bought.length; v++) {
            if (bought[v] > 0) {
                facts.minutes[r.period()[facts.problem.deliveries().get(v).day()]]
                        += facts.problem.prices().receivingMinutes();
            }
        }
        double cents = 0;
        for (int t = 0; t < facts.minutes.length; t++) {
            cents += r.overtimeCents(t, facts.minutes[t]);
            cents += DOCK_MINUTE * Math.max(0, facts.minutes[t] - r.regular()[t] - r.overtime()[t]);
        }
        return cents;
    }
}
