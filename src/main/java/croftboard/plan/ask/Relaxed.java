package croftboard.plan.ask;

import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One fact of a clash given up, no further than the rest of the clash needs it. */
final class Relaxed {
    private final WeekProblem problem;
    private final Map<Integer, WeekProblem.Slot> opened;
    private final int[] musts;

    /** @param opened slots as they are when the dish kept there is not kept; absent: what is kept, or nothing */
    Relaxed(WeekProblem problem, Map<Integer, WeekProblem.Slot> opened) {
        this.problem = problem;
        this.opened = opened;
        this.musts = new int[problem.slots().size()];
        for (int s = 0; s < musts.length; s++) {
            musts[s] = problem.slots().get(s).mayBeEmpty() ? -1 : 0;
        }
    }

    /**
     * @param least units, minutes or milligrams by which it is given up; 0: wholly
     * @param cents what that costs beside what the account counts: food that nobody offers, at the dearest price known
     * @param priced whether such a price is known
     */
    record Eased(WeekProblem problem, long least, long cents, boolean priced) { }

    Eased of(Fact f) {
        if (f instanceof Fact.Pin x && opened.containsKey(x.slot())) {
            List<WeekProblem.Slot> slots = new ArrayList<>(problem.slots());
            slots.set(x.slot(), opened.get(x.slot()));
            return new Eased(Problems.withSlots(problem, slots), 0, 0, true);
        }
        if (f instanceof Fact.Hands x) {
            WeekProblem.Resource r = problem.resources().get(x.resource());
            long over = needed(x) - r.regular()[x.period()] - r.overtime()[x.period()];
            List<WeekProblem.Resource> all = new ArrayList<>(problem.resources());
            all.set(x.resource(), Facts.more(r, x.period(), Math.max(1, over)));
            return new Eased(Problems.withResources(problem, all), Math.max(1, over), 0, true);
        }
        if (f instanceof Fact.Gap) {
            return new Eased(comebacks(), 0, 0, true);
        }
        return f instanceof Fact.Supply x ? food(x.item()) : new Eased(Facts.without(problem, List.of(f)), 0, 0, true);
    }

    /** Only the dishes that have to stand too near each other may come back sooner; all others keep their gap. */
    private WeekProblem comebacks() {
        List<WeekProblem.Slot> slots = new ArrayList<>(problem.slots());
        for (int a = 0; a < musts.length; a++) {
            for (int b = 0; b < musts.length; b++) {
                if (a != b && Forced.near(problem, a, b, musts)) {
                    WeekProblem.Slot s = problem.slots().get(a);
                    slots.set(a, new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), false, s.emptyCents(), s.mayBeEmpty(),
                            s.candidates()));
                }
            }
        }
        return Problems.withSlots(problem, slots);
    }

    /** Units of the period that the dishes which have to stand take; receiving is counted only as far as it is sure. */
    long needed(Fact.Hands x) {
        int[] promised = problem.offers().stream().mapToInt(WeekProblem.Offer::minPacks).toArray();
        return croftboard.need.Account.withReceiving(problem, promised, Workload.of(problem, musts).used())[x.resource()][x.period()];
    }

    /** Milligrams by day that cannot be had of an item when everything offered is bought. */
    long[] missing(int item) {
        int[] most = problem.offers().stream().mapToInt(WeekProblem.Offer::maxPacks).toArray();
        boolean[] reachable = croftboard.need.Minimums.reachable(problem);
        for (int o = 0; o < most.length; o++) {
            most[o] = reachable[problem.offers().get(o).delivery()] ? most[o] : problem.offers().get(o).minPacks();
        }
        return Buying.of(problem, Workload.of(problem, musts).needMg(), most).missingMg()[item];
    }

    private Eased food(int item) {
        long[] missing = missing(item);
        long mg = Arrays.stream(missing).sum();
        if (mg == 0) {
            return new Eased(Facts.without(problem, List.of(new Fact.Supply(item))), 0, 0, false);
        }
        List<WeekProblem.ItemStock> stock = new ArrayList<>(problem.stock());
        for (int d = 0; d < missing.length; d++) {
            if (missing[d] > 0) {
                stock.add(new WeekProblem.ItemStock(item, d, d, missing[d]));
            }
        }
        double dearest = problem.offers().stream().filter(o -> o.item() == item)
                .mapToDouble(o -> o.priceCents(1) / (double) o.packMg()).max().orElse(-1);
        return new Eased(withStock(stock), mg, dearest < 0 ? 0 : (long) Math.ceil(dearest * mg), dearest >= 0);
    }

    private WeekProblem withStock(List<WeekProblem.ItemStock> stock) {
        WeekProblem p = problem;
        return new WeekProblem(p.name(), p.firstDay(), p.days(), p.openDays(), p.prepDays(), p.slots(), p.items(), p.components(),
                p.offers(), p.deliveries(), p.resources(), List.copyOf(stock), p.componentStock(), p.looseStock(), p.prices(),
                p.constantCents());
    }

    /** All slots of the problem that have a dish kept, opened. */
    static Map<Integer, WeekProblem.Slot> opened(WeekProblem kept, WeekProblem free) {
        Map<Integer, WeekProblem.Slot> all = new TreeMap<>();
        for (int s = 0; s < kept.slots().size() && s < free.slots().size(); s++) {
            if (!kept.slots().get(s).mayBeEmpty() && free.slots().get(s).mayBeEmpty()
                    && kept.slots().get(s).id().equals(free.slots().get(s).id())) {
                all.put(s, free.slots().get(s));
            }
        }
        return all;
    }
}
