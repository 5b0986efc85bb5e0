package croftboard.book;

import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;

/**
 * Figures that were learned from what sold, what was left and what ran out, as they stand in {@code seasons/learned.yaml}.
 *
 * @param version counts how often figures were learned, from 1
 * @param through last week that was learned from
 * @param fingerprint of the days learned from, hexadecimal
 * @param days that taught. @param ranOut of them
 * @param weeks factor of each week on every line, instead of the manager's; empty: the manager's hold
 */
public record Learned(int version, IsoWeek through, String fingerprint, int days, int ranOut, Map<String, Line> lines,
        Map<String, Dish> dishes, List<Seasons.DemandFactor> weeks) {

    /** @param cv coefficient of variation of one day. @param seen days that taught */
    public record Line(Ratio cv, int seen, Map<DayOfWeek, Day> days) { }

    /** @param portions mean of a dish of average draw, before the week's factor */
    public record Day(Ratio portions, int seen, int ranOut) { }

    /** @param draw how well it sells against the line's mean, 0.5 to 1.6 */
    public record Dish(Ratio draw, int seen, int ranOut) { }
}
