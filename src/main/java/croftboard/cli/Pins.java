package croftboard.cli;

import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import croftboard.plan.file.Overrides;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a manager keeps, as a repair sees it. */
final class Pins {
    private Pins() { }

    /** The plan with the dishes that are kept now; a place that the week no longer has is left out. */
    static WeekPlan on(WeekPlan plan, Overrides kept, LocalDateTime now) {
        SortedMap<String, String> dishes = new TreeMap<>(plan.inputs().kept());
        kept.rows().stream().filter(r -> r.kind() == Overrides.Kind.DISH && !r.kept()).forEach(r -> dishes.remove(r.what(), r.value()));
        kept.dishes().forEach((slot, dish) -> plan.menu().stream().filter(r -> r.slot().equals(slot)
                && r.days().get(0).isAfter(now.toLocalDate())).forEach(r -> dishes.put(slot, dish)));
        WeekPlan.Inputs was = plan.inputs();
        return new WeekPlan(plan.week(), plan.fingerprint(), new WeekPlan.Inputs(was.seed(), was.tries(), was.rounds(), was.nodes(),
                dishes, was.from(), was.gone(), was.revision()), plan.menu(), plan.batches(), plan.orders(), plan.needs(),
                plan.flows(), plan.surplus(), plan.account(), plan.promises(), plan.share(), plan.proof(), plan.missing(),
                plan.swaps());
    }

    /** Order lines that are kept and can still be ordered, unless something said of them already. */
    static List<Change> packs(WeekPlan plan, Overrides kept, List<Change> said, LocalDateTime now) {
        List<Change> all = new ArrayList<>();
        kept.packs().forEach((what, packs) -> {
            String vendor = what.substring(0, what.indexOf('/'));
            String item = what.substring(what.indexOf('/') + 1);
            int open = plan.orders().stream().filter(o -> o.vendor().equals(vendor) && !o.cutOff().isBefore(now))
                    .flatMap(o -> o.lines().stream()).filter(l -> l.item().equals(item)).mapToInt(WeekPlan.OrderLine::packs).sum();
            boolean spoken = said.stream().anyMatch(c -> c instanceof Change.Buy b && b.vendor().equals(vendor) && b.item().equals(item)
                    || c instanceof Change.VendorOut o && o.vendor().equals(vendor)
                    || c instanceof Change.ItemOut i && i.item().equals(item)
                    || c instanceof Change.Got g && g.vendor().equals(vendor) && g.item().equals(item)
                    || c instanceof Change.Late l && l.vendor().equals(vendor)
                    || c instanceof Change.NotSent n && n.vendor().equals(vendor));
            if (open > 0 && !spoken) {
                all.add(new Change.Buy(vendor, item, Math.min(open, packs)));
            }
        });
        return all;
    }
}
