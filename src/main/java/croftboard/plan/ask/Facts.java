package croftboard.plan.ask;

import croftboard.need.WeekProblem;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The facts of a problem, and the problem when only some of them hold. */
final class Facts {
    private static final long PLENTY_MG = 10_000_000_000L;
    private static final long PLENTY_UNITS = 100_000;
    private static final int AGES = 400;

    private Facts() { }

    /** Everything that has to be so, pins first. */
    static List<Fact> of(WeekProblem p) {
        List<Fact> all = new ArrayList<>();
        for (int s = 0; s < p.slots().size(); s++) {
            if (!p.slots().get(s).mayBeEmpty()) {
                all.add(new Fact.Pin(s));
            }
        }
        if (p.prices().gapDays() > 0) {
            all.add(new Fact.Gap());
        }
        for (int o = 0; o < p.offers().size(); o++) {
            if (p.offers().get(o).minPacks() > 0) {
                all.add(new Fact.Promised(o));
            }
        }
        for (int i = 0; i < p.items().size(); i++) {
            all.add(new Fact.Supply(i));
        }
        for (int r = 0; r < p.resources().size(); r++) {
            for (int t = 0; t < p.resources().get(r).periods(); t++) {
                all.add(new Fact.Hands(r, t));
            }
        }
        for (int c = 0; c < p.components().size(); c++) {
            all.add(new Fact.Life(c));
        }
        for (int v = 0; v < p.deliveries().size(); v++) {
            if (p.deliveries().get(v).minimumCents() > 0) {
                all.add(new Fact.Minimum(v));
            }
        }
        return all;
    }

    /** The problem in which these facts do not hold. */
    static WeekProblem without(WeekProblem p, Collection<Fact> dropped) {
        Set<Fact> gone = new HashSet<>(dropped);
        List<WeekProblem.Slot> slots = new ArrayList<>(p.slots());
        List<WeekProblem.Offer> offers = new ArrayList<>(p.offers());
        List<WeekProblem.Delivery> deliveries = new ArrayList<>(p.deliveries());
        List<WeekProblem.Resource> resources = new ArrayList<>(p.resources());
        List<WeekProblem.Component> components = new ArrayList<>(p.components());
        List<WeekProblem.ItemStock> stock = new ArrayList<>(p.stock());
        WeekProblem.Prices prices = p.prices();
        for (Fact f : gone) {
            if (f instanceof Fact.Pin x) {
                WeekProblem.Slot s = slots.get(x.slot());
                slots.set(x.slot(), new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), s.free(), s.emptyCents(), true,
                        s.candidates()));
            } else if (f instanceof Fact.Gap) {
                prices = anyGap(prices);
            } else if (f instanceof Fact.Hands x) {
                resources.set(x.resource(), more(resources.get(x.resource()), x.period(), PLENTY_UNITS));
            } else if (f instanceof Fact.Supply x) {
                for (int d = 0; d < p.days(); d++) {
                    stock.add(new WeekProblem.ItemStock(x.item(), d, d, PLENTY_MG));
                }
            } else if (f instanceof Fact.Minimum x) {
                WeekProblem.Delivery d = deliveries.get(x.delivery());
                deliveries.set(x.delivery(), new WeekProblem.Delivery(d.vendor(), d.day(), d.cutOff(), 0, d.feeCents(), d.forced()));
            } else if (f instanceof Fact.Promised x) {
                offers.set(x.offer(), Problems.packs(offers.get(x.offer()), 0, offers.get(x.offer()).maxPacks()));
            } else if (f instanceof Fact.Life x) {
                WeekProblem.Component c = components.get(x.component());
                components.set(x.component(), new WeekProblem.Component(c.recipe(), AGES, 0, c.stepMg(), c.step(), c.perStep(),
                        c.parts(), c.uses(), c.stapleCentsPerStep()));
            }
        }
        return new WeekProblem(p.name(), p.firstDay(), p.days(), p.openDays(), p.prepDays(), slots, p.items(), components, offers,
                deliveries, resources, stock, p.componentStock(), p.looseStock(), prices, p.constantCents());
    }

    private static WeekProblem.Prices anyGap(WeekProblem.Prices p) {
        return new WeekProblem.Prices(0, p.coverage(), p.variety(), p.localTarget(), p.localPrice(), p.foodCostAtMost(),
                p.foodCostPrice(), p.evennessCentsPerMinute(), p.receivingResource(), p.receivingMinutes());
    }

    /** So many units more at the price of overtime. */
    static WeekProblem.Resource more(WeekProblem.Resource r, int period, long units) {
        long[] overtime = r.overtime().clone();
        overtime[period] += units;
        return new WeekProblem.Resource(r.id(), r.name(), r.hands(), r.period(), r.regular(), overtime, r.overtimeCentsPerHour(),
                r.held());
    }
}
