package croftboard.forecast;

import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/**
 * A kitchen whose demand is known, because it was made up: lines with their weekdays, a season, a drift, dishes that draw
 * more or less, people who come by the day's curve. It cooks so that about three days in ten run out, and its cooks write
 * the time down on seven of ten of those, to the half hour. Its book knows none of this: levels are off by a fifth,
 * weekdays flat, draws all 1, no season.
 */
final class SimulatedKitchen {
    static final IsoWeek FIRST = new IsoWeek(2026, 1);
    private static final int DISHES = 30;
    private static final double[] LUNCH_AND_SUPPER = {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 8, 20, 16, 7, 4, 5, 10, 14, 8, 2, 0, 0, 0};
    private final Random random;
    private final Map<String, Double> level = new TreeMap<>();
    private final Map<String, Map<DayOfWeek, Double>> weekday = new TreeMap<>();
    private final Map<String, Double> beyond = new TreeMap<>();
    private final Map<String, Double> draw = new TreeMap<>();
    private final Map<String, Prior.Dish> dishes = new TreeMap<>();
    private final Map<Integer, Long> soldByHour = new HashMap<>();
    private final double wave;
    private final double turn;
    private final double drift;
    private final double runsOut;
    final List<Observation> seen = new ArrayList<>();

    SimulatedKitchen(long seed, int weeks, double runsOut) {
        this(seed, weeks, runsOut, 4 + new Random(seed).nextInt(7));
    }

    SimulatedKitchen(long seed, int weeks, double runsOut, int lines) {
        this.random = new Random(seed);
        this.runsOut = runsOut;
        wave = 0.05 + 0.15 * random.nextDouble();
        turn = 2 * Math.PI * random.nextDouble();
        drift = 0.1 * random.nextGaussian() / 52;
        Map<DayOfWeek, Double> shop = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : days()) {
            shop.put(day, 0.15 * random.nextGaussian());
        }
        for (int l = 0; l < lines; l++) {
            String line = "line-" + l;
            level.put(line, 15 * Math.exp(random.nextDouble() * 1.4));
            beyond.put(line, Math.pow(0.12 + 0.15 * random.nextDouble(), 2));
            Map<DayOfWeek, Double> own = new EnumMap<>(DayOfWeek.class);
            shop.forEach((day, log) -> own.put(day, Math.exp(log + 0.06 * random.nextGaussian())));
            weekday.put(line, own);
        }
        double[] mains = random.doubles(8).map(d -> 0.12 * (d - 0.5)).toArray();
        for (int d = 0; d < DISHES; d++) {
            int main = random.nextInt(mains.length);
            draw.put("dish-" + d, Math.exp(mains[main] + 0.1 * random.nextGaussian()));
            dishes.put("dish-" + d, new Prior.Dish(1, "main-" + main, "method-" + random.nextInt(5), "cuisine-" + random.nextInt(6)));
        }
        for (int w = 0; w < weeks; w++) {
            week(w);
        }
    }

    static List<DayOfWeek> days() {
        return Arrays.stream(DayOfWeek.values()).filter(d -> d != DayOfWeek.SUNDAY).toList();
    }

    private void week(int w) {
        for (String line : level.keySet()) {
            for (DayOfWeek day : days()) {
                String dish = dish();
                double mean = mean(line, day, w) * draw.get(dish);
                int wanted = drawn(mean, beyond.get(line));
                Demand known = demand(line, day, w, dish);
                int prepared = Math.max(1, (int) Math.round(known.quantile(1 - runsOut) * Math.exp(0.08 * random.nextGaussian())));
                seen.add(observed(FIRST.plusWeeks(w).day(day), line, dish, prepared, wanted));
            }
        }
    }

    private Observation observed(LocalDate date, String line, String dish, int prepared, int wanted) {
        double[] came = random.doubles(wanted).sorted().toArray();
        if (wanted < prepared) {
            Arrays.stream(came).forEach(c -> soldByHour.merge((int) hour(c), 1L, Long::sum));
            return new Observation(date, line, dish, prepared, wanted, Optional.empty(), Optional.empty());
        }
        Optional<LocalTime> ranOut = Optional.empty();
        if (random.nextDouble() < 0.7) {
            long halves = Math.round(hour(came[prepared - 1]) * 2);
            ranOut = Optional.of(LocalTime.of((int) (halves / 2), (int) (halves % 2 * 30)));
        }
        return new Observation(date, line, dish, prepared, prepared, ranOut, Optional.empty());
    }

    /** Hour of the day by which that share of the day's people has come. */
    private static double hour(double share) {
        double sum = Arrays.stream(LUNCH_AND_SUPPER).sum();
        double before = 0;
        int h = 0;
        while (before + LUNCH_AND_SUPPER[h] / sum < share) {
            before += LUNCH_AND_SUPPER[h++] / sum;
        }
        return h + (share - before) / (LUNCH_AND_SUPPER[h] / sum);
    }

    private int drawn(double mean, double spread) {
        double chance = random.nextDouble();
        return Demand.ofDay(mean, Math.sqrt(spread + 1 / mean)).quantile(chance);
    }

    /** True mean of a dish of draw 1. @param week from 0 */
    double mean(String line, DayOfWeek day, int week) {
        return level.get(line) * weekday.get(line).get(day) * Math.exp(wave * Math.cos(turn + 2 * Math.PI * week / 52) + drift * week);
    }

    double draw(String dish) {
        return draw.get(dish);
    }

    Demand demand(String line, DayOfWeek day, int week, String dish) {
        double mean = mean(line, day, week) * draw.get(dish);
        return Demand.ofDay(mean, Math.sqrt(beyond.get(line) + 1 / mean));
    }

    String dish() {
        return "dish-" + random.nextInt(DISHES);
    }

    List<String> lines() {
        return List.copyOf(level.keySet());
    }

    double averageDraw() {
        return draw.values().stream().mapToDouble(d -> d).average().orElseThrow();
    }

    Prior prior() {
        Map<String, Prior.Line> lines = new TreeMap<>();
        Random guess = new Random(level.size() * 31L + seen.size());
        level.forEach((line, l) -> {
            Map<DayOfWeek, Double> flat = new EnumMap<>(DayOfWeek.class);
            double guessed = l * Math.exp(0.2 * guess.nextGaussian());
            days().forEach(day -> flat.put(day, guessed));
            lines.put(line, new Prior.Line(0.26, flat));
        });
        return new Prior(lines, dishes, week -> 1);
    }

    /** As the register shows it on days that did not run out. */
    DayCurve curve() {
        return DayCurve.seen(soldByHour, DayCurve.even(LocalTime.of(10, 0), LocalTime.of(21, 0)), 200);
    }
}
