package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.book.ListedOffer;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.plan.Given;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What can be bought for a week, from lists and calendars. A vendor on the week's list: only what the list says; a vendor
 * absent from it: its calendar, without what is only hoped for.
 */
final class Offered {
    /** @param packs at most so many, other plans' packs taken off. @param price of one pack, before price breaks */
    record Pack(Vendor vendor, LocalDate delivery, Vendor.Offer offer, int packs, long price, boolean listed) {
        /** All packs cost the price of the highest break reached. */
        long priceFor(int bought) {
            long cents = price;
            for (Vendor.Break b : offer.breaks()) {
                if (bought >= b.packs() && b.price().value() < price) {
                    cents = b.price().value();
                }
            }
            return cents;
        }
    }

    private final Book book;
    private final Days days;
    private final Given given;
    private final Optional<LocalDateTime> now;
    private final List<Pack> packs = new ArrayList<>();
    private final Map<String, Ratio> cheapest = new TreeMap<>();

    Offered(Book book, Days days, Given given, Optional<LocalDateTime> now) {
        this.book = book;
        this.days = days;
        this.given = given;
        this.now = now;
        for (Vendor vendor : book.vendors().values()) {
            for (LocalDate date : days.all()) {
                if (whyNot(vendor, date).isEmpty()) {
                    vendor.offers().forEach(o -> pack(vendor, date, o).ifPresent(packs::add));
                }
            }
        }
        packs.forEach(p -> cheapest.merge(p.offer().item(), Ratio.of(lowest(p)).over(grams(p.offer())), Ratio::min));
    }

    /** The least that one pack can cost with the packs there are. */
    private static long lowest(Pack pack) {
        long cents = pack.price();
        for (Vendor.Break b : pack.offer().breaks()) {
            cents = b.packs() <= pack.packs() ? Math.min(cents, b.price().value()) : cents;
        }
        return cents;
    }

    List<Pack> packs() {
        return packs;
    }

    /** Why the vendor cannot deliver on that date; empty: it can. */
    Optional<String> whyNot(Vendor vendor, LocalDate date) {
        Optional<Vendor.Delivery> delivery = delivery(vendor, date);
        if (delivery.isEmpty()) {
            return Optional.of("it does not deliver on that weekday");
        }
        if (!days.holds(date)) {
            return Optional.of("the delivery is not within a week before the week or in it");
        }
        if (days.closed(date)) {
            return Optional.of("the kitchen is closed that day");
        }
        if (vendor.mayBuy().isPresent() && !vendor.mayBuy().get().holds(date)) {
            return Optional.of("its papers do not hold that day");
        }
        LocalDateTime cutOff = delivery.get().cutOffFor(date);
        return now.isPresent() && cutOff.isBefore(now.get()) ? Optional.of("its cut-off " + cutOff + " is past")
                : Optional.empty();
    }

    static Optional<Vendor.Delivery> delivery(Vendor vendor, LocalDate date) {
        return vendor.deliveries().stream().filter(d -> d.day() == date.getDayOfWeek()).findFirst();
    }

    private Optional<Pack> pack(Vendor vendor, LocalDate date, Vendor.Offer offer) {
        int taken = given.orders().stream().filter(o -> o.vendor().equals(vendor.id()) && o.delivery().equals(date))
                .filter(o -> o.item().equals(offer.item()) && o.pack().equals(offer.pack()))
                .mapToInt(Given.Ordered::packs).sum();
        Optional<List<ListedOffer>> list = list(vendor, date);
        if (list.isPresent()) {
            return list.get().stream().filter(r -> r.item().equals(offer.item()) && r.pack().equals(offer.pack()))
                    .filter(r -> r.delivery().equals(date)).findFirst().filter(r -> r.packs() > taken)
                    .map(r -> new Pack(vendor, date, offer, r.packs() - taken, r.price().value(), true));
        }
        int expected = 0;
        for (Vendor.Expected e : offer.weeks()) {
            boolean counts = e.weeks().holds(IsoWeek.of(date)) && e.confidence() != Vendor.Confidence.HOPE;
            expected += counts ? e.packs() : 0;
        }
        boolean carried = offer.on().isEmpty() || offer.on().contains(date.getDayOfWeek());
        return carried && expected > taken
                ? Optional.of(new Pack(vendor, date, offer, expected - taken, offer.price().value(), false))
                : Optional.empty();
    }

    /** The vendor's rows of the list that speaks of that delivery: from the Tuesday before a week to its Saturday. */
    private Optional<List<ListedOffer>> list(Vendor vendor, LocalDate date) {
        IsoWeek own = IsoWeek.of(date);
        for (IsoWeek week : List.of(own, own.plusWeeks(1))) {
            LocalDate tuesday = week.monday().minusDays(6);
            LocalDate saturday = week.monday().plusDays(5);
            List<ListedOffer> rows = book.lists().getOrDefault(week, List.of()).stream()
                    .filter(r -> r.vendor().equals(vendor.id())).toList();
            if (!rows.isEmpty() && !date.isBefore(tuesday) && !date.isAfter(saturday)) {
                return Optional.of(rows);
            }
        }
        return Optional.empty();
    }

    Optional<Pack> find(String vendor, LocalDate delivery, String item, String pack) {
        return packs.stream().filter(p -> p.vendor().id().equals(vendor) && p.delivery().equals(delivery))
                .filter(p -> p.offer().item().equals(item) && p.offer().pack().equals(pack)).findFirst();
    }

    boolean sold(String item) {
        return cheapest.containsKey(item);
    }

    /** Cheapest price of the week, breaks within reach among them, cents a gram as purchased; when nobody sells it, of any offer of the year. */
    Ratio centsPerGram(String item) {
        if (sold(item)) {
            return cheapest.get(item);
        }
        return book.ingredient(item).free() ? Ratio.ZERO : book.vendors().values().stream()
                .flatMap(v -> v.offers().stream()).filter(o -> o.item().equals(item))
                .map(o -> Ratio.of(o.price().value()).over(grams(o))).reduce(Ratio::min).orElse(Ratio.ZERO);
    }

    Ratio grams(Vendor.Offer offer) {
        return Weights.held(book.ingredient(offer.item()), offer.holds());
    }

    /** Money that other plans have already ordered of a vendor for a delivery. */
    long alreadyOrdered(String vendor, LocalDate delivery) {
        return given.orders().stream().filter(o -> o.vendor().equals(vendor) && o.delivery().equals(delivery))
                .mapToLong(Given.Ordered::cents).sum();
    }
}
