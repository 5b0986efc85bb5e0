package croftboard.plan.work;

import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What of a week's makings, needs and orders is for one event: its dishes, and through every batch its share of what is used
 * of it. Where an event shares a need with the case, it takes its share of every delivery that meets the need.
 */
public final class EventTrace {
    private final WeekPlan plan;
    private final Tracing tracing;
    private final String prefix;

    /** @param event id, as it stands before the stroke of the plan's slots */
    public EventTrace(WeekPlan plan, Tracing tracing, String event) {
        this.plan = plan;
        this.tracing = tracing;
        this.prefix = event + "/";
    }

    /** @param share of what is used of it, above 0, at most 1 */
    public record Shared(Making making, Ratio share) {
        public boolean withOthers() {
            return share.compareTo(Ratio.ONE) < 0;
        }
    }

    /**
     * @param event grams as purchased for the event
     * @param all grams as purchased for everything on that day
     */
    public record Needed(String item, LocalDate day, Ratio event, Ratio all) { }

    /**
     * @param delivery empty: counted food
     * @param vendors ids; empty for counted food
     * @param event grams of it that go to the event
     */
    public record Brought(String item, Optional<LocalDate> delivery, List<String> vendors, Ratio event) { }

    public boolean isIts(String slot) {
        return slot.startsWith(prefix);
    }

    /** Every making that serves it, by day; its own dishes with a share of 1. */
    public List<Shared> makings() {
        List<Shared> shared = new ArrayList<>();
        for (Making m : tracing.makings()) {
            Ratio share = share(m);
            if (share.signum() > 0) {
                shared.add(new Shared(m, share));
            }
        }
        return List.copyOf(shared);
    }

    private Ratio share(Making making) {
        return tracing.slotsOf(making).entrySet().stream().filter(e -> isIts(e.getKey())).map(Map.Entry::getValue)
                .reduce(Ratio.ZERO, Ratio::plus);
    }

    /** By item and day. */
    public List<Needed> needs() {
        record Key(String item, LocalDate day) { }
        Comparator<Key> order = Comparator.comparing(Key::item).thenComparing(Key::day);
        Map<Key, Ratio> own = new TreeMap<>(order);
        Map<Key, Ratio> all = new TreeMap<>(order);
        for (Tracing.ItemUse u : tracing.items()) {
            Key key = new Key(u.item(), u.day());
            Ratio grams = Ratio.of(u.mg(), 1000);
            own.merge(key, grams.times(share(u.user())), Ratio::plus);
            all.merge(key, grams, Ratio::plus);
        }
        return own.entrySet().stream().filter(e -> e.getValue().signum() > 0).map(e -> new Needed(e.getKey().item,
                e.getKey().day, e.getValue(), all.get(e.getKey()))).toList();
    }

    /** What meets those needs, by item and delivery. */
    public List<Brought> brought() {
        record Key(String item, LocalDate delivery) { }
        Map<Key, Ratio> grams = new TreeMap<>(Comparator.comparing(Key::item).thenComparing(Key::delivery));
        for (Needed n : needs()) {
            Ratio part = n.event.over(n.all);
            plan.flows().stream().filter(f -> f.item().equals(n.item) && f.day().equals(n.day)).forEach(f -> grams.merge(
                    new Key(f.item(), f.delivery().orElse(LocalDate.MIN)), Ratio.of(f.mg(), 1000).times(part), Ratio::plus));
        }
        return grams.entrySet().stream().map(e -> {
            Optional<LocalDate> on = Optional.of(e.getKey().delivery).filter(d -> !d.equals(LocalDate.MIN));
            return new Brought(e.getKey().item, on, vendors(e.getKey().item, on), e.getValue());
        }).toList();
    }

    private List<String> vendors(String item, Optional<LocalDate> delivery) {
        return plan.orders().stream().filter(o -> delivery.filter(o.delivery()::equals).isPresent())
                .filter(o -> o.lines().stream().anyMatch(l -> l.item().equals(item))).map(WeekPlan.Order::vendor).toList();
    }
}
