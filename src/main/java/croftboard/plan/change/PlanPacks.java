package croftboard.plan.change;

import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import java.util.HashMap;
import java.util.Map;

/** The packs of a plan as numbers, as far as a problem still offers them. */
public final class PlanPacks {
    private PlanPacks() { }

    /** @return packs of each offer, within what is offered now */
    public static int[] of(WeekProblem p, WeekPlan plan) {
        Map<String, Integer> ordered = new HashMap<>();
        plan.orders().forEach(o -> o.lines().forEach(l ->
                ordered.merge(o.vendor() + " " + o.delivery() + " " + l.item() + " " + l.pack(), l.packs(), Integer::sum)));
        int[] packs = new int[p.offers().size()];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = p.offers().get(o);
            WeekProblem.Delivery d = p.deliveries().get(offer.delivery());
            String key = offer.vendor() + " " + p.firstDay().plusDays(d.day()) + " " + p.items().get(offer.item()).id()
                    + " " + offer.pack();
            int wanted = ordered.getOrDefault(key, 0);
            packs[o] = Math.max(offer.minPacks(), Math.min(offer.maxPacks(), wanted));
            ordered.merge(key, -packs[o], Integer::sum);
        }
        return packs;
    }
}
