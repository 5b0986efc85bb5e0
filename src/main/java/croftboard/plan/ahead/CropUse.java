package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.Set;

/**
 * What the dishes of each week want of each crop, beside what the growers of the book expect to have of it. Crops are what
 * a grower sells; all masses are milligrams as purchased.
 *
 * @param crops the most wanted first
 */
public record CropUse(List<IsoWeek> weeks, List<Crop> crops) {

    /** @param by one for each week that is planned */
    public record Crop(String item, SortedMap<IsoWeek, Week> by) {
        public long wanted() {
            return by.values().stream().mapToLong(Week::wanted).sum();
        }
    }

    /**
     * @param wanted by the dishes
     * @param bought from growers in this week's orders
     * @param sure that growers count on, or have said on a list
     * @param likely beside that
     * @param hoped beside both: no plan counts on it
     */
    public record Week(long wanted, long bought, long sure, long likely, long hoped) {
        /** What a plan counts on. */
        public long expected() {
            return sure + likely;
        }
    }

    public static CropUse of(Book book, List<WeekPlan> plans) {
        Expectation farms = new Expectation(book);
        Set<String> growers = new TreeSet<>();
        Set<String> items = new TreeSet<>();
        book.vendors().values().stream().filter(v -> v.kind() == Vendor.Kind.GROWER).forEach(v -> {
            growers.add(v.id());
            v.offers().forEach(o -> items.add(o.item()));
        });
        Map<String, SortedMap<IsoWeek, Week>> crops = new TreeMap<>();
        for (WeekPlan plan : plans) {
            Map<String, Long> wanted = wanted(plan);
            Map<String, Long> bought = bought(plan, growers);
            for (String item : items) {
                Expectation.Had had = farms.of(item, plan.week());
                crops.computeIfAbsent(item, i -> new TreeMap<>()).put(plan.week(), new Week(wanted.getOrDefault(item, 0L),
                        bought.getOrDefault(item, 0L), had.sure(), had.likely(), had.hoped()));
            }
        }
        List<Crop> all = new ArrayList<>();
        crops.forEach((item, by) -> all.add(new Crop(item, by)));
        all.removeIf(c -> c.wanted() == 0);
        all.sort(Comparator.comparing((Crop c) -> -c.wanted()).thenComparing(Crop::item));
        return new CropUse(plans.stream().map(WeekPlan::week).toList(), List.copyOf(all));
    }

    /** By item, milligrams as purchased. */
    static Map<String, Long> wanted(WeekPlan plan) {
        Map<String, Long> wanted = new TreeMap<>();
        plan.needs().forEach(n -> wanted.merge(n.item(), n.mg(), Long::sum));
        return wanted;
    }

    private static Map<String, Long> bought(WeekPlan plan, Set<String> growers) {
        Map<String, Long> bought = new TreeMap<>();
        plan.orders().stream().filter(o -> growers.contains(o.vendor())).forEach(o -> o.lines()
                .forEach(l -> bought.merge(l.item(), l.packs() * l.packMg(), Long::sum)));
        return bought;
    }
}
