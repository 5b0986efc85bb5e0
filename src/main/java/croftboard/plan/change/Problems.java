package croftboard.plan.change;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;

/** A problem like another but for some of its parts. */
public final class Problems {
    private Problems() { }

    /** @param more component stock beside what there is. @param loose the same for bounds */
    public static WeekProblem with(WeekProblem p, List<WeekProblem.Slot> slots, boolean[] prepDays,
            List<WeekProblem.ComponentStock> more, List<WeekProblem.ItemStock> loose) {
        List<WeekProblem.ComponentStock> stock = new ArrayList<>(p.componentStock());
        stock.addAll(more);
        List<WeekProblem.ItemStock> looseStock = new ArrayList<>(p.looseStock());
        looseStock.addAll(loose);
        return new WeekProblem(p.name(), p.firstDay(), p.days(), p.openDays(), prepDays, List.copyOf(slots), p.items(),
                p.components(), p.offers(), p.deliveries(), p.resources(), p.stock(), List.copyOf(stock),
                List.copyOf(looseStock), p.prices(), p.constantCents());
    }

    public static WeekProblem withSlots(WeekProblem p, List<WeekProblem.Slot> slots) {
        return with(p, slots, p.prepDays(), List.of(), List.of());
    }

    public static WeekProblem withSupply(WeekProblem p, List<WeekProblem.Offer> offers, List<WeekProblem.Delivery> deliveries) {
        return new WeekProblem(p.name(), p.firstDay(), p.days(), p.openDays(), p.prepDays(), p.slots(), p.items(),
                p.components(), List.copyOf(offers), List.copyOf(deliveries), p.resources(), p.stock(),
                p.componentStock(), p.looseStock(), p.prices(), p.constantCents());
    }

    public static WeekProblem withResources(WeekProblem p, List<WeekProblem.Resource> resources) {
        return new WeekProblem(p.name(), p.firstDay(), p.days(), p.openDays(), p.prepDays(), p.slots(), p.items(),
                p.components(), p.offers(), p.deliveries(), List.copyOf(resources), p.stock(), p.componentStock(),
                p.looseStock(), p.prices(), p.constantCents());
    }

    public static WeekProblem withPrices(WeekProblem p, WeekProblem.Prices prices) {
        return new WeekProblem(p.name(), p.firstDay(), p.days(), p.openDays(), p.prepDays(), p.slots(), p.items(),
                p.components(), p.offers(), p.deliveries(), p.resources(), p.stock(), p.componentStock(),
                p.looseStock(), prices, p.constantCents());
    }

    /** @param least, most packs of one offer */
    public static WeekProblem.Offer packs(WeekProblem.Offer o, int least, int most) {
        return new WeekProblem.Offer(o.vendor(), o.item(), o.delivery(), o.pack(), o.packMg(), o.tiers(), least, most,
                o.locality(), o.whyLocal(), o.onList());
    }

    public static WeekProblem.Candidate worthLess(WeekProblem.Candidate c, long cents) {
        return new WeekProblem.Candidate(c.dish(), c.recipe(), c.portions(), c.salesCents() - cents, c.leftCents(),
                c.stapleCents(), c.needs(), c.uses(), c.demands(), c.loose(), c.looseStapleCents(), c.covers(), c.main(),
                c.method(), c.cuisine(), c.productions());
    }
}
