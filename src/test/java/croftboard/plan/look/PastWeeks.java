package croftboard.plan.look;

import croftboard.forecast.Demand;
import croftboard.ledger.BatchYield;
import croftboard.ledger.Booking;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.EntryList;
import croftboard.ledger.Ledger;
import croftboard.ledger.Left;
import croftboard.ledger.Origin;
import croftboard.ledger.Overriding;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.Waste;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/**
 * Invented past weeks of the small kitchen: a quarter more mains are asked for than its book says,
 * salads and the weeks of visitors are as it says.
 */
public final class PastWeeks {
    public static final IsoWeek FIRST = new IsoWeek(2027, 21);
    private static final List<DayOfWeek> DAYS = List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY,
            DayOfWeek.FRIDAY, DayOfWeek.SATURDAY);
    private static final Map<String, List<String>> DISHES = Map.of("hot-main-1", List.of("lentil-bake", "penne-bake"),
            "cold-salad-1", List.of("carrot-slaw", "chickpea-salad"));
    private static final Map<String, double[]> ASKED = Map.of("hot-main-1", new double[] {48, 50, 52, 55, 65, 57},
            "cold-salad-1", new double[] {18, 19, 20, 21, 25, 24});
    private final Random random = new Random(7);
    private final List<Entry> entries = new ArrayList<>();

    private PastWeeks() { }

    /** Production sheets and register of so many weeks from {@link #FIRST}. */
    public static List<Entry> of(int weeks) {
        PastWeeks past = new PastWeeks();
        for (int w = 0; w < weeks; w++) {
            for (int d = 0; d < DAYS.size(); d++) {
                for (String line : List.of("cold-salad-1", "hot-main-1")) {
                    past.day(FIRST.plusWeeks(w).day(DAYS.get(d)), line, DISHES.get(line).get((w + d) % 2),
                            ASKED.get(line)[d] * (FIRST.week() + w >= 30 ? 1.1 : 1));
                }
            }
        }
        return past.entries;
    }

    /** What came of the sample plan of 2027-W33: a sheet here and there, the register, waste, weighed batches, one receipt. */
    public static List<Entry> lookedAt() {
        List<Entry> all = new ArrayList<>();
        LocalDate monday = new IsoWeek(2027, 33).monday();
        sheet(all, monday, "lentil-bake", 40, 40, Optional.of(LocalTime.of(12, 45)));
        sheet(all, monday.plusDays(1), "penne-bake", 46, 39, Optional.empty());
        sheet(all, monday.plusDays(2), "lentil-bake", 48, 48, Optional.empty());
        sheet(all, monday.plusDays(5), "lentil-bake", 48, 43, Optional.empty());
        int[][] register = {{0, 40, 38_000}, {1, 39, 35_100}, {2, 48, 45_600}, {4, 53, 47_700}, {5, 43, 40_850}};
        for (int[] r : register) {
            all.add(sale(all.size() + 1, monday.plusDays(r[0]), OptionalInt.empty(), r[0] % 2 == 0 && r[0] < 4 || r[0] == 5 ? "lentil-bake"
                    : "penne-bake", r[1], r[2]));
        }
        int[] salads = {20, 22, 19};
        for (int d = 0; d < salads.length; d++) {
            all.add(sale(all.size() + 1, monday.plusDays(d), OptionalInt.empty(), "chickpea-salad", salads[d], 550L * salads[d]));
        }
        all.add(new Overriding(Draft.line(all.size() + 1), monday.plusDays(1), "hot-main-1", Optional.empty(), Optional.of(Quantity.of(50)),
                Quantity.of(40), "rain all day"));
        all.add(new Waste(Draft.line(all.size() + 1), monday.plusDays(3), Optional.of("chickpea-salad"), Optional.empty(), "chickpea salad",
                Quantity.of(13), 0, Waste.Reason.OVER_PRODUCTION, 2_600, ""));
        all.add(new Waste(Draft.line(all.size() + 1), monday.plusDays(2), Optional.of("penne-bake"), Optional.empty(), "penne",
                Quantity.of(7), 0, Waste.Reason.OVER_PRODUCTION, 0, ""));
        for (int b = 0; b < 3; b++) {
            all.add(new BatchYield(Draft.line(all.size() + 1), monday.plusDays(b), "house-marinara", Ratio.ONE, 7_000_000, 6_500_000 + 50_000 * b));
        }
        all.add(new BatchYield(Draft.line(all.size() + 1), monday, "soffritto", Ratio.ONE, 2_700_000, 2_700_000));
        all.add(new Receipt(Draft.line(all.size() + 1), monday, "hollow-brook", Optional.of("2027-W33/hollow-brook/0816"), Receipt.Kind.FOOD,
                "carrots", Optional.of("carrot"), Optional.of("25 lb sack"), Optional.of(Quantity.of(4)), Quantity.of(4), Quantity.ZERO,
                45_359_236, 2_150, 8_600, Optional.empty(), OptionalInt.empty(), Origin.UNKNOWN, ""));
        return all;
    }

    private static void sheet(List<Entry> into, LocalDate date, String dish, int putOut, int sold, Optional<LocalTime> ranOut) {
        into.add(new Left(Draft.line(into.size() + 1), date, "2027-W33@1", "", "hot-main-1", dish, putOut, Optional.of(Quantity.of(putOut)),
                Optional.of(Quantity.of(sold)), Optional.of(Quantity.of(putOut - sold)), ranOut, ""));
    }

    /** In memory. */
    public static Ledger ledger(List<Entry> entries) {
        return new EntryList(draft(entries).numbered(new Booking(1, LocalDateTime.of(2027, 8, 22, 20, 0), "manager", "test", "past", "x"), 1));
    }

    public static Draft draft(List<Entry> entries) {
        return new Draft(LocalDateTime.of(2027, 8, 15, 20, 0), "manager", "test", "past weeks", "past-" + entries.size(), entries);
    }

    private void day(LocalDate date, String line, String dish, double mean) {
        int asked = Demand.ofDay(mean, 0.25).quantile(random.nextDouble());
        int prepared = Math.max(1, (int) Math.round(mean * (1.0 + 0.1 * random.nextGaussian())));
        int sold = Math.min(asked, prepared);
        Optional<LocalTime> out = asked >= prepared && random.nextBoolean()
                ? Optional.of(LocalTime.of(11, 0).plusMinutes(30 * Math.round(16.0 * prepared / (asked + 1)))) : Optional.empty();
        entries.add(new Left(Draft.line(entries.size() + 1), date, "", "", line, dish, prepared, Optional.of(Quantity.of(prepared)),
                Optional.of(Quantity.of(sold)), Optional.of(Quantity.of(prepared - sold)), out, ""));
        for (int hour = 11; hour < 19; hour++) {
            int units = sold * (hour - 10) / 8 - sold * (hour - 11) / 8;
            if (units > 0) {
                entries.add(sale(entries.size() + 1, date, OptionalInt.of(hour), dish, units, 900L * units));
            }
        }
    }

    static Sale sale(int line, LocalDate date, OptionalInt hour, String dish, int units, long cents) {
        return new Sale(Draft.line(line), date, hour, "", dish, Optional.of(dish), true, Quantity.of(units), cents);
    }
}
