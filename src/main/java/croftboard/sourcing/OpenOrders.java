package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.Random;

/**
 * Orders kept beside a menu that changes dish by dish: packs, and what they cost by the account, up to date item by item
 * and to be taken back change by change. An order below its minimum counts softly, so that a search can pass through it.
 * Money of the packs is exact; the account judges what is kept in the end. Not safe for several threads.
 */
public final class OpenOrders {
    /** Cents for each cent below a minimum: a little more than packs nobody needs would cost. */
    static final double SMALL = 1.3;
    private static final double MILLI = 1000;
    private static final double MISSING_DAY = 30_000;
    private static final double MISSING_MG = 0.04;
    private static final double DOCK_MINUTE = 10_000;
    final OfferTable table;
    final int[] packs;
    final long[] money;
    final int[] bought;
    private final long[][] toBuy;
    /** By item, the first and the last day of which the need told last differs from the one before. */
    private final int[] firstChanged;
    private final int[] lastChanged;
    private final long[] was;
    private final long[] needed;
    private final long[] boughtMg;
    private final ItemSums sums;
    private final PackLog log;
    private final PackRepair repair;
    private final PackTurns turns;
    private long total;
    private long localMoney;
    private long fees;
    private long below;
    private final double target;
    private final double localPrice;
    private final double foodPrice;
    private final long[] minutes;
    private final long[] lot;
    /** By day, what the item looked at last lacks. */
    final long[] left;

    /** @param localWorth dollars that one more dollar spent locally is worth; {@link Relaxation#localWorth()} */
    public OpenOrders(WeekProblem problem, double localWorth) {
        table = new OfferTable(problem, localWorth);
        int items = table.life.length;
        packs = new int[table.item.length];
        money = new long[table.minimum.length];
        bought = new int[money.length];
        toBuy = new long[items][table.days];
        firstChanged = new int[items];
        lastChanged = new int[items];
        was = new long[table.days];
        needed = new long[items];
        boughtMg = new long[items];
        sums = new ItemSums(items);
        log = new PackLog();
        repair = new PackRepair(this);
        turns = new PackTurns(this, repair);
        target = problem.prices().localTarget().toDouble();
        localPrice = problem.prices().localPrice().toDouble();
        foodPrice = problem.prices().foodCostPrice().toDouble();
        int dock = problem.prices().receivingResource();
        minutes = new long[dock < 0 ? 0 : problem.resources().get(dock).periods()];
        lot = new long[table.days];
        left = new long[table.days];
    }

    /** Takes these packs for the needs told so far. @param from packs of each offer */
    public void start(int[] from) {
        for (int o = 0; o < packs.length; o++) {
            put(o, from[o]);
        }
        for (int i = 0; i < needed.length; i++) {
            use(i);
        }
        begin();
    }

    /** A copy. */
    public int[] packs() {
        return packs.clone();
    }

    /** What follows can be taken back with {@link #undo}. */
    public void begin() {
        log.clear();
        sums.begin();
    }

    /** Takes back all packs since {@link #begin}; needs are told anew by the caller before. */
    public void undo() {
        while (log.count > 0) {
            log.count--;
            raw(log.offer[log.count], log.packs[log.count]);
        }
        sums.undo();
    }

    /** Tells what an item is needed for, without buying. @param need milligrams by day, stock not yet taken off */
    public void need(int item, long[] need) {
        System.arraycopy(toBuy[item], 0, was, 0, was.length);
        needed[item] = table.afterStock(item, need, toBuy[item]);
        int first = Arrays.mismatch(was, toBuy[item]);
        int last = was.length - 1;
        while (first >= 0 && was[last] == toBuy[item][last]) {
            last--;
        }
        firstChanged[item] = Math.max(0, first);
        lastChanged[item] = first < 0 ? 0 : last;
    }

    /** Offers of an item that could serve what its changed need leaves or lacks; all where the problem is short. */
    int[] near(int item) {
        int[] own = table.offersOfItem[item];
        if (table.days <= OfferTable.SHORT) {
            return own;
        }
        return table.between(item, firstChanged[item] - table.life[item], lastChanged[item] + table.life[item]);
    }

    /** Offers of an item that could serve the changed days themselves; all where the problem is short. */
    int[] serving(int item) {
        return table.days <= OfferTable.SHORT ? table.offersOfItem[item]
                : table.between(item, firstChanged[item] - table.life[item], lastChanged[item]);
    }

    /** Buys what an item lacks and gives back what it no longer needs. @param foodFree see {@link #cents} */
    public void settle(int item, double foodFree) {
        repair.settle(item, foodFree);
    }

    /** A try: a pack or two more or less, at times against another offer. */
    public void shift(Random g) {
        turns.shift(g);
    }

    /** A try: closes a delivery, or opens one with a few packs. */
    public void turn(Random g) {
        turns.turn(g);
    }

    /** Whether every need is met and every minimum reached. */
    public boolean sound() {
        return below == 0 && sums.missing == 0;
    }

    /**
     * Cents of everything that hangs on the orders.
     *
     * @param foodFree cents that food may cost within its promise
     * @param dockUsed units by period of the hands that receive; not looked at when nobody does
     */
    public double cents(double foodFree, long[] dockUsed) {
        return centsWithoutDock(foodFree) + (minutes.length == 0 ? 0 : receiving(dockUsed));
    }

    double centsWithoutDock(double foodFree) {
        double cost = total + fees + (sums.surplus + sums.missing) / MILLI + SMALL * below;
        cost += localPrice * Math.max(0, target * total - localMoney);
        return cost + foodPrice * Math.max(0, total - sums.kept / MILLI - foodFree);
    }

    private double receiving(long[] used) {
        WeekProblem.Prices prices = table.problem.prices();
        WeekProblem.Resource r = table.problem.resources().get(prices.receivingResource());
        System.arraycopy(used, 0, minutes, 0, minutes.length);
        for (int v = 0; v < bought.length; v++) {
            if (bought[v] > 0) {
                minutes[r.period()[table.problem.deliveries().get(v).day()]] += prices.receivingMinutes();
            }
        }
        double cents = 0;
        for (int t = 0; t < minutes.length; t++) {
            long most = r.regular()[t] + r.overtime()[t];
            cents += r.overtimeCents(t, minutes[t]) - r.overtimeCents(t, used[t]);
            cents += DOCK_MINUTE * (Math.max(0, minutes[t] - most) - Math.max(0, used[t] - most));
        }
        return cents;
    }

    /** Sets packs; {@link #use} must follow for the item. */
    void put(int o, int n) {
        if (packs[o] != n) {
            log.add(o, packs[o]);
            raw(o, n);
        }
    }

    private void raw(int o, int n) {
        int v = table.delivery[o];
        long change = table.cost(o, n) - table.cost(o, packs[o]);
        below -= below(v, money[v]);
        fees -= bought[v] > 0 ? table.fee[v] : 0;
        money[v] += change;
        bought[v] += n - packs[o];
        below += below(v, money[v]);
        fees += bought[v] > 0 ? table.fee[v] : 0;
        total += change;
        localMoney += table.local[o] ? change : 0;
        boughtMg[table.item[o]] += (n - packs[o]) * table.packMg[o];
        packs[o] = n;
    }

    /** Cents by which an order of that much money misses the delivery's minimum; 0 when nothing is ordered. */
    long below(int v, long cents) {
        return cents > 0 ? Math.max(0, table.minimum[v] - cents) : 0;
    }

    /** Milligrams bought beyond all needs of an item. */
    long spare(int i) {
        return boughtMg[i] - needed[i];
    }

    boolean lacks(int i) {
        return sums.missingOf[i] > 0;
    }

    /** Packs of an item changed: works out surplus and what is missing. */
    void use(int i) {
        sums.touch(i);
        sums.set(i, flow(i), keptCents, missingCents);
    }

    /** Cents that giving back one pack would save in surplus; what it would leave missing counts against it. */
    double surplusSaved(int i, int o) {
        packs[o]--;
        long then = flow(i) + missingCents;
        packs[o]++;
        return (sums.surplusOf[i] + sums.missingOf[i] - then) / MILLI;
    }

    private long keptCents;
    private long missingCents;

    /** Oldest delivery first, as {@link croftboard.need.Buying} does. @return thousandths of a cent that surplus costs */
    private long flow(int i) {
        feed(i);
        double cannot = 0;
        double worth = 0;
        double waste = 0;
        for (int d = 0; d < table.days; d++) {
            cannot += left[d] > 0 ? MISSING_DAY + left[d] * MISSING_MG : 0;
            if (lot[d] > 0) {
                double each = table.surplus(i, d);
                worth -= each < 0 ? lot[d] * each : 0;
                waste += each > 0 ? lot[d] * each : 0;
            }
        }
        keptCents = (long) (worth * MILLI);
        missingCents = (long) (cannot * MILLI);
        return (long) (waste * MILLI) - keptCents;
    }

    private void feed(int i) {
        Arrays.fill(lot, 0);
        for (int o : table.offersOfItem[i]) {
            lot[table.day[o]] += packs[o] * table.packMg[o];
        }
        System.arraycopy(toBuy[i], 0, left, 0, left.length);
        int oldest = 0;
        for (int d = 0; d < left.length; d++) {
            if (left[d] == 0) {
                continue;
            }
            oldest = Math.max(oldest, d - table.life[i]);
            while (left[d] > 0 && oldest <= d) {
                long take = Math.min(lot[oldest], left[d]);
                lot[oldest] -= take;
                left[d] -= take;
                oldest += left[d] > 0 ? 1 : 0;
            }
        }
    }
}
