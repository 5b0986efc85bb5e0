package croftboard.book;

import croftboard.measure.Cents;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The kitchen itself: days, lines, hands, equipment, promises and their prices.
 *
 * @param gapDays a dish is not served again within so many days, start to start
 * @param surplusWorth share of cost that surplus is worth when still good after the week, by storage
 * @param leftWorth share of price that a left portion still brings
 * @param goodwill share of price that running out costs beside the lost sale
 * @param wastePerPound hauling and composting of what is thrown away, cents a pound
 * @param newDishesPerMonth most dishes a calendar month that the cooks have not made before; empty: no limit
 */
public record Kitchen(String name, Place place, ZoneId zone, String paper, Set<DayOfWeek> open,
        Set<DayOfWeek> prepDays, List<ServiceLine> lines, int gapDays, List<Station> stations, List<Cook> cooks,
        Optional<Receiving> receiving, List<Equipment> equipment, Map<Ingredient.Storage, Ratio> surplusWorth,
        Ratio leftWorth, Ratio goodwill, Cents wastePerPound, Promises promises, Optional<LocalRules> local,
        String healthCodeEdition, String healthAuthority, Paperwork paperwork, Optional<Integer> newDishesPerMonth) {

    /** A kitchen that says nothing about new dishes. */
    public Kitchen(String name, Place place, ZoneId zone, String paper, Set<DayOfWeek> open, Set<DayOfWeek> prepDays,
            List<ServiceLine> lines, int gapDays, List<Station> stations, List<Cook> cooks,
            Optional<Receiving> receiving, List<Equipment> equipment, Map<Ingredient.Storage, Ratio> surplusWorth,
            Ratio leftWorth, Ratio goodwill, Cents wastePerPound, Promises promises, Optional<LocalRules> local,
            String healthCodeEdition, String healthAuthority, Paperwork paperwork) {
        this(name, place, zone, paper, open, prepDays, lines, gapDays, stations, cooks, receiving, equipment,
                surplusWorth, leftWorth, goodwill, wastePerPound, promises, local, healthCodeEdition, healthAuthority,
                paperwork, Optional.empty());
    }

    /** A kitchen that says nothing about its paperwork. */
    public Kitchen(String name, Place place, ZoneId zone, String paper, Set<DayOfWeek> open, Set<DayOfWeek> prepDays,
            List<ServiceLine> lines, int gapDays, List<Station> stations, List<Cook> cooks,
            Optional<Receiving> receiving, List<Equipment> equipment, Map<Ingredient.Storage, Ratio> surplusWorth,
            Ratio leftWorth, Ratio goodwill, Cents wastePerPound, Promises promises, Optional<LocalRules> local,
            String healthCodeEdition, String healthAuthority) {
        this(name, place, zone, paper, open, prepDays, lines, gapDays, stations, cooks, receiving, equipment,
                surplusWorth, leftWorth, goodwill, wastePerPound, promises, local, healthCodeEdition, healthAuthority,
                Paperwork.NONE);
    }

    /**
     * What paper needs beside the work itself.
     *
     * @param orderNote printed on every order to every vendor
     * @param labels the label sheets in use
     * @param packed lines whose dishes are packed ahead and labelled
     * @param thawDays in the cold for food that was frozen here
     */
    public record Paperwork(Contact contact, Optional<String> orderNote, Optional<LabelStock> labels, Set<String> packed,
            int thawDays) {
        /** Where the book says nothing of thawing. */
        public static final int THAW_DAYS = 1;
        public static final Paperwork NONE =
                new Paperwork(Contact.NONE, Optional.empty(), Optional.empty(), Set.of(), THAW_DAYS);

        public Paperwork(Contact contact, Optional<String> orderNote, Optional<LabelStock> labels, Set<String> packed) {
            this(contact, orderNote, labels, packed, THAW_DAYS);
        }

        public Paperwork(Contact contact, Optional<String> orderNote, Optional<LabelStock> labels) {
            this(contact, orderNote, labels, Set.of());
        }
    }

    /**
     * One place in the offer that always holds one dish.
     *
     * @param runDays service days of one dish: runs follow each other through the open days of the week
     * @param standing always this dish: no gap, no variety rule
     */
    public record ServiceLine(String id, String name, String course, int runDays, Optional<String> standing) { }

    /** @param overtimeLimitMinutes a day; 0: none. @param overtimePerHour cents an hour */
    public record Station(String id, String name, int overtimeLimitMinutes, Cents overtimePerHour) { }

    /** @param minutes by day and station id */
    public record Cook(String id, String name, Map<DayOfWeek, Map<String, Integer>> minutes) { }

    /** @param station one that no recipe step uses */
    public record Receiving(String station, int minutesPerDelivery) { }

    /**
     * @param perDay units a day; empty when limited by the week
     * @param perWeek units a week; empty when limited by the day
     * @param held taken from the day of making to the last day of service
     * @param atOnce units that one load of a making can take; empty: not said
     */
    public record Equipment(String id, String name, String unit, Optional<Integer> perDay,
            Optional<Integer> perWeek, boolean held, Optional<Integer> atOnce) {

        /** Equipment of which no more is said than what it does in a day or a week. */
        public Equipment(String id, String name, String unit, Optional<Integer> perDay, Optional<Integer> perWeek,
                boolean held) {
            this(id, name, unit, perDay, perWeek, held, Optional.empty());
        }
    }

    /** Regular minutes of all cooks at a station on a day. */
    public int handsMinutes(String station, DayOfWeek day) {
        return cooks.stream().mapToInt(c -> c.minutes().getOrDefault(day, Map.of()).getOrDefault(station, 0)).sum();
    }
}
