package croftboard.forecast;

import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The parts that the logarithm of a day's mean is a sum of, numbered: how the whole shop goes week by week, how each line
 * goes (four weeks at a time), weekdays of the shop and of each line, dishes and their kin, and the season when more than a
 * year is known. The week after the last one seen stands among the weeks: its value is the forecast.
 */
final class Unknowns {
    private static final int BLOCK = 4;
    private static final int YEAR = 52;
    private static final double YEAR_WEEKS = 365.2425 / 7;
    private static final int WAVES = 4;

    private enum Kind { WEEK, LINE, DAY, LINE_DAY, DISH, MAIN, METHOD, CUISINE, SEASON }

    private record Part(Kind kind, String of, int at) { }

    private final Map<Part, Integer> number = new LinkedHashMap<>();
    private final IsoWeek first;
    private final int weeks;
    private final Prior prior;

    /** @param seen each of a line and a dish that the prior knows. @param next the week that is forecast, after all that were seen */
    Unknowns(Prior prior, IsoWeek first, IsoWeek next, List<Observation> seen) {
        this.prior = prior;
        this.first = first;
        this.weeks = week(next);
        for (int w = 0; w <= weeks; w++) {
            take(new Part(Kind.WEEK, "", w));
        }
        for (DayOfWeek day : DayOfWeek.values()) {
            take(new Part(Kind.DAY, "", day.getValue()));
        }
        for (String line : prior.lines().keySet()) {
            for (int b = 0; b <= weeks / BLOCK; b++) {
                take(new Part(Kind.LINE, line, b));
            }
            for (DayOfWeek day : DayOfWeek.values()) {
                take(new Part(Kind.LINE_DAY, line, day.getValue()));
            }
        }
        seen.stream().map(Observation::dish).distinct().sorted().forEach(dish -> dish(dish).forEach(this::take));
        for (int h = 0; hasSeason() && h < WAVES; h++) {
            take(new Part(Kind.SEASON, "", h));
        }
    }

    private void take(Part part) {
        number.putIfAbsent(part, number.size());
    }

    private List<Part> dish(String id) {
        Prior.Dish d = prior.dishes().get(id);
        return List.of(new Part(Kind.DISH, id, 0), new Part(Kind.MAIN, d.main(), 0), new Part(Kind.METHOD, d.method(), 0),
                new Part(Kind.CUISINE, d.cuisine(), 0));
    }

    private int[] numbers(List<Part> parts) {
        return parts.stream().filter(number::containsKey).mapToInt(number::get).toArray();
    }

    int size() {
        return number.size();
    }

    /** Weeks from the first that was seen. */
    int week(IsoWeek week) {
        return (int) ChronoUnit.WEEKS.between(first.monday(), week.monday());
    }

    private List<Part> lineParts(String line, DayOfWeek day, int week) {
        int block = Math.max(0, weeks / BLOCK - (weeks - week) / BLOCK);
        return List.of(new Part(Kind.WEEK, "", week), new Part(Kind.LINE, line, block),
                new Part(Kind.DAY, "", day.getValue()), new Part(Kind.LINE_DAY, line, day.getValue()));
    }

    /** Week, line, weekday, dish and kin of a day, without its season. */
    int[] parts(Observation seen) {
        List<Part> parts = new ArrayList<>(lineParts(seen.line(), seen.date().getDayOfWeek(), week(IsoWeek.of(seen.date()))));
        parts.addAll(dish(seen.dish()));
        return numbers(parts);
    }

    /** The line's average dish in the week that is forecast. */
    int[] next(String line, DayOfWeek day) {
        return numbers(lineParts(line, day, weeks));
    }

    /** Dish and kin alone; kin alone for a dish that was never sold. */
    int[] draw(String dish) {
        return numbers(dish(dish));
    }

    int[] dishAlone(String dish) {
        return numbers(List.of(new Part(Kind.DISH, dish, 0)));
    }

    /** A year and more was seen: what comes again can be told from what goes up or down. */
    boolean hasSeason() {
        return weeks > YEAR;
    }

    int[] seasonParts() {
        return numbers(IntStream.range(0, WAVES).mapToObj(h -> new Part(Kind.SEASON, "", h)).toList());
    }

    /** Two waves a year. @param isoWeek 1 to 53 */
    static double[] waves(int isoWeek) {
        double angle = 2 * Math.PI * isoWeek / YEAR_WEEKS;
        return new double[] {StrictMath.cos(angle), StrictMath.sin(angle), StrictMath.cos(2 * angle),
            StrictMath.sin(2 * angle)};
    }

    /** What is believed beforehand, as sentences. @param dishes how far dishes stand from their kin */
    void believe(Balance into, double dishes) {
        number.forEach((part, n) -> {
            switch (part.kind) {
                case DISH -> about(into, 0, dishes, n);
                case MAIN, METHOD, CUISINE -> about(into, 0, Beliefs.KIN, n);
                case DAY -> about(into, 0, Beliefs.WEEKDAY, n);
                case LINE_DAY -> about(into, 0, Beliefs.LINE_WEEKDAY, n);
                case SEASON -> about(into, 0, Beliefs.SEASON, n);
                case WEEK -> goesOn(into, part, n);
                case LINE -> lineGoesOn(into, part, n);
            }
        });
    }

    private void goesOn(Balance into, Part part, int n) {
        if (part.at == 0) {
            about(into, 0, Beliefs.WEEK_LEVEL, n);
        } else if (part.at == 1) {
            into.add(new int[] {n, at(part, 1)}, new double[] {1, -1}, 0, weight(2 * Beliefs.WEEK_STEP));
        } else {
            into.add(new int[] {n, at(part, 1), at(part, 2)}, new double[] {1, -1 - Beliefs.MOMENTUM, Beliefs.MOMENTUM}, 0,
                    weight(Beliefs.WEEK_STEP));
        }
    }

    private void lineGoesOn(Balance into, Part part, int n) {
        if (part.at == 0) {
            about(into, 0, Beliefs.LINE_LEVEL, n);
        } else {
            into.add(new int[] {n, at(part, 1)}, new double[] {1, -1}, 0, weight(Beliefs.LINE_STEP));
        }
    }

    private int at(Part part, int before) {
        return number.get(new Part(part.kind, part.of, part.at - before));
    }

    private static void about(Balance into, double value, double spread, int n) {
        into.add(new int[] {n}, new double[] {1}, value, weight(spread));
    }

    private static double weight(double spread) {
        return 1 / (spread * spread);
    }
}
