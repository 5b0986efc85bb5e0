package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Each week's need of a crop, handed to the growers in their order as far as they count on having it: first those who name
 * it among their priorities, by its place there, then the cheapest.
 */
final class SeasonDemand {
    private final Book book;
    private final Expectation farms;

    SeasonDemand(Book book, Expectation farms) {
        this.book = book;
        this.farms = farms;
    }

    List<Season.Demand> of(List<PlannedWeek> weeks) {
        Map<String, SortedMap<IsoWeek, Long>> wanted = new TreeMap<>();
        weeks.forEach(w -> CropUse.wanted(w.plan()).forEach((item, mg) -> wanted.computeIfAbsent(item, i -> new TreeMap<>())
                .merge(w.week(), mg, Long::sum)));
        List<Season.Demand> all = new ArrayList<>();
        wanted.forEach((item, by) -> {
            List<Vendor> growers = inLine(item);
            if (!growers.isEmpty()) {
                all.add(demand(item, by, growers));
            }
        });
        all.sort(Comparator.comparing((Season.Demand d) -> -d.all()).thenComparing(Season.Demand::item));
        return List.copyOf(all);
    }

    private Season.Demand demand(String item, SortedMap<IsoWeek, Long> wanted, List<Vendor> growers) {
        Map<String, SortedMap<IsoWeek, Long>> shares = new LinkedHashMap<>();
        growers.forEach(v -> shares.put(v.id(), new TreeMap<>()));
        wanted.forEach((week, mg) -> {
            long left = mg;
            for (Vendor v : growers) {
                long share = Math.min(left, has(v, item, week));
                if (share > 0) {
                    shares.get(v.id()).put(week, share);
                }
                left -= share;
            }
        });
        shares.values().removeIf(Map::isEmpty);
        return new Season.Demand(item, wanted, shares);
    }

    /** What the grower counts on in a week. */
    long has(Vendor vendor, String item, IsoWeek week) {
        return vendor.offers().stream().filter(o -> o.item().equals(item)).mapToLong(o -> {
            int[] packs = farms.packs(vendor, o, week);
            return (packs[0] + packs[1]) * farms.packMg(o);
        }).sum();
    }

    List<Vendor> inLine(String item) {
        return book.vendors().values().stream().filter(v -> v.kind() == Vendor.Kind.GROWER)
                .filter(v -> v.offers().stream().anyMatch(o -> o.item().equals(item)))
                .sorted(Comparator.comparing((Vendor v) -> place(v, item)).thenComparing(v -> price(v, item)).thenComparing(Vendor::id)).toList();
    }

    private static int place(Vendor vendor, String item) {
        int at = vendor.priorities().indexOf(item);
        return at < 0 ? Integer.MAX_VALUE : at;
    }

    /** Cents a milligram, the cheapest pack. */
    double price(Vendor vendor, String item) {
        return vendor.offers().stream().filter(o -> o.item().equals(item))
                .mapToDouble(o -> o.price().value() / (double) farms.packMg(o)).min().orElse(Double.MAX_VALUE);
    }
}
