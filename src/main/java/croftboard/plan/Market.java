package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.ListedOffer;
import croftboard.book.LocalCheck;
import croftboard.book.Vendor;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import croftboard.need.WeekProblem;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What can be bought for one week: every delivery whose cut-off is not past, and the packs expected on it. A grower's
 * own list of the week overrides its calendar; a delivery that is only hoped for is not planned on.
 */
final class Market {
    private final Book book;
    private final Calendar calendar;
    private final WeekIndex index;
    private final Given given;
    private final Optional<LocalDateTime> now;
    private final RecipeTree tree;
    private final Optional<LocalCheck> local;
    private Optional<LocalDateTime> gone = Optional.empty();
    final List<WeekProblem.Delivery> deliveries = new ArrayList<>();
    final List<WeekProblem.Offer> offers = new ArrayList<>();
    private final Map<String, Ratio> cheapest = new TreeMap<>();
    /** By item number, a bit for each day on which it can be delivered. */
    private final long[] deliveryDays;

    Market(Book book, Calendar calendar, WeekIndex index, Given given, Optional<LocalDateTime> now) {
        this.book = book;
        this.calendar = calendar;
        this.index = index;
        this.given = given;
        this.now = now;
        this.tree = new RecipeTree(book);
        this.local = book.kitchen().local()
                .map(l -> new LocalCheck(book.vendors(), book.kitchen().place(), l.definition()));
        this.deliveryDays = new long[index.item.size()];
        for (Vendor vendor : book.vendors().values()) {
            for (int day = 0; day < Calendar.DAYS; day++) {
                addDelivery(vendor, day);
            }
        }
    }

    private void addDelivery(Vendor vendor, int day) {
        LocalDate date = calendar.date(day);
        Optional<Vendor.Delivery> delivery = vendor.deliveries().stream()
                .filter(d -> d.day() == date.getDayOfWeek()).findFirst();
        if (delivery.isEmpty() || calendar.closed(day) || !vendor.mayBuy().map(s -> s.holds(date)).orElse(true)) {
            return;
        }
        LocalDateTime cutOff = delivery.get().cutOffFor(date);
        if (now.isPresent() && cutOff.isBefore(now.get())) {
            gone = gone.filter(g -> g.isAfter(cutOff)).or(() -> Optional.of(cutOff));
            return;
        }
        List<Pack> packs = packsOn(vendor, date);
        if (packs.isEmpty()) {
            return;
        }
        long ordered = given.orders().stream().filter(o -> o.vendor().equals(vendor.id()) && o.delivery().equals(date))
                .mapToLong(Given.Ordered::cents).sum();
        int number = deliveries.size();
        List<WeekProblem.Offer> here = packs.stream().map(p -> offer(vendor, date, p, number))
                .filter(o -> o.maxPacks() > 0).toList();
        if (!here.isEmpty()) {
            deliveries.add(new WeekProblem.Delivery(vendor.id(), day, cutOff,
                    Math.max(0, vendor.minimum().value() - ordered), ordered > 0 ? 0 : vendor.fee().value(), false));
            offers.addAll(here);
            here.forEach(o -> deliveryDays[o.item()] |= 1L << day);
        }
    }

    /** The last cut-off that is past. */
    Optional<LocalDateTime> gone() {
        return gone;
    }

    /** One offer of the vendor with what is expected of it on a date. */
    private record Pack(Vendor.Offer offer, int packs, Cents price, boolean listed) { }

    private List<Pack> packsOn(Vendor vendor, LocalDate date) {
        Optional<IsoWeek> listWeek = listSpeaking(vendor, date);
        List<Pack> all = new ArrayList<>();
        for (Vendor.Offer offer : vendor.offers()) {
            if (listWeek.isPresent()) {
                book.lists().get(listWeek.get()).stream().filter(row -> sameOffer(row, vendor, offer, date))
                        .findFirst().ifPresent(row -> all.add(new Pack(offer, row.packs(), row.price(), true)));
            } else if (offer.on().isEmpty() || offer.on().contains(date.getDayOfWeek())) {
                int packs = offer.weeks().stream().filter(w -> w.weeks().holds(IsoWeek.of(date)))
                        .filter(w -> w.confidence() != Vendor.Confidence.HOPE).mapToInt(Vendor.Expected::packs).sum();
                all.add(new Pack(offer, packs, offer.price(), false));
            }
        }
        return all;
    }

    private static boolean sameOffer(ListedOffer row, Vendor vendor, Vendor.Offer offer, LocalDate date) {
        return row.vendor().equals(vendor.id()) && row.item().equals(offer.item()) && row.pack().equals(offer.pack())
                && row.delivery().equals(date);
    }

    /** The week whose list speaks of that vendor's delivery: from the Tuesday before the week to its Saturday. */
    private Optional<IsoWeek> listSpeaking(Vendor vendor, LocalDate date) {
        IsoWeek own = IsoWeek.of(date);
        for (IsoWeek week : List.of(own, own.plusWeeks(1))) {
            boolean inside = !date.isBefore(week.monday().minusDays(6)) && !date.isAfter(week.monday().plusDays(5));
            boolean speaks = book.lists().getOrDefault(week, List.of()).stream()
                    .anyMatch(r -> r.vendor().equals(vendor.id()));
            if (inside && speaks) {
                return Optional.of(week);
            }
        }
        return Optional.empty();
    }

    private WeekProblem.Offer offer(Vendor vendor, LocalDate date, Pack pack, int delivery) {
        Vendor.Offer offer = pack.offer;
        Ingredient ingredient = book.ingredient(offer.item());
        Ratio grams = tree.purchasedGrams(ingredient, offer.holds());
        int ordered = given.orders().stream().filter(o -> o.vendor().equals(vendor.id()) && o.delivery().equals(date)
                && o.item().equals(offer.item()) && o.pack().equals(offer.pack())).mapToInt(Given.Ordered::packs).sum();
        int max = Math.max(0, pack.packs - ordered);
        List<WeekProblem.Tier> tiers = new ArrayList<>(List.of(new WeekProblem.Tier(1, pack.price.value())));
        for (Vendor.Break b : offer.breaks()) {
            if (b.price().value() < pack.price.value()) {
                tiers.add(new WeekProblem.Tier(b.packs(), b.price().value()));
            }
        }
        int min = Math.min(max, Math.max(0, committed(vendor, offer, date) - ordered));
        if (max > 0) {
            long lowest = tiers.stream().filter(t -> t.packs() <= max).mapToLong(WeekProblem.Tier::priceCents).min()
                    .orElse(pack.price.value());
            cheapest.merge(offer.item(), Ratio.of(lowest).over(grams), Ratio::min);
        }
        LocalCheck.Verdict verdict = local.map(l -> l.of(vendor, offer))
                .orElse(new LocalCheck.Verdict(LocalCheck.Answer.UNCLASSIFIED, "no definition of local in force"));
        return new WeekProblem.Offer(vendor.id(), index.item.get(offer.item()), delivery, offer.pack(),
                grams.times(1000).floor(), List.copyOf(tiers), min, max,
                WeekProblem.Locality.valueOf(verdict.answer().name()), verdict.why(), pack.listed);
    }

    /**
     * Packs promised for that delivery: a commitment falls on the first delivery of its week that carries the offer, is
     * not closed and can still be ordered.
     */
    private int committed(Vendor vendor, Vendor.Offer offer, LocalDate date) {
        IsoWeek week = IsoWeek.of(date);
        boolean first = java.util.stream.IntStream.range(0, (int) java.time.temporal.ChronoUnit.DAYS
                .between(week.monday(), date)).mapToObj(week.monday()::plusDays)
                .noneMatch(d -> !calendar.closed(calendar.day(d)) && vendor.mayBuy().map(m -> m.holds(d)).orElse(true)
                        && vendor.deliveries().stream().anyMatch(
                        x -> x.day() == d.getDayOfWeek() && !now.map(x.cutOffFor(d)::isBefore).orElse(false))
                        && (offer.on().isEmpty() || offer.on().contains(d.getDayOfWeek())));
        return !first || !week.equals(calendar.week()) ? 0 : vendor.commitments().stream()
                .filter(c -> c.item().equals(offer.item()) && c.pack().equals(offer.pack()) && c.weeks().holds(week))
                .mapToInt(Vendor.Commitment::packs).sum();
    }

    /** Cheapest cents a gram (AP) of the week, price breaks that can be reached among them; where nothing is offered, of any offer of the year; zero when free. */
    Ratio centsPerGram(String item) {
        Ratio found = cheapest.get(item);
        if (found != null || book.ingredient(item).free()) {
            return found == null ? Ratio.ZERO : found;
        }
        return book.vendors().values().stream().flatMap(v -> v.offers().stream())
                .filter(o -> o.item().equals(item))
                .map(o -> Ratio.of(o.price().value()).over(tree.purchasedGrams(book.ingredient(item), o.holds())))
                .reduce(Ratio::min).orElse(Ratio.ZERO);
    }

    /** Whether a delivery leaves something of the item usable on some day of the window. */
    boolean reachable(int item, int lifeDays, int from, int to) {
        int first = Math.max(0, from - lifeDays);
        return first <= to && (deliveryDays[item] >> first & (1L << (to - first + 1)) - 1) != 0;
    }
}
