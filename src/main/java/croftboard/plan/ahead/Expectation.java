package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.ListedOffer;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.need.RecipeTree;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** What growers expect to have in a calendar week: their lists where there are any, else the farms' calendar. */
final class Expectation {
    private final Book book;
    private final RecipeTree tree;
    private final Map<Vendor.Offer, Long> packMg = new IdentityHashMap<>();
    private final Map<String, Map<IsoWeek, Had>> had = new HashMap<>();

    Expectation(Book book) {
        this.book = book;
        this.tree = new RecipeTree(book);
    }

    /** Milligrams as purchased. */
    record Had(long sure, long likely, long hoped) { }

    /** Of all growers together. */
    Had of(String item, IsoWeek week) {
        return had.computeIfAbsent(item, i -> new HashMap<>()).computeIfAbsent(week, w -> reckoned(item, w));
    }

    private Had reckoned(String item, IsoWeek week) {
        long[] mg = new long[3];
        for (Vendor vendor : book.vendors().values()) {
            if (vendor.kind() == Vendor.Kind.GROWER) {
                for (Vendor.Offer offer : vendor.offers()) {
                    if (offer.item().equals(item)) {
                        int[] packs = packs(vendor, offer, week);
                        for (int c = 0; c < mg.length; c++) {
                            mg[c] += packs[c] * packMg(offer);
                        }
                    }
                }
            }
        }
        return new Had(mg[0], mg[1], mg[2]);
    }

    long packMg(Vendor.Offer offer) {
        return packMg.computeIfAbsent(offer, o -> tree.purchasedGrams(book.ingredient(o.item()), o.holds()).times(1000).floor());
    }

    /** Packs of one offer over all deliveries of the week: sure, likely, hoped. */
    int[] packs(Vendor vendor, Vendor.Offer offer, IsoWeek week) {
        int[] packs = new int[3];
        List<ListedOffer> list = book.lists().getOrDefault(week, List.of()).stream()
                .filter(r -> r.vendor().equals(vendor.id())).toList();
        for (LocalDate date : deliveries(vendor, offer, week)) {
            if (!list.isEmpty()) {
                packs[0] += list.stream().filter(r -> r.item().equals(offer.item()) && r.pack().equals(offer.pack())
                        && r.delivery().equals(date)).mapToInt(ListedOffer::packs).sum();
            } else {
                offer.weeks().stream().filter(e -> e.weeks().holds(week)).forEach(e -> packs[e.confidence().ordinal()] += e.packs());
            }
        }
        return packs;
    }

    /** Days of the calendar week on which the vendor may bring the offer; days on which the kitchen is closed are none. */
    List<LocalDate> deliveries(Vendor vendor, Vendor.Offer offer, IsoWeek week) {
        return vendor.deliveries().stream().filter(d -> offer.on().isEmpty() || offer.on().contains(d.day()))
                .map(d -> week.day(d.day())).filter(d -> vendor.mayBuy().map(s -> s.holds(d)).orElse(true))
                .filter(d -> !book.seasons().closures().containsKey(d)).sorted().toList();
    }
}
