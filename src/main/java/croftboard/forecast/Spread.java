package croftboard.forecast;

import java.util.List;

/**
 * How much a line's days vary beyond the Poisson: variance = mean + spread x mean squared. Most likely by the days and the
 * manager's own figure together.
 */
final class Spread {
    private static final double LEAST = 1e-4;
    private static final double MOST = 4;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int HALVINGS = 26;

    private Spread() { }

    /** @param mean that is believed of the day */
    record Day(Evidence evidence, double mean) { }

    /** The manager's: cv squared less the Poisson's share at the line's average mean. */
    static double before(Prior.Line line) {
        double inverse = line.mean().values().stream().mapToDouble(m -> 1 / m).average().orElse(0);
        return Math.max(0.005, Math.min(MOST, line.cv() * line.cv() - inverse));
    }

    static double of(Prior.Line line, List<Day> days) {
        double center = StrictMath.log(before(line));
        double low = StrictMath.log(LEAST);
        double high = StrictMath.log(MOST);
        double a = high - GOLDEN * (high - low);
        double b = low + GOLDEN * (high - low);
        double atA = likely(a, center, days);
        double atB = likely(b, center, days);
        for (int i = 0; i < HALVINGS; i++) {
            if (atA >= atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - GOLDEN * (high - low);
                atA = likely(a, center, days);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + GOLDEN * (high - low);
                atB = likely(b, center, days);
            }
        }
        return StrictMath.exp((low + high) / 2);
    }

    private static double likely(double log, double center, List<Day> days) {
        double r = StrictMath.exp(-log);
        double off = (log - center) / Beliefs.SPREAD;
        double sum = -off * off / 2;
        for (Day day : days) {
            sum += day.evidence.log(day.mean, r);
        }
        return sum;
    }
}
