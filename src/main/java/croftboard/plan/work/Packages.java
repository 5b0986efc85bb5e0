package croftboard.plan.work;

import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The packs of one item that came on one day, opened one after another. */
final class Packages {
    private record Pack(String words, String vendor, long from, long to) { }

    private final List<Pack> packs = new ArrayList<>();
    private long used;
    private LocalDate lastOpened;

    Packages(WeekPlan plan, String item, LocalDate delivery) {
        long at = 0;
        for (WeekPlan.Order o : plan.orders()) {
            for (WeekPlan.OrderLine l : o.lines()) {
                for (int i = 0; o.delivery().equals(delivery) && l.item().equals(item) && i < l.packs(); i++) {
                    packs.add(new Pack(l.pack(), o.vendor(), at, at + l.packMg()));
                    at += l.packMg();
                }
            }
        }
    }

    /** Takes so much on that day, from what is open first. */
    Pull.Delivered take(LocalDate delivery, LocalDate day, long mg) {
        long end = used + mg;
        Optional<LocalDate> open = Optional.empty();
        Map<String, Integer> opens = new LinkedHashMap<>();
        List<String> vendors = new ArrayList<>();
        for (Pack p : packs) {
            if (p.to > used && p.from < end) {
                if (p.from < used) {
                    open = Optional.ofNullable(lastOpened);
                } else {
                    opens.merge(p.words, 1, Integer::sum);
                }
                vendors.add(p.vendor);
            }
        }
        used = end;
        if (!opens.isEmpty()) {
            lastOpened = day;
        }
        return new Pull.Delivered(delivery, vendors.stream().distinct().toList(), open, opens.entrySet().stream()
                .map(e -> new Pull.Packs(e.getKey(), e.getValue())).toList());
    }
}
