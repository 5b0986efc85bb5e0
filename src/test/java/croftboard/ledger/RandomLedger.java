package croftboard.ledger;

import croftboard.book.Vendor.Whence;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** Drafts of every kind of entry, with corrections, from a seed; invented throughout. */
public final class RandomLedger {
    private static final List<String> WORDS = List.of("leeks", "carrots, topped", "\"heirloom\" beans", "crème fraîche", "=1+1",
            "line\nbreak", "", "漢字", "a;b,c\td", "'quoted'");
    private final Random random;
    private final LocalDate from = LocalDate.of(2026, 1, 5);

    public RandomLedger(long seed) {
        random = new Random(seed);
    }

    /** @param known ids that earlier drafts were given; some of them are corrected, each once */
    public Draft draft(int number, int lines, Set<Long> known) {
        List<Entry> entries = new ArrayList<>();
        Set<Long> left = new TreeSet<>(known);
        for (int i = 1; i <= lines; i++) {
            if (!left.isEmpty() && random.nextInt(6) == 0) {
                long target = new ArrayList<>(left).get(random.nextInt(left.size()));
                left.remove(target);
                known.remove(target);
                entries.add(entry(Draft.correction(i, target, "typed wrong, " + word())));
            } else {
                entries.add(entry(Draft.line(i)));
            }
        }
        return new Draft(LocalDateTime.of(2026, 2, 1, 6, 30).plusHours(number), "desk", "receive", "file-" + number + ".csv",
                "f" + number, entries);
    }

    /** Books so many drafts into what takes them, and returns the ids that nothing has corrected. */
    public Set<Long> book(java.util.function.Function<Draft, Booked> into, int drafts, int lines) {
        Set<Long> known = new HashSet<>();
        for (int d = 1; d <= drafts; d++) {
            if (into.apply(draft(d, lines, known)) instanceof Booked.Done done) {
                done.entries().forEach(e -> known.add(e.stamp().id()));
            }
        }
        return known;
    }

    private Entry entry(Stamp stamp) {
        LocalDate date = from.plusDays(random.nextInt(60));
        long cents = random.nextInt(20_000) - 500;
        return switch (random.nextInt(11)) {
            case 0 -> new Receipt(stamp, date, "vendor-" + random.nextInt(5), maybe("2027-W33/v/0816"),
                    Receipt.Kind.values()[random.nextInt(4)], word(), maybe("leek"), maybe("25-lb sack"),
                    Optional.of(quantity()).filter(q -> random.nextBoolean()), quantity(), Quantity.ZERO, random.nextInt(9_000_000), cents,
                    cents * 3, maybe("onion"), random.nextBoolean() ? OptionalInt.of(405) : OptionalInt.empty(), origin(), word());
            case 1 -> new Sale(stamp, date, random.nextBoolean() ? OptionalInt.of(random.nextInt(24)) : OptionalInt.empty(), "40" + random.nextInt(9),
                    word(), maybe("soup"), random.nextInt(5) > 0, quantity(), cents);
            case 2 -> new Left(stamp, date, "2027-W33@1", "mon/soup", "soup", "leek-soup", random.nextInt(80), Optional.of(quantity()),
                    Optional.empty(), Optional.of(Quantity.ZERO), random.nextBoolean() ? Optional.of(LocalTime.of(13, 40)) : Optional.empty(), word());
            case 3 -> new Waste(stamp, date, maybe("soup"), Optional.empty(), word(), quantity(), 0,
                    Waste.Reason.values()[random.nextInt(7)], 0, word());
            case 4 -> new StockCount(stamp, date, maybe("flour"), word(), "2.5 sacks", 1_000, cents);
            case 5 -> new BatchYield(stamp, date, "stock", Ratio.of(1 + random.nextInt(5), 4), 900_000, 850_000);
            case 6 -> new Credit(stamp, date, "vendor-1", Optional.empty(), Credit.Step.values()[random.nextInt(3)], 250, word());
            case 7 -> new Overriding(stamp, date, "soup", maybe("leek-soup"), Optional.of(quantity()), quantity(), word());
            case 8 -> new Transfer(stamp, date, Transfer.Way.values()[random.nextInt(3)], "produce", word(), quantity(), 12, 345);
            case 9 -> new LabelRead(stamp, date, 1, new TreeSet<>(List.of("milk", "wheat")), random.nextBoolean(), word());
            default -> stamp.corrects().isPresent() ? new Withdrawal(stamp, date)
                    : new StockCount(stamp, date, Optional.empty(), word(), "", 0, 0);
        };
    }

    private Origin origin() {
        Whence at = new Whence.At(new Place("Quillby, Upper", "NY", 42.5 + random.nextDouble(), -74.25));
        return switch (random.nextInt(3)) {
            case 0 -> Origin.UNKNOWN;
            case 1 -> new Origin(at, new Whence.Nowhere(), Optional.empty());
            default -> new Origin(at, at, Optional.of(Ratio.of(random.nextInt(9), 8)));
        };
    }

    private Quantity quantity() {
        return new Quantity(random.nextInt(90_000));
    }

    private String word() {
        return WORDS.get(random.nextInt(WORDS.size()));
    }

    private Optional<String> maybe(String text) {
        return random.nextBoolean() ? Optional.of(text) : Optional.empty();
    }
}
