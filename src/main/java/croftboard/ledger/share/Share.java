package croftboard.ledger.share;

import croftboard.book.LocalCheck.Answer;
import croftboard.book.LocalRules.Definition;
import croftboard.book.Vendor;
import croftboard.ledger.Credit;
import croftboard.ledger.Receipt;
import croftboard.ledger.Transfer;
import croftboard.measure.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Which share of the money paid for food was paid for local food, under one definition.
 *
 * @param lines every receipt line of food, in the order of dates; their money is {@code all}, to the cent
 * @param asides what stands in neither number, only kinds that occurred
 */
public record Share(Definition definition, LocalDate from, LocalDate to, Money all, List<Counted> lines, List<Aside> asides) {

    /** @param store from which miles are measured. @param vendors of the book */
    public static Share of(Period period, Definition definition, Place store, Map<String, Vendor> vendors) {
        Locality locality = new Locality(vendors, store, definition);
        List<Counted> lines = new ArrayList<>();
        Asides asides = new Asides(locality, period);
        for (Receipt receipt : period.receipts()) {
            if (receipt.kind() == Receipt.Kind.FOOD) {
                lines.add(locality.count(receipt));
            } else {
                asides.receipt(receipt);
            }
        }
        period.credits().forEach(asides::credit);
        period.transfers().forEach(asides::transfer);
        return new Share(definition, period.from(), period.to(), sum(lines), List.copyOf(lines), asides.all());
    }

    private static Money sum(List<Counted> lines) {
        return lines.stream().map(Counted::money).reduce(Money.NONE, Money::plus);
    }

    /** The money by a property of each line; the groups' sum is {@code all}. */
    public SortedMap<String, Money> by(Function<Counted, String> key) {
        SortedMap<String, Money> groups = new TreeMap<>();
        lines.forEach(l -> groups.merge(key.apply(l), l.money(), Money::plus));
        return groups;
    }

    /** Cents by what is near about the food; every kind is there, their sum is the total of {@code all}. */
    public Map<Near, Long> near() {
        Map<Near, Long> near = new EnumMap<>(Near.class);
        for (Near n : Near.values()) {
            near.put(n, 0L);
        }
        lines.forEach(l -> near.merge(l.near(), l.receipt().cents(), Math::addExact));
        return near;
    }

    /** Collects what is kept out. */
    private static final class Asides {
        private final Map<Aside.Kind, Aside> kinds = new EnumMap<>(Aside.Kind.class);
        private final Locality locality;
        private final Period period;

        Asides(Locality locality, Period period) {
            this.locality = locality;
            this.period = period;
        }

        List<Aside> all() {
            return List.copyOf(kinds.values());
        }

        private void add(Aside.Kind kind, long cents, Money food) {
            kinds.put(kind, kinds.getOrDefault(kind, new Aside(kind, 0, 0, Money.NONE)).plus(cents, food));
        }

        void receipt(Receipt receipt) {
            add(switch (receipt.kind()) {
                case FEE -> Aside.Kind.FEE;
                case DEPOSIT -> Aside.Kind.DEPOSIT;
                default -> Aside.Kind.NOT_FOOD;
            }, receipt.cents(), Money.NONE);
        }

        void transfer(Transfer transfer) {
            add(switch (transfer.way()) {
                case IN -> Aside.Kind.TRANSFER_IN;
                case OUT -> Aside.Kind.TRANSFER_OUT;
                case STAFF_MEAL -> Aside.Kind.STAFF_MEAL;
            }, transfer.cents(), Money.NONE);
        }

        void credit(Credit credit) {
            switch (credit.step()) {
                case ASKED -> add(Aside.Kind.CREDIT_ASKED, credit.cents(), Money.NONE);
                case REFUSED -> add(Aside.Kind.CREDIT_REFUSED, credit.cents(), Money.NONE);
                case RECEIVED -> add(Aside.Kind.CREDIT_RECEIVED, credit.cents(), received(credit));
            }
        }

        private Money received(Credit credit) {
            Receipt receipt = credit.receipt().map(period.credited()::get).orElse(null);
            if (receipt != null && receipt.kind() != Receipt.Kind.FOOD) {
                return Money.NONE;
            }
            Answer answer = receipt == null ? Answer.UNCLASSIFIED : locality.count(receipt).answer();
            return switch (answer) {
                case LOCAL -> new Money(credit.cents(), 0, 0, 0, 0, 0, 0);
                case NOT_LOCAL -> new Money(0, credit.cents(), 0, 0, 0, 0, 0);
                case UNCLASSIFIED -> new Money(0, 0, credit.cents(), 0, 0, 0, 0);
            };
        }
    }
}
