package croftboard.plan;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/** Order lines that a manager keeps: at least so many packs of a vendor's item, from the soonest delivery on. */
final class KeptPacks {
    private final WeekProblem problem;
    private final List<String> faults = new ArrayList<>();

    KeptPacks(WeekProblem problem) {
        this.problem = problem;
    }

    /** @param packs by {@code vendor/item} */
    WeekProblem with(SortedMap<String, Integer> packs) {
        List<WeekProblem.Offer> offers = new ArrayList<>(problem.offers());
        packs.forEach((what, count) -> {
            int left = count;
            for (int o = 0; o < offers.size() && left > 0; o++) {
                WeekProblem.Offer x = offers.get(o);
                if (what.equals(x.vendor() + "/" + problem.items().get(x.item()).id())) {
                    int take = Math.min(left, x.maxPacks());
                    left -= take;
                    offers.set(o, new WeekProblem.Offer(x.vendor(), x.item(), x.delivery(), x.pack(), x.packMg(), x.tiers(),
                            Math.max(x.minPacks(), take), x.maxPacks(), x.locality(), x.whyLocal(), x.onList()));
                }
            }
            if (left > 0) {
                faults.add(count + " packs of " + what + " are kept, but only " + (count - left) + " can be ordered -> croftboard"
                        + " release " + problem.name() + " " + what);
            }
        });
        return packs.isEmpty() ? problem : new WeekProblem(problem.name(), problem.firstDay(), problem.days(), problem.openDays(),
                problem.prepDays(), problem.slots(), problem.items(), problem.components(), List.copyOf(offers),
                problem.deliveries(), problem.resources(), problem.stock(), problem.componentStock(), problem.looseStock(),
                problem.prices(), problem.constantCents());
    }

    List<String> faults() {
        return faults;
    }
}
