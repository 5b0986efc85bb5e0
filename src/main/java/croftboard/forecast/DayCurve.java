package croftboard.forecast;

import java.time.LocalTime;
import java.util.Map;

/** Which share of a day's asking has come by a given time: it says how much a day that ran out at one o'clock still missed. */
public final class DayCurve {
    private static final int HOURS = 24;
    private static final double MINUTES = 60;
    private final double[] upTo = new double[HOURS + 1];

    private DayCurve(double[] weights) {
        double sum = 0;
        for (int h = 0; h < HOURS; h++) {
            sum += weights[h];
            upTo[h + 1] = sum;
        }
        for (int h = 0; h <= HOURS; h++) {
            upTo[h] /= sum;
        }
    }

    /** People come evenly from opening to closing. @throws IllegalArgumentException when it closes before it opens */
    public static DayCurve even(LocalTime opens, LocalTime closes) {
        if (!opens.isBefore(closes)) {
            throw new IllegalArgumentException("open from " + opens + " to " + closes);
        }
        double[] weights = new double[HOURS];
        for (int h = 0; h < HOURS; h++) {
            double from = Math.max(h, opens.toSecondOfDay() / 3600.0);
            weights[h] = Math.max(0, Math.min(h + 1, closes.toSecondOfDay() / 3600.0) - from);
        }
        return new DayCurve(weights);
    }

    /**
     * As the register saw it on days that did not run out, leaning on another curve as if it had been seen for so many
     * portions.
     *
     * @param sold portions by hour of the day, 0 to 23
     */
    public static DayCurve seen(Map<Integer, Long> sold, DayCurve before, double portions) {
        double[] weights = new double[HOURS];
        for (int h = 0; h < HOURS; h++) {
            weights[h] = sold.getOrDefault(h, 0L) + portions * (before.upTo[h + 1] - before.upTo[h]);
        }
        return new DayCurve(weights);
    }

    /** Share of the day's demand that has come by then, 0 to 1. */
    public double by(LocalTime time) {
        int hour = time.getHour();
        double part = time.getMinute() / MINUTES;
        return upTo[hour] + part * (upTo[hour + 1] - upTo[hour]);
    }
}
