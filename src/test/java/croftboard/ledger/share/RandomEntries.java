package croftboard.ledger.share;

import croftboard.book.Vendor.Whence;
import croftboard.ledger.Credit;
import croftboard.ledger.EntryList;
import croftboard.ledger.Origin;
import croftboard.ledger.Receipt;
import croftboard.ledger.Transfer;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Seeded random ledgers with everything that a share must tell apart. */
final class RandomEntries {
    private static final String[] STATES = {"NY", "PA", "VT", "CA", "MX"};
    private final Random random;
    private final LedgerBuilder ledger = new LedgerBuilder();
    private final List<Long> inForce = new ArrayList<>();
    private final List<Whence> places = new ArrayList<>();

    RandomEntries(long seed) {
        random = new Random(seed);
        for (int i = 0; i < 12; i++) {
            places.add(new Whence.At(new Place("Town " + i, pick(STATES), 42 + random.nextGaussian() * 3,
                    -76 + random.nextGaussian() * 4)));
        }
    }

    private <T> T pick(T[] all) {
        return all[random.nextInt(all.length)];
    }

    EntryList ledger(int entries) {
        for (int i = 0; i < entries; i++) {
            String day = LocalDate.of(2027, 1, 1).plusDays(random.nextInt(120)).toString();
            switch (random.nextInt(10)) {
                case 0 -> ledger.other(day, pick(Receipt.Kind.values()), random.nextInt(9_000));
                case 1 -> ledger.credit(day, pick(Credit.Step.values()), 1 + random.nextInt(4_000),
                        inForce.isEmpty() || random.nextBoolean() ? Optional.empty() : Optional.of(any()));
                case 2 -> ledger.transfer(day, pick(Transfer.Way.values()), 1 + random.nextInt(4_000));
                case 3 -> correct(day);
                default -> inForce.add(food(day));
            }
        }
        return ledger.done();
    }

    private long any() {
        return inForce.get(random.nextInt(inForce.size()));
    }

    private void correct(String day) {
        if (inForce.isEmpty()) {
            return;
        }
        long id = inForce.remove(random.nextInt(inForce.size()));
        if (random.nextInt(3) == 0) {
            ledger.withdrawn(id, day);
        } else {
            inForce.add(ledger.corrected(id, day, "vendor-" + random.nextInt(6), item(), cents(), origin()));
        }
    }

    private long food(String day) {
        return ledger.food(day, "vendor-" + random.nextInt(6), item(), cents(), origin());
    }

    private String item() {
        return random.nextInt(8) == 0 ? "" : "item-" + random.nextInt(15);
    }

    /** Now and then something was given back. */
    private long cents() {
        return random.nextInt(30) == 0 ? -random.nextInt(5_000) : random.nextInt(40_000);
    }

    private Origin origin() {
        Whence grown = random.nextInt(5) == 0 ? new Whence.Unknown() : place();
        Whence made = random.nextInt(2) == 0 ? new Whence.Nowhere() : random.nextInt(6) == 0 ? new Whence.Unknown() : place();
        Ratio[] parts = {Ratio.of(1, 3), Ratio.of(1, 2), Ratio.of(51, 100), Ratio.of(3, 5), Ratio.ONE};
        return new Origin(grown, made, random.nextInt(4) == 0 ? Optional.of(pick(parts)) : Optional.empty());
    }

    private Whence place() {
        return places.get(random.nextInt(places.size()));
    }

}
