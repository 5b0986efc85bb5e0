package croftboard.plan;

import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Weeks that follow each other, each a problem of its own, as one problem: what is bought in one week and lives into the
 * next is there. Hands, equipment and components are each week's own, so that batches, evenness and hours are reckoned as
 * each week alone reckons them; a delivery belongs to the calendar week of its date, those before the first week to it. One
 * row of local share and food cost stands for all weeks, its target the mean of the weeks'.
 */
final class JoinedWeeks {
    private static final int WEEK = 7;
    final WeekProblem problem;
    private final List<WeekProblem> weeks;
    private final int days;
    private final int components;
    private final int resources;
    private final int[] firstSlot;
    private final List<int[]> offers = new ArrayList<>();

    /** @param weeks built with the same book, the first with the stock at hand; the stock of the others is not looked at */
    JoinedWeeks(List<WeekProblem> weeks) {
        this.weeks = weeks;
        WeekProblem first = weeks.get(0);
        WeekProblem last = weeks.get(weeks.size() - 1);
        days = Calendar.DAYS + WEEK * (weeks.size() - 1);
        components = first.components().size();
        resources = first.resources().size();
        firstSlot = new int[weeks.size() + 1];
        List<WeekProblem.Slot> slots = new ArrayList<>();
        List<WeekProblem.Component> parts = new ArrayList<>();
        List<WeekProblem.Offer> packs = new ArrayList<>();
        List<WeekProblem.Delivery> deliveries = new ArrayList<>();
        boolean[] prep = new boolean[days];
        List<Integer> open = new ArrayList<>();
        long constant = 0;
        for (int w = 0; w < weeks.size(); w++) {
            WeekProblem week = weeks.get(w);
            int number = w;
            week.slots().forEach(s -> slots.add(slot(s, number)));
            firstSlot[w + 1] = slots.size();
            week.components().forEach(c -> parts.add(component(c, number)));
            market(week, w, deliveries, packs);
            for (int d = 0; d < Calendar.DAYS; d++) {
                prep[d + WEEK * w] |= week.prepDays()[d];
            }
            Arrays.stream(week.openDays()).forEach(d -> open.add(d + WEEK * number));
            constant += week.constantCents();
        }
        problem = new WeekProblem(first.name() + " and " + (weeks.size() - 1) + " more", first.firstDay(), days,
                open.stream().mapToInt(d -> d).toArray(), prep, List.copyOf(slots), items(first, last), List.copyOf(parts),
                List.copyOf(packs), List.copyOf(deliveries), resources(first), first.stock(), first.componentStock(),
                first.looseStock(), prices(), constant);
    }

    private WeekProblem.Slot slot(WeekProblem.Slot s, int w) {
        int line = s.line() + w * 1000;
        return new WeekProblem.Slot(s.id(), line, shifted(s.serviceDays(), w), s.free(), s.emptyCents(), s.mayBeEmpty(),
                w == 0 ? s.candidates() : s.candidates().stream().map(c -> candidate(c, w)).toList());
    }

    private static int[] shifted(int[] of, int w) {
        return Arrays.stream(of).map(d -> d + WEEK * w).toArray();
    }

    private WeekProblem.Candidate candidate(WeekProblem.Candidate c, int w) {
        int by = WEEK * w;
        return new WeekProblem.Candidate(c.dish(), c.recipe(), c.portions(), c.salesCents(), c.leftCents(), c.stapleCents(),
                c.needs().stream().map(n -> new WeekProblem.Need(n.item(), n.day() + by, n.mg())).toList(),
                c.uses().stream().map(u -> new WeekProblem.Use(resource(u.resource(), w), u.day() + by, u.units())).toList(),
                c.demands().stream().map(d -> new WeekProblem.Demand(d.component() + w * components, d.useDay() + by,
                        d.lastDay() + by, d.mg())).toList(),
                c.loose().stream().map(n -> new WeekProblem.LooseNeed(n.item(), n.from() + by, n.to() + by, n.mg())).toList(),
                c.looseStapleCents(), c.covers(), c.main(), c.method(), c.cuisine(), c.productions().stream()
                        .map(p -> new WeekProblem.Production(p.day() + by, p.lastDay() + by, p.useByDay() + by, p.batches(),
                                p.portions())).toList());
    }

    private WeekProblem.Component component(WeekProblem.Component c, int w) {
        return new WeekProblem.Component(c.recipe(), c.lifeDays(), c.leadDays(), c.stepMg(), c.step(), c.perStep(),
                c.parts().stream().map(p -> new WeekProblem.StepPart(p.component() + w * components, p.mg())).toList(),
                c.uses().stream().map(u -> new WeekProblem.StepUse(resource(u.resource(), w), u.num(), u.den())).toList(),
                c.stapleCentsPerStep());
    }

    private int dock() {
        return weeks.get(0).prices().receivingResource();
    }

    private int resource(int r, int w) {
        return r == dock() ? r : r + w * resources;
    }

    private void market(WeekProblem week, int w, List<WeekProblem.Delivery> deliveries, List<WeekProblem.Offer> packs) {
        int[] number = new int[week.deliveries().size()];
        for (int v = 0; v < number.length; v++) {
            WeekProblem.Delivery d = week.deliveries().get(v);
            number[v] = w == 0 || d.day() >= Calendar.MONDAY ? deliveries.size() : -1;
            if (number[v] >= 0) {
                deliveries.add(new WeekProblem.Delivery(d.vendor(), d.day() + WEEK * w, d.cutOff(), d.minimumCents(),
                        d.feeCents(), d.forced()));
            }
        }
        int[] own = new int[week.offers().size()];
        for (int o = 0; o < own.length; o++) {
            WeekProblem.Offer offer = week.offers().get(o);
            own[o] = number[offer.delivery()] < 0 ? -1 : packs.size();
            if (own[o] >= 0) {
                packs.add(new WeekProblem.Offer(offer.vendor(), offer.item(), number[offer.delivery()], offer.pack(),
                        offer.packMg(), offer.tiers(), offer.minPacks(), offer.maxPacks(), offer.locality(),
                        offer.whyLocal(), offer.onList()));
            }
        }
        offers.add(own);
    }

    /** Surplus keeps when it is still good after the last week; its worth is the last week's, of staples the first's. */
    private List<WeekProblem.Item> items(WeekProblem first, WeekProblem last) {
        List<WeekProblem.Item> items = new ArrayList<>();
        for (int i = 0; i < first.items().size(); i++) {
            WeekProblem.Item a = first.items().get(i);
            WeekProblem.Item z = last.items().get(i);
            boolean staple = a.lifeDays() == ProblemBuilder.FOREVER;
            items.add(new WeekProblem.Item(a.id(), a.name(), a.lifeDays(), z.keepDay() + WEEK * (weeks.size() - 1),
                    staple ? a.keptCentsPerMg() : z.keptCentsPerMg(), a.wasteCentsPerMg()));
        }
        return List.copyOf(items);
    }

    private List<WeekProblem.Resource> resources(WeekProblem first) {
        List<WeekProblem.Resource> all = new ArrayList<>();
        for (int w = 0; w < weeks.size(); w++) {
            for (int r = 0; r < resources; r++) {
                all.add(r == dock() && w == 0 ? dock(first.resources().get(r)) : own(weeks.get(w).resources().get(r), w,
                        r == dock()));
            }
        }
        return List.copyOf(all);
    }

    /** The hands that receive are the same in all weeks. */
    private WeekProblem.Resource dock(WeekProblem.Resource r) {
        long[] regular = new long[days];
        long[] overtime = new long[days];
        for (int d = 0; d < days; d++) {
            int w = Math.max(0, d / WEEK - 1);
            regular[d] = weeks.get(w).resources().get(dock()).regular()[d - WEEK * w];
            overtime[d] = weeks.get(w).resources().get(dock()).overtime()[d - WEEK * w];
        }
        return new WeekProblem.Resource(r.id(), r.name(), r.hands(), java.util.stream.IntStream.range(0, days).toArray(),
                regular, overtime, r.overtimeCentsPerHour(), r.held());
    }

    /** One week's: on days of other weeks there is nothing of it. @param nothing at all */
    private WeekProblem.Resource own(WeekProblem.Resource r, int w, boolean nothing) {
        boolean weekly = r.periods() == 1;
        int outside = weekly ? 0 : Calendar.DAYS;
        int[] period = new int[days];
        for (int d = 0; d < days; d++) {
            int own = d - WEEK * w;
            period[d] = weekly || own < 0 || own >= Calendar.DAYS ? outside : r.period()[own];
        }
        long[] regular = nothing ? new long[r.periods()] : r.regular();
        long[] overtime = nothing ? new long[r.periods()] : r.overtime();
        return new WeekProblem.Resource(r.id(), r.name(), r.hands() && !nothing, period,
                weekly ? regular : Arrays.copyOf(regular, outside + 1), weekly ? overtime : Arrays.copyOf(overtime, outside + 1),
                r.overtimeCentsPerHour(), r.held());
    }

    private WeekProblem.Prices prices() {
        WeekProblem.Prices p = weeks.get(0).prices();
        return new WeekProblem.Prices(p.gapDays(), p.coverage(), p.variety(), meanTarget(weeks), p.localPrice(),
                p.foodCostAtMost(), p.foodCostPrice(), p.evennessCentsPerMinute(), p.receivingResource(),
                p.receivingMinutes());
    }

    static Ratio meanTarget(List<WeekProblem> weeks) {
        return weeks.stream().map(w -> w.prices().localTarget()).reduce(Ratio.ZERO, Ratio::plus).over(weeks.size());
    }

    /** One week's part of a menu of all. */
    int[] choiceOf(int week, int[] choice) {
        return Arrays.copyOfRange(choice, firstSlot[week], firstSlot[week + 1]);
    }

    /** One week's packs, by its own offers; what it may not order here is none. */
    int[] packsOf(int week, int[] packs) {
        return Arrays.stream(offers.get(week)).map(o -> o < 0 ? 0 : packs[o]).toArray();
    }

    /** Menus of the weeks as one. */
    static int[] joined(List<int[]> choices) {
        return choices.stream().flatMapToInt(Arrays::stream).toArray();
    }
}
