package croftboard.plan.look;

import croftboard.forecast.Demand;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.Left;
import croftboard.ledger.Quantity;
import croftboard.ledger.Sale;
import croftboard.measure.IsoWeek;
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
