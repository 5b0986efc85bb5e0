package croftboard.ledger.share;

import croftboard.book.Vendor.Whence;
import croftboard.ledger.Booking;
import croftboard.ledger.Credit;
import croftboard.ledger.Entry;
import croftboard.ledger.EntryList;
import croftboard.ledger.Origin;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.Stamp;
import croftboard.ledger.StockCount;
import croftboard.ledger.Transfer;
import croftboard.ledger.Withdrawal;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A ledger in memory, entry by entry, as a test tells it. */
public final class LedgerBuilder {
    public static final Place STORE = new Place("Store", "NY", 42.0, -76.0);
    private static final Booking BOOKING = new Booking(1, LocalDateTime.of(2027, 8, 16, 9, 0), "chef", "receive", "test.csv", "f0");
    private final List<Entry> entries = new ArrayList<>();

    public EntryList done() {
        return new EntryList(entries);
    }

    private Stamp next(Optional<Stamp.Correction> corrects) {
        int id = entries.size() + 1;
        return new Stamp(id, BOOKING, id, corrects);
    }

    public Stamp next() {
        return next(Optional.empty());
    }

    /** Adds any entry. @return its id */
    public long add(Entry entry) {
        entries.add(entry);
        return entry.stamp().id();
    }

    /** A place so many straight-line miles north of the store. */
    public static Origin raw(String state, double miles) {
        return new Origin(at(state, miles), new Whence.Nowhere(), Optional.empty());
    }

    public static Whence at(String state, double miles) {
        double degrees = Math.toDegrees(miles * 1.609344 / Place.EARTH_RADIUS_KM);
        return new Whence.At(new Place("Farm", state, STORE.latitude() + degrees, STORE.longitude()));
    }

    public static Origin mixed(String state, double miles, String part) {
        return new Origin(new Whence.Unknown(), at(state, miles), Optional.of(Ratio.decimal(part)));
    }

    public long food(String day, String vendor, String item, long cents, Origin origin) {
        return add(receipt(next(), day, vendor, Receipt.Kind.FOOD, item, cents, origin));
    }

    public long corrected(long id, String day, String vendor, String item, long cents, Origin origin) {
        return add(receipt(next(Optional.of(new Stamp.Correction(id, "read wrong"))), day, vendor, Receipt.Kind.FOOD, item, cents,
                origin));
    }

    public void withdrawn(long id, String day) {
        add(new Withdrawal(next(Optional.of(new Stamp.Correction(id, "booked twice"))), LocalDate.parse(day)));
    }

    public long other(String day, Receipt.Kind kind, long cents) {
        return add(receipt(next(), day, "hollow", kind, "", cents, Origin.UNKNOWN));
    }

    public static Receipt receipt(Stamp stamp, String day, String vendor, Receipt.Kind kind, String item, long cents, Origin origin) {
        return new Receipt(stamp, LocalDate.parse(day), vendor, Optional.empty(), kind, item + " as written",
                item.isEmpty() ? Optional.empty() : Optional.of(item), Optional.of("10 lb box"), Optional.of(Quantity.of(1)),
                Quantity.of(1), Quantity.ZERO, 4_535_923, cents, cents, Optional.empty(), OptionalInt.empty(), origin, "");
    }

    public void credit(String day, Credit.Step step, long cents, Optional<Long> receipt) {
        String vendor = receipt.map(id -> ((Receipt) entries.get(Math.toIntExact(id) - 1)).vendor()).orElse("hollow");
        add(new Credit(next(), LocalDate.parse(day), vendor, receipt, step, cents, "short"));
    }

    public void transfer(String day, Transfer.Way way, long cents) {
        add(new Transfer(next(), LocalDate.parse(day), way, "cafe", "soup", Quantity.of(10), 0, cents));
    }

    public void sale(String day, String dish, long units, long cents) {
        add(new Sale(next(), LocalDate.parse(day), OptionalInt.empty(), "1", dish, dish.isEmpty() ? Optional.empty() : Optional.of(dish),
                true, Quantity.of(units), cents));
    }

    public void count(String day, String item, long cents) {
        add(new StockCount(next(), LocalDate.parse(day), Optional.of(item), item, "1", 1000, cents));
    }
}
