package croftboard.ledger.share;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.book.Vendor.Kind;
import croftboard.book.Vendor.Offer;
import croftboard.book.Vendor;
import croftboard.book.file.BookReader;
import croftboard.ledger.Credit;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.Left;
import croftboard.ledger.Origin;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.Stamp;
import croftboard.ledger.StockCount;
import croftboard.ledger.Transfer;
import croftboard.ledger.Waste;
import croftboard.ledger.store.LedgerStore;
import croftboard.measure.IsoWeek;
import croftboard.need.RecipeTree;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * Receipts, sales, production sheets, waste, counts, credits and transfers of a book's kitchen, week by week, by seed. Invented:
 * nobody bought or ate any of it.
 */
public final class TwoYears {
    private final Book book;
    private final Random random;
    private final List<Entry> week = new ArrayList<>();
    private long id;

    private TwoYears(Book book, long seed) {
        this.book = book;
        this.random = new Random(seed);
    }

    /** Entries of each week from {@code first} on, with stamps to be numbered, or numbered as they stand. */
    public static List<List<Entry>> weeks(Book book, IsoWeek first, int weeks, long seed) {
        TwoYears years = new TwoYears(book, seed);
        List<List<Entry>> all = new ArrayList<>();
        for (int w = 0; w < weeks; w++) {
            years.week.clear();
            years.week(first.plusWeeks(w));
            all.add(List.copyOf(years.week));
        }
        return all;
    }

    /** Books the weeks into a new ledger: BOOK LEDGER FIRST-WEEK WEEKS. */
    public static void main(String[] args) {
        Book book = BookReader.read(Path.of(args[0])).orElseThrow();
        IsoWeek first = IsoWeek.parse(args[2]).orElseThrow();
        long lines = 0;
        try (LedgerStore store = LedgerStore.toWrite(args[1])) {
            for (List<Entry> week : weeks(book, first, Integer.parseInt(args[3]), 7)) {
                LocalDate last = week.get(week.size() - 1).date();
                store.book(new Draft(last.atTime(19, 0), "chef", "receive", "week-" + IsoWeek.of(last) + ".csv",
                        "made-" + IsoWeek.of(last), week));
                lines += week.size();
            }
        }
        System.out.println(lines + " lines");
    }

    private Stamp stamp() {
        return Draft.line((int) (++id % 10_000 + 1));
    }

    private void week(IsoWeek w) {
        for (Vendor vendor : book.vendors().values()) {
            for (Vendor.Delivery delivery : vendor.deliveries()) {
                delivery(w, vendor, delivery.day());
            }
        }
        for (DayOfWeek day : DayOfWeek.values()) {
            if (book.kitchen().open().contains(day)) {
                service(w.day(day), w);
            }
            LocalDate date = w.day(day);
            if (date.equals(YearMonth.from(date).atEndOfMonth())) {
                count(date);
            }
        }
    }

    private void delivery(IsoWeek w, Vendor vendor, DayOfWeek day) {
        List<Offer> there = vendor.offers().stream().filter(o -> o.on().isEmpty() || o.on().contains(day))
                .filter(o -> o.weeks().stream().anyMatch(x -> x.weeks().holds(w))).toList();
        int lines = Math.min(there.size(), vendor.kind() == Kind.DISTRIBUTOR ? 17 : 2);
        Set<Integer> picked = new TreeSet<>();
        while (picked.size() < lines) {
            picked.add(random.nextInt(there.size()));
        }
        String order = w + "/" + vendor.id() + "/" + w.day(day).toString().substring(5).replace("-", "");
        picked.forEach(i -> receipt(w.day(day), vendor, there.get(i), order));
        if (lines > 0 && vendor.fee().value() > 0) {
            week.add(plain(w.day(day), vendor, Receipt.Kind.FEE, "delivery", vendor.fee().value()));
        }
        if (lines > 0 && random.nextInt(12) == 0) {
            week.add(plain(w.day(day), vendor, Receipt.Kind.NOT_FOOD, "bags and boxes", 800 + random.nextInt(2_500)));
        }
    }

    private Receipt plain(LocalDate date, Vendor vendor, Receipt.Kind kind, String words, long cents) {
        return new Receipt(stamp(), date, vendor.id(), Optional.empty(), kind, words, Optional.empty(), Optional.empty(),
                Optional.empty(), Quantity.of(1), Quantity.ZERO, 0, cents, cents, Optional.empty(), OptionalInt.empty(),
                Origin.UNKNOWN, "");
    }

    private void receipt(LocalDate date, Vendor vendor, Offer offer, String order) {
        int ordered = 1 + random.nextInt(vendor.kind() == Kind.GROWER ? 3 : 2);
        int shorted = random.nextInt(vendor.kind() == Kind.GROWER ? 14 : 30) == 0 ? 1 + random.nextInt(ordered) : 0;
        int rejected = shorted == 0 && random.nextInt(40) == 0 ? 1 : 0;
        long came = ordered - shorted - rejected;
        boolean matched = random.nextInt(60) > 0;
        long mg = came * new RecipeTree(book).purchasedGrams(book.ingredient(offer.item()), offer.holds()).times(1000).floor();
        week.add(new Receipt(stamp(), date, vendor.id(), Optional.of(order), Receipt.Kind.FOOD, offer.as().orElse(offer.item()),
                matched ? Optional.of(offer.item()) : Optional.empty(), Optional.of(offer.pack()),
                Optional.of(Quantity.of(ordered)), Quantity.of(came), Quantity.of(rejected), mg, offer.price().value(),
                came * offer.price().value(), Optional.empty(), OptionalInt.of(380 + random.nextInt(30)),
                matched ? Origin.of(vendor, offer, book.vendors()) : Origin.UNKNOWN, ""));
        if (came > 0 && random.nextInt(50) == 0) {
            week.add(new Credit(stamp(), date, vendor.id(), Optional.empty(), Credit.Step.ASKED, offer.price().value() / 2, "soft"));
            week.add(new Credit(stamp(), date, vendor.id(), Optional.empty(), Credit.Step.RECEIVED, offer.price().value() / 2, "soft"));
        }
    }

    private void service(LocalDate date, IsoWeek w) {
        for (var line : book.kitchen().lines()) {
            List<Recipe> fit = book.recipes().values().stream().filter(Recipe::isDish).filter(r -> r.inSeason(w, book.seasons()))
                    .filter(r -> r.sale().orElseThrow().fits().contains(line.course()) || r.sale().orElseThrow().fits().contains(line.id()))
                    .toList();
            if (!fit.isEmpty()) {
                dish(date, w, line.id(), fit.get(random.nextInt(fit.size())));
            }
        }
        if (random.nextInt(20) == 0) {
            week.add(new Transfer(stamp(), date, Transfer.Way.values()[random.nextInt(3)], "bakery", "soup", Quantity.of(6), 0,
                    900 + random.nextInt(3_000)));
        }
    }

    private void dish(LocalDate date, IsoWeek w, String line, Recipe dish) {
        int planned = 20 + random.nextInt(25);
        int wanted = (int) Math.max(1, Math.round(planned * (0.85 + random.nextGaussian() * 0.22)));
        int sold = Math.min(planned, wanted);
        int rest = sold;
        for (int hour = 10; hour < 18; hour++) {
            int now = hour == 17 ? rest : Math.min(rest, random.nextInt(sold / 4 + 2));
            if (now > 0) {
                week.add(new Sale(stamp(), date, OptionalInt.of(hour), "", dish.name(), Optional.of(dish.id()), true, Quantity.of(now),
                        now * dish.sale().orElseThrow().price().value()));
                rest -= now;
            }
        }
        week.add(new Left(stamp(), date, w + "@1", date + " " + line, line, dish.id(), planned, Optional.of(Quantity.of(planned)),
                Optional.of(Quantity.of(sold)), Optional.of(Quantity.of(planned - sold)),
                sold == planned ? Optional.of(LocalTime.of(14, 30)) : Optional.empty(), ""));
        if (planned - sold > 6) {
            week.add(new Waste(stamp(), date, Optional.of(dish.id()), Optional.empty(), dish.name(), Quantity.of(planned - sold - 4), 0,
                    Waste.Reason.values()[random.nextInt(6)], random.nextInt(5) == 0 ? 0 : (planned - sold - 4) * 190L, ""));
        }
    }

    private void count(LocalDate date) {
        book.ingredients().values().stream().filter(i -> i.par().isPresent()).forEach(i -> week.add(new StockCount(stamp(), date,
                Optional.of(i.id()), i.name(), "10 lb", 4_535_924, 1_500 + random.nextInt(3_000))));
    }
}
