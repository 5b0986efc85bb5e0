package croftboard.book;

import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Who sells to the kitchen.
 *
 * @param minimum least money of an order on one delivery; zero when none
 * @param fee per delivery
 * @param priorities crops for which this grower comes first, best first
 */
public record Vendor(String id, String name, Kind kind, Place place, List<Delivery> deliveries, Cents minimum,
        Cents fee, Optional<Span> mayBuy, List<Offer> offers, List<Commitment> commitments, List<String> priorities,
        Ordering ordering) {

    /** A vendor of whom no more is known than what it sells. */
    public Vendor(String id, String name, Kind kind, Place place, List<Delivery> deliveries, Cents minimum, Cents fee,
            Optional<Span> mayBuy, List<Offer> offers, List<Commitment> commitments, List<String> priorities) {
        this(id, name, kind, place, deliveries, minimum, fee, mayBuy, offers, commitments, priorities, Ordering.NONE);
    }

    public enum Kind { GROWER, PROCESSOR, DISTRIBUTOR }

    /**
     * How orders reach the vendor.
     *
     * @param customer the kitchen's number with this vendor
     * @param note printed on every order to this vendor
     */
    public record Ordering(Contact contact, Optional<String> customer, Optional<String> note) {
        public static final Ordering NONE = new Ordering(Contact.NONE, Optional.empty(), Optional.empty());
    }

    /** Hours of a day. @param to after {@code from} */
    public record Window(LocalTime from, LocalTime to) { }

    /** @param from, to both included */
    public record Span(LocalDate from, LocalDate to) {
        public boolean holds(LocalDate date) {
            return !date.isBefore(from) && !date.isAfter(to);
        }
    }

    /**
     * @param cutOffDay the last such day before the delivery (never the delivery day itself)
     * @param window hours of the day in which it comes; empty: not agreed
     */
    public record Delivery(DayOfWeek day, DayOfWeek cutOffDay, LocalTime cutOffTime, Optional<Window> window) {
        public Delivery(DayOfWeek day, DayOfWeek cutOffDay, LocalTime cutOffTime) {
            this(day, cutOffDay, cutOffTime, Optional.empty());
        }

        /** The same delivery with other hours. */
        public Delivery within(Optional<Window> hours) {
            return new Delivery(day, cutOffDay, cutOffTime, hours);
        }

        /** The local date and time after which no order is taken for the delivery of {@code date}. */
        public java.time.LocalDateTime cutOffFor(LocalDate date) {
            int back = Math.floorMod(day.getValue() - cutOffDay.getValue(), 7);
            return date.minusDays(back == 0 ? 7 : back).atTime(cutOffTime);
        }
    }

    /**
     * One pack that the vendor sells.
     *
     * @param as the item as the vendor calls it
     * @param holds contents of one pack as purchased
     * @param breaks from so many packs on, all packs of the delivery cost this; ascending
     * @param on delivery days; empty: all of the vendor's
     * @param localPart mixed food only: share of its ingredients that is local
     * @param weeks when how many packs a delivery are expected
     * @param number of the article with the vendor
     * @param accept what the kitchen takes in its place; nothing else
     */
    public record Offer(String item, Optional<String> as, String pack, Amount holds, Cents price,
            List<Break> breaks, Set<DayOfWeek> on, Whence grownAt, Whence processedAt, Optional<Ratio> localPart,
            List<Expected> weeks, Optional<String> number, List<Accepted> accept) {
        public Offer(String item, Optional<String> as, String pack, Amount holds, Cents price, List<Break> breaks,
                Set<DayOfWeek> on, Whence grownAt, Whence processedAt, Optional<Ratio> localPart,
                List<Expected> weeks) {
            this(item, as, pack, holds, price, breaks, on, grownAt, processedAt, localPart, weeks, Optional.empty(),
                    List.of());
        }
    }

    /**
     * An acceptable substitution.
     *
     * @param say the goods, in words that the vendor knows
     * @param atMost packs; empty: as many as were ordered
     * @param price a pack at most; empty: the price of what was ordered
     */
    public record Accepted(String say, Optional<Integer> atMost, Optional<Cents> price) { }

    public record Break(int packs, Cents price) { }

    /** @param packs a delivery */
    public record Expected(WeekRange weeks, int packs, Confidence confidence) { }

    public enum Confidence { SURE, LIKELY, HOPE }

    /** @param packs a week */
    public record Commitment(String item, String pack, WeekRange weeks, int packs) { }

    /** Where food was grown or processed. */
    public sealed interface Whence {
        /** At the vendor itself. */
        record Here() implements Whence { }

        /** At another vendor of the book. */
        record AtVendor(String vendor) implements Whence { }

        record At(Place place) implements Whence { }

        /** Raw food: not processed. */
        record Nowhere() implements Whence { }

        record Unknown() implements Whence { }
    }
}
