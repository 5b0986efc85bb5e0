package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What freezing a surplus would be worth: crops whose frozen form the book knows, which the field has beyond what the weeks'
 * dishes want, and which later dishes eat. Freezing only: any other way of keeping food is the authority's to allow.
 */
final class SeasonFreezing {
    /** Hands a pound as purchased: husking or trimming, blanching, cooling, bagging. Common practice, no source. */
    private static final double MINUTES_A_POUND = 5;
    private static final double POUND_MG = 453_592.37;
    /** So long a frozen vegetable is good. Common practice, no source. */
    private static final int WEEKS_GOOD = 36;
    private final Book book;
    private final Expectation farms;
    private final SeasonDemand demand;
    private final SeasonGaps gaps;
    private final List<PlannedWeek> weeks;

    SeasonFreezing(Book book, Expectation farms, SeasonDemand demand, SeasonGaps gaps, List<PlannedWeek> weeks) {
        this.book = book;
        this.farms = farms;
        this.demand = demand;
        this.gaps = gaps;
        this.weeks = weeks;
    }

    List<Season.Freezing> chances() {
        List<Season.Freezing> all = new ArrayList<>();
        for (Ingredient frozen : book.ingredients().values()) {
            for (Ingredient fresh : book.ingredients().values()) {
                if (SeasonGaps.isFrozenOf(frozen, fresh) && !demand.inLine(fresh.id()).isEmpty()) {
                    chance(fresh, frozen, all);
                }
            }
        }
        all.sort(java.util.Comparator.comparing((Season.Freezing f) -> -f.worth()).thenComparing(Season.Freezing::item));
        return List.copyOf(all);
    }

    private void chance(Ingredient fresh, Ingredient frozen, List<Season.Freezing> all) {
        List<PlannedWeek> surplus = weeks.stream().filter(w -> left(fresh.id(), w) > 0).toList();
        if (surplus.isEmpty()) {
            return;
        }
        IsoWeek first = surplus.get(0).week();
        IsoWeek last = surplus.get(surplus.size() - 1).week();
        double yield = fresh.cuts().values().stream().map(Ingredient.Cut::yield).min(Ratio::compareTo).orElse(Ratio.ONE).toDouble();
        double ratio = fresh.substitutes().stream().filter(s -> s.use().equals(frozen.id())).map(s -> s.ratio().toDouble()).findFirst().orElse(1.0);
        TreeSet<String> dishes = new TreeSet<>();
        double wanted = 0;
        for (PlannedWeek w : weeks) {
            boolean later = w.week().compareTo(first) > 0 && w.week().compareTo(last.plusWeeks(WEEKS_GOOD)) <= 0;
            if (later) {
                double bought = CropUse.wanted(w.plan()).getOrDefault(frozen.id(), 0L);
                boolean none = gaps.counted(fresh.id(), w.week()) == 0 && fresh.substitutes().stream().anyMatch(s -> s.use().equals(frozen.id()));
                double instead = none ? CropUse.wanted(w.plan()).getOrDefault(fresh.id(), 0L) * yield * ratio : 0;
                wanted += bought + instead;
                dishes.addAll(bought > 0 ? gaps.dishes(w, frozen.id()) : java.util.Set.of());
                dishes.addAll(instead > 0 ? gaps.dishes(w, fresh.id()) : java.util.Set.of());
            }
        }
        double there = surplus.stream().mapToDouble(w -> left(fresh.id(), w)).sum();
        double mg = Math.min(there, wanted / (yield * ratio));
        if (mg < POUND_MG) {
            return;
        }
        double frozenMg = mg * yield * ratio;
        long minutes = Math.round(mg / POUND_MG * MINUTES_A_POUND);
        double saved = frozenMg * price(frozen.id()) - mg * demand.price(demand.inLine(fresh.id()).get(0), fresh.id()) - minutes * hourCents() / 60;
        all.add(new Season.Freezing(fresh.id(), frozen.id(), first, last, Math.round(mg), Math.round(frozenMg), minutes, Math.round(saved),
                List.copyOf(dishes)));
    }

    /** What growers count on beyond what the week's dishes want. */
    private long left(String item, PlannedWeek week) {
        return gaps.counted(item, week.week()) - CropUse.wanted(week.plan()).getOrDefault(item, 0L);
    }

    /** Cents a milligram of the cheapest pack of anybody. */
    private double price(String item) {
        return book.vendors().values().stream().map(Vendor::offers).flatMap(List::stream).filter(o -> o.item().equals(item))
                .mapToDouble(o -> o.price().value() / (double) farms.packMg(o)).min().orElse(0);
    }

    /** An hour of the dearest station that pays overtime: nobody has it left over in August. */
    private double hourCents() {
        return book.kitchen().stations().stream().map(Kitchen.Station::overtimePerHour).mapToLong(c -> c.value()).max().orElse(0);
    }
}
