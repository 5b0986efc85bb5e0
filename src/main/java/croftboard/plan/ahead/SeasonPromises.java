package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.LocalCheck;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/** Commitments that are worth proposing: of each grower's share of a crop, over weeks that follow each other. */
final class SeasonPromises {
    /** Weeks in which less than so many packs are wanted end a stretch of weeks. */
    private static final double LEAST = 0.75;
    /** Fewer weeks than this are no season. */
    private static final int FEWEST = 3;
    private static final int WEEK_DAYS = 7;
    /** Cents over all its weeks for which it is worth talking. */
    private static final int LEAST_WORTH = 100;
    private final Book book;
    private final Expectation farms;
    private final SeasonDemand demand;
    private final Map<IsoWeek, Spread> spreads;

    SeasonPromises(Book book, Expectation farms, SeasonDemand demand, Map<IsoWeek, Spread> spreads) {
        this.book = book;
        this.farms = farms;
        this.demand = demand;
        this.spreads = spreads;
    }

    List<Season.Promise> of(List<Season.Demand> demands) {
        List<Season.Promise> all = new ArrayList<>();
        for (Season.Demand d : demands) {
            d.growers().forEach((vendor, by) -> stretches(book.vendor(vendor), d.item(), by).forEach(s -> promise(s).ifPresent(all::add)));
        }
        all.sort(Comparator.comparing((Season.Promise p) -> -p.worth()).thenComparing(Season.Promise::vendor).thenComparing(Season.Promise::item)
                .thenComparing(Season.Promise::from));
        return List.copyOf(all);
    }

    /** @param mg the grower's share, by week */
    private record Stretch(Vendor vendor, Vendor.Offer offer, List<IsoWeek> weeks, SortedMap<IsoWeek, Long> mg) { }

    private List<Stretch> stretches(Vendor vendor, String item, SortedMap<IsoWeek, Long> by) {
        Vendor.Offer offer = vendor.offers().stream().filter(o -> o.item().equals(item))
                .min(Comparator.comparingDouble(o -> o.price().value() / (double) farms.packMg(o))).orElseThrow();
        List<Stretch> all = new ArrayList<>();
        List<IsoWeek> now = new ArrayList<>();
        for (Map.Entry<IsoWeek, Long> e : by.entrySet()) {
            boolean enough = e.getValue() >= LEAST * farms.packMg(offer);
            boolean next = now.isEmpty() || now.get(now.size() - 1).plusWeeks(1).equals(e.getKey());
            if (!now.isEmpty() && (!enough || !next)) {
                all.add(new Stretch(vendor, offer, List.copyOf(now), by));
                now.clear();
            }
            if (enough) {
                now.add(e.getKey());
            }
        }
        if (!now.isEmpty()) {
            all.add(new Stretch(vendor, offer, List.copyOf(now), by));
        }
        all.removeIf(s -> s.weeks.size() < FEWEST);
        return all;
    }

    private Optional<Season.Promise> promise(Stretch s) {
        double packMg = farms.packMg(s.offer);
        String item = s.offer.item();
        List<Commitments.Week> weeks = s.weeks.stream().map(w -> new Commitments.Week(s.mg.get(w) / packMg,
                demand.has(s.vendor, item, w) / packMg, spreads.get(w).demand(item), fieldSpread(s.vendor, item, w))).toList();
        Commitments.Answer answer = new Commitments(terms(s.vendor, s.offer, s.weeks)).best(weeks);
        int already = s.vendor.commitments().stream().filter(c -> c.item().equals(item) && c.pack().equals(s.offer.pack())
                && c.weeks().holds(s.weeks.get(0))).mapToInt(Vendor.Commitment::packs).sum();
        return answer.worth() < LEAST_WORTH ? Optional.empty() : Optional.of(new Season.Promise(s.vendor.id(), item, s.offer.pack(), s.weeks.get(0),
                s.weeks.get(s.weeks.size() - 1), s.weeks.size(), answer.floor(), answer.packs(), answer.ceiling(), already,
                s.offer.price().value(), Math.round(answer.worth())));
    }

    private double fieldSpread(Vendor vendor, String item, IsoWeek week) {
        int[] packs = new int[3];
        vendor.offers().stream().filter(o -> o.item().equals(item)).forEach(o -> {
            int[] own = farms.packs(vendor, o, week);
            for (int c = 0; c < packs.length; c++) {
                packs[c] += own[c];
            }
        });
        return Spread.fieldSpread(packs);
    }

    private Commitments.Terms terms(Vendor vendor, Vendor.Offer offer, List<IsoWeek> weeks) {
        long packMg = farms.packMg(offer);
        double price = offer.price().value();
        double elsewhere = elsewhere(vendor, offer, weeks.get(weeks.size() / 2)) * packMg;
        Ingredient item = book.ingredient(offer.item());
        double keeps = item.keepsDays() < WEEK_DAYS ? 0 : item.keepWorth().orElse(book.kitchen().surplusWorth()
                .getOrDefault(item.storage(), Ratio.ZERO)).toDouble();
        double waste = item.keepsDays() < WEEK_DAYS ? book.kitchen().wastePerPound().value() * packMg / (Unit.POUND.base().toDouble() * 1000) : 0;
        return new Commitments.Terms(price, elsewhere, price * keeps - waste);
    }

    /** Cents a milligram at the cheapest other vendor that has it that week; half of what a missing local dollar costs is added where it is not local. */
    private double elsewhere(Vendor than, Vendor.Offer offer, IsoWeek week) {
        Optional<LocalCheck> check = book.kitchen().local().map(l -> new LocalCheck(book.vendors(), book.kitchen().place(), l.definition()));
        double short1 = book.kitchen().promises().localShare().toDouble() / 2;
        return book.vendors().values().stream().filter(v -> !v.id().equals(than.id())).flatMap(v -> v.offers().stream()
                .filter(o -> o.item().equals(offer.item())).filter(o -> there(v, o, week)).flatMap(o -> {
                    boolean local = check.map(c -> c.of(v, o).answer() == LocalCheck.Answer.LOCAL).orElse(true);
                    return Stream.of(o.price().value() / (double) farms.packMg(o) * (local ? 1 : 1 + short1));
                })).min(Double::compare).orElse(offer.price().value() / (double) farms.packMg(offer) * 2);
    }

    private boolean there(Vendor vendor, Vendor.Offer offer, IsoWeek week) {
        int[] packs = farms.packs(vendor, offer, week);
        return packs[0] + packs[1] > 0;
    }
}
