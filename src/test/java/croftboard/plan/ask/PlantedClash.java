package croftboard.plan.ask;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Random weeks of 54 slots in which dishes are kept, and among them a clash of three facts and no other: the week is possible
 * without any one of the three, so every clash holds all three, and the three alone are enough.
 *
 * @param planted the three
 */
record PlantedClash(WeekProblem problem, Set<Fact> planted, String kind) {
    private static final int KEPT = 12;
    /** Not every week holds every kind. */
    private static final int EACH_KIND = 5;
    private static final List<String> KINDS = List.of("food", "hands", "gap", "minimum");

    static PlantedClash of(long seed) {
        for (long attempt = 0; ; attempt++) {
            Random g = new Random(seed * 1_000 + attempt);
            String kind = KINDS.get((int) ((seed + attempt / EACH_KIND) % KINDS.size()));
            Optional<PlantedClash> planted = plant(kept(RandomWeek.week(seed), g), kind, g).filter(PlantedClash::isAlone);
            if (planted.isPresent()) {
                return planted.get();
            }
        }
    }

    private static WeekProblem keep(WeekProblem p, int s, int k) {
        List<WeekProblem.Slot> slots = new ArrayList<>(p.slots());
        WeekProblem.Slot slot = slots.get(s);
        slots.set(s, new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(), slot.emptyCents(), false,
                List.of(slot.candidates().get(k))));
        return Problems.withSlots(p, slots);
    }

    private static WeekProblem kept(WeekProblem week, Random g) {
        WeekProblem p = week;
        for (int n = 0; n < KEPT * 4 && pins(p).size() < KEPT; n++) {
            int s = g.nextInt(p.slots().size());
            if (p.slots().get(s).mayBeEmpty()) {
                WeekProblem more = keep(p, s, g.nextInt(p.slots().get(s).candidates().size()));
                p = new Possible(more).musts().possible() ? more : p;
            }
        }
        return p;
    }

    private static List<Integer> pins(WeekProblem p) {
        List<Integer> all = new ArrayList<>();
        for (int s = 0; s < p.slots().size(); s++) {
            if (!p.slots().get(s).mayBeEmpty()) {
                all.add(s);
            }
        }
        return all;
    }

    private static Workload work(WeekProblem p, List<Integer> of) {
        int[] menu = new int[p.slots().size()];
        Arrays.fill(menu, -1);
        of.forEach(s -> menu[s] = 0);
        return Workload.of(p, menu);
    }

    private static Optional<PlantedClash> plant(WeekProblem p, String kind, Random g) {
        return switch (kind) {
            case "food" -> food(p, g);
            case "hands" -> hands(p, g);
            case "gap" -> gap(p, g);
            default -> minimum(p, g);
        };
    }

    private static List<Integer> takers(WeekProblem p, int item) {
        return pins(p).stream().filter(s -> Arrays.stream(work(p, List.of(s)).needMg()[item]).sum() > 0).toList();
    }

    private static List<Integer> shuffled(int n, Random g) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            all.add(i);
        }
        Collections.shuffle(all, g);
        return all;
    }

    /** Of an item that two kept dishes take there is enough for either and not for both. */
    private static Optional<PlantedClash> food(WeekProblem p, Random g) {
        for (int item : shuffled(p.items().size(), g)) {
            List<Integer> takers = takers(p, item);
            if (takers.size() == 2) {
                long most = Math.max(Arrays.stream(work(p, List.of(takers.get(0))).needMg()[item]).sum(),
                        Arrays.stream(work(p, List.of(takers.get(1))).needMg()[item]).sum());
                List<WeekProblem.Offer> offers = p.offers().stream().map(o -> o.item() == item ? Problems.packs(o, 0, 0) : o).toList();
                List<WeekProblem.ItemStock> stock = new ArrayList<>(p.stock());
                stock.add(new WeekProblem.ItemStock(item, 0, p.days() - 1, most));
                WeekProblem q = Problems.withSupply(p, offers, p.deliveries());
                return Optional.of(new PlantedClash(new WeekProblem(q.name(), q.firstDay(), q.days(), q.openDays(), q.prepDays(),
                        q.slots(), q.items(), q.components(), q.offers(), q.deliveries(), q.resources(), stock, q.componentStock(),
                        q.looseStock(), q.prices(), q.constantCents()), Set.of(new Fact.Pin(takers.get(0)),
                                new Fact.Pin(takers.get(1)), new Fact.Supply(item)), "food"));
            }
        }
        return Optional.empty();
    }

    /** Two kept dishes need a station, or an oven, in one period, and there is a little less than both take. */
    private static Optional<PlantedClash> hands(WeekProblem p, Random g) {
        for (int r : shuffled(p.resources().size(), g)) {
            for (int t : shuffled(p.resources().get(r).periods(), g)) {
                List<Integer> takers = pins(p).stream().filter(s -> work(p, List.of(s)).used()[r][t] > 0).toList();
                if (takers.size() == 2) {
                    WeekProblem.Resource x = p.resources().get(r);
                    long[] regular = x.regular().clone();
                    long[] overtime = x.overtime().clone();
                    regular[t] = work(p, takers).used()[r][t] - 1;
                    overtime[t] = 0;
                    List<WeekProblem.Resource> all = new ArrayList<>(p.resources());
                    all.set(r, new WeekProblem.Resource(x.id(), x.name(), x.hands(), x.period(), regular, overtime,
                            x.overtimeCentsPerHour(), x.held()));
                    return Optional.of(new PlantedClash(Problems.withResources(p, all), Set.of(new Fact.Pin(takers.get(0)),
                            new Fact.Pin(takers.get(1)), new Fact.Hands(r, t)), "hands"));
                }
            }
        }
        return Optional.empty();
    }

    /** A kept dish is kept once more, too near. */
    private static Optional<PlantedClash> gap(WeekProblem p, Random g) {
        for (int a : pins(p)) {
            int dish = p.slots().get(a).candidates().get(0).dish();
            for (int b : shuffled(p.slots().size(), g)) {
                WeekProblem.Slot slot = p.slots().get(b);
                boolean near = Math.abs(slot.startDay() - p.slots().get(a).startDay()) < p.prices().gapDays();
                for (int k = 0; k < slot.candidates().size() && slot.mayBeEmpty() && near && slot.free(); k++) {
                    if (slot.candidates().get(k).dish() == dish) {
                        return Optional.of(new PlantedClash(keep(p, b, k), Set.of(new Fact.Pin(a), new Fact.Pin(b), new Fact.Gap()),
                                "gap"));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** What one kept dish takes comes from one delivery only, which sells too little else to come up to its minimum. */
    private static Optional<PlantedClash> minimum(WeekProblem p, Random g) {
        for (int item : shuffled(p.items().size(), g)) {
            List<Integer> takers = takers(p, item);
            if (takers.size() != 1) {
                continue;
            }
            for (int o : shuffled(p.offers().size(), g)) {
                WeekProblem.Offer only = p.offers().get(o);
                if (only.item() == item && only.maxPacks() > 0) {
                    List<WeekProblem.Offer> offers = new ArrayList<>();
                    for (int n = 0; n < p.offers().size(); n++) {
                        WeekProblem.Offer x = p.offers().get(n);
                        offers.add(n != o && (x.item() == item || x.delivery() == only.delivery()) ? Problems.packs(x, 0, 0) : x);
                    }
                    WeekProblem.Delivery d = p.deliveries().get(only.delivery());
                    List<WeekProblem.Delivery> deliveries = new ArrayList<>(p.deliveries());
                    long most = 1;
                    for (int n = 0; n <= only.maxPacks(); n++) {
                        most = Math.max(most, only.costCents(n) + 1);
                    }
                    deliveries.set(only.delivery(), new WeekProblem.Delivery(d.vendor(), d.day(), d.cutOff(), most, d.feeCents(),
                            d.forced()));
                    PlantedClash planted = new PlantedClash(Problems.withSupply(p, offers, deliveries), Set.of(
                            new Fact.Pin(takers.get(0)), new Fact.Supply(item), new Fact.Minimum(only.delivery())), "minimum");
                    if (planted.isAlone()) {
                        return Optional.of(planted);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Impossible, and possible without any one of the three. */
    private boolean isAlone() {
        return !new Possible(problem).musts().possible()
                && planted.stream().allMatch(f -> new Possible(Facts.without(problem, List.of(f))).musts().possible());
    }
}
