package croftboard.need;

import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.List;

/**
 * The value of a plan in cents, line by line. The same function judges every plan, whoever made it.
 *
 * @param purchases money of all orders
 * @param localPurchases of it, surely local
 * @param unclassified of it, neither surely local nor surely not
 * @param kept worth of surplus that keeps
 * @param waste cost of throwing away the surplus that does not
 * @param broken promises that are not kept, each with its price
 */
public record Account(long sales, long eventSales, long left, long staples, long purchases, long localPurchases,
        long unclassified, long kept, long waste, long fees, long overtime, List<Broken> broken) {

    public enum Promise { EMPTY_SLOT, COVERAGE, VARIETY, LOCAL_SHARE, FOOD_COST, EVENNESS }

    /**
     * @param rule number of the coverage or variety rule, the slot, or the resource; 0 otherwise
     * @param day day it concerns; -1 for the whole week
     * @param amount how far: dishes, cents short or over, minutes (rounded up)
     */
    public record Broken(Promise promise, int rule, int day, long amount, long cents) { }

    public long brokenCents() {
        return broken.stream().mapToLong(Broken::cents).sum();
    }

    public long foodCost() {
        return purchases - kept + staples;
    }

    /** The one number: cents. */
    public long value() {
        return sales + eventSales + left - staples - purchases + kept - waste - fees - overtime - brokenCents();
    }

    /** @param packs of each offer */
    public static Account of(WeekProblem problem, int[] choice, int[] packs) {
        return of(problem, choice, packs, Workload.of(problem, choice));
    }

    public static Account of(WeekProblem problem, int[] choice, int[] packs, Workload work) {
        long sales = 0;
        long left = 0;
        long staples = work.stapleCents();
        List<Broken> broken = new ArrayList<>();
        for (int s = 0; s < choice.length; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            if (choice[s] < 0) {
                broken.add(new Broken(Promise.EMPTY_SLOT, s, slot.startDay(), 1, slot.emptyCents()));
                continue;
            }
            WeekProblem.Candidate dish = slot.candidates().get(choice[s]);
            sales += dish.salesCents();
            left += dish.leftCents();
            staples += dish.stapleCents();
        }
        coverage(problem, choice, broken);
        variety(problem, choice, broken);
        long[][] used = withReceiving(problem, packs, work.used());
        evenness(problem, used, broken);
        Orders orders = Orders.of(problem, packs);
        Buying buying = Buying.of(problem, work.needMg(), packs);
        long kept = 0;
        long waste = 0;
        for (int i = 0; i < buying.keptMg().length; i++) {
            WeekProblem.Item item = problem.items().get(i);
            kept += item.keptCentsPerMg().times(buying.keptMg()[i]).floor();
            waste += item.wasteCentsPerMg().times(buying.wastedMg()[i]).round();
        }
        local(problem, orders, broken);
        foodCost(problem, orders.money - kept + staples, sales + problem.constantCents(), broken);
        broken.removeIf(b -> b.cents() == 0);
        return new Account(sales, problem.constantCents(), left, staples, orders.money, orders.local,
                orders.unclassified, kept, waste, orders.fees, overtime(problem, used), List.copyOf(broken));
    }

    private static void coverage(WeekProblem problem, int[] choice, List<Broken> broken) {
        List<WeekProblem.CoverageRule> rules = problem.prices().coverage();
        for (int k = 0; k < rules.size(); k++) {
            for (int day : problem.openDays()) {
                int have = 0;
                for (int s = 0; s < choice.length; s++) {
                    if (choice[s] >= 0 && serves(problem.slots().get(s), day)
                            && (problem.slots().get(s).candidates().get(choice[s]).covers() >> k & 1) == 1) {
                        have++;
                    }
                }
                int missing = Math.max(0, rules.get(k).atLeast() - have);
                broken.add(new Broken(Promise.COVERAGE, k, day, missing, missing * rules.get(k).centsEach()));
            }
        }
    }

    static boolean serves(WeekProblem.Slot slot, int day) {
        for (int d : slot.serviceDays()) {
            if (d == day) {
                return true;
            }
        }
        return false;
    }

    private static void variety(WeekProblem problem, int[] choice, List<Broken> broken) {
        List<WeekProblem.VarietyRule> rules = problem.prices().variety();
        for (int k = 0; k < rules.size(); k++) {
            if (rules.get(k).nextDay()) {
                nextDay(problem, choice, k, broken);
            } else {
                sameDay(problem, choice, k, broken);
            }
        }
    }

    /** The number of the trait that a variety rule counts. */
    public static int trait(WeekProblem.Candidate dish, int trait) {
        return trait == 0 ? dish.main() : trait == 1 ? dish.method() : dish.cuisine();
    }

    private static void sameDay(WeekProblem problem, int[] choice, int k, List<Broken> broken) {
        WeekProblem.VarietyRule rule = problem.prices().variety().get(k);
        for (int day : problem.openDays()) {
            var count = new java.util.TreeMap<Integer, Integer>();
            for (int s = 0; s < choice.length; s++) {
                WeekProblem.Slot slot = problem.slots().get(s);
                if (choice[s] >= 0 && slot.free() && serves(slot, day)) {
                    count.merge(trait(slot.candidates().get(choice[s]), rule.trait()), 1, Integer::sum);
                }
            }
            int extra = count.values().stream().mapToInt(n -> Math.max(0, n - rule.atMost())).sum();
            broken.add(new Broken(Promise.VARIETY, k, day, extra, extra * rule.centsEach()));
        }
    }

    private static void nextDay(WeekProblem problem, int[] choice, int k, List<Broken> broken) {
        WeekProblem.VarietyRule rule = problem.prices().variety().get(k);
        for (int s = 0; s < choice.length; s++) {
            int next = nextOnLine(problem, s);
            if (next < 0 || choice[s] < 0 || choice[next] < 0) {
                continue;
            }
            WeekProblem.Slot a = problem.slots().get(s);
            WeekProblem.Slot b = problem.slots().get(next);
            boolean same = trait(a.candidates().get(choice[s]), rule.trait())
                    == trait(b.candidates().get(choice[next]), rule.trait());
            broken.add(new Broken(Promise.VARIETY, k, b.startDay(), same ? 1 : 0, same ? rule.centsEach() : 0));
        }
    }

    /** The slot that follows on the same line; -1 when it is the last or takes no part in the rules. */
    public static int nextOnLine(WeekProblem problem, int s) {
        WeekProblem.Slot slot = problem.slots().get(s);
        int best = -1;
        for (int n = 0; n < problem.slots().size() && slot.free(); n++) {
            WeekProblem.Slot other = problem.slots().get(n);
            if (other.free() && other.line() == slot.line() && other.startDay() > slot.startDay()
                    && (best < 0 || other.startDay() < problem.slots().get(best).startDay())) {
                best = n;
            }
        }
        return best;
    }

    private static void evenness(WeekProblem problem, long[][] used, List<Broken> broken) {
        Ratio price = problem.prices().evennessCentsPerMinute();
        for (int r = 0; r < used.length && price.signum() > 0; r++) {
            Ratio above = peakAboveMean(problem.resources().get(r), used[r]);
            broken.add(new Broken(Promise.EVENNESS, r, -1, above.ceil(), price.times(above).round()));
        }
    }

    /** Minutes of the busiest day above the average of the days on which the station has hands; 0 for equipment. */
    public static Ratio peakAboveMean(WeekProblem.Resource resource, long[] used) {
        long peak = 0;
        long total = 0;
        long days = 0;
        for (int t = 0; t < used.length && resource.hands(); t++) {
            if (resource.regular()[t] > 0) {
                peak = Math.max(peak, used[t]);
                total += used[t];
                days++;
            }
        }
        return days == 0 ? Ratio.ZERO : Ratio.of(peak * days - total, days).max(Ratio.ZERO);
    }

    private static long overtime(WeekProblem problem, long[][] used) {
        long cents = 0;
        for (int r = 0; r < used.length; r++) {
            for (int t = 0; t < used[r].length; t++) {
                cents += problem.resources().get(r).overtimeCents(t, used[r][t]);
            }
        }
        return cents;
    }

    /** Use of every resource, the receiving of deliveries included. */
    public static long[][] withReceiving(WeekProblem problem, int[] packs, long[][] used) {
        int dock = problem.prices().receivingResource();
        if (dock < 0) {
            return used;
        }
        long[][] all = used.clone();
        all[dock] = used[dock].clone();
        boolean[] open = Orders.of(problem, packs).open;
        for (int v = 0; v < open.length; v++) {
            if (open[v]) {
                int day = problem.deliveries().get(v).day();
                all[dock][problem.resources().get(dock).period()[day]] += problem.prices().receivingMinutes();
            }
        }
        return all;
    }

    private static void local(WeekProblem problem, Orders orders, List<Broken> broken) {
        Ratio shortBy = problem.prices().localTarget().times(orders.money).minus(Ratio.of(orders.local))
                .max(Ratio.ZERO);
        long cents = problem.prices().localPrice().times(shortBy).round();
        broken.add(new Broken(Promise.LOCAL_SHARE, 0, -1, shortBy.ceil(), cents));
    }

    private static void foodCost(WeekProblem problem, long food, long sales, List<Broken> broken) {
        Ratio over = Ratio.of(food).minus(problem.prices().foodCostAtMost().times(sales)).max(Ratio.ZERO);
        long cents = problem.prices().foodCostPrice().times(over).round();
        broken.add(new Broken(Promise.FOOD_COST, 0, -1, over.ceil(), cents));
    }

    /** Sums over the offers. */
    private static final class Orders {
        private final boolean[] open;
        private long money;
        private long local;
        private long unclassified;
        private long fees;

        private Orders(int deliveries) {
            open = new boolean[deliveries];
        }

        static Orders of(WeekProblem problem, int[] packs) {
            Orders sum = new Orders(problem.deliveries().size());
            for (int o = 0; o < packs.length; o++) {
                WeekProblem.Offer offer = problem.offers().get(o);
                long cents = offer.costCents(packs[o]);
                sum.money += cents;
                sum.local += offer.locality() == WeekProblem.Locality.LOCAL ? cents : 0;
                sum.unclassified += offer.locality() == WeekProblem.Locality.UNCLASSIFIED ? cents : 0;
                sum.open[offer.delivery()] |= packs[o] > 0;
            }
            for (int v = 0; v < sum.open.length; v++) {
                sum.fees += sum.open[v] ? problem.deliveries().get(v).feeCents() : 0;
            }
            return sum;
        }
    }
}
