package croftboard.forecast;

import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;

/**
 * What was learned.
 *
 * @param next the week that the means are of, as if its factor were 1
 * @param dishes draw of every dish of the book, sold or not
 * @param season factor by ISO week, 1 to 53, instead of the manager's; empty when less than a year and a week was seen
 * @param odd days far from what was expected, weighed less
 * @param passed days that were set aside, with the reason
 */
public record Learning(IsoWeek next, Map<String, Line> lines, Map<String, Dish> dishes, List<Double> season, List<Odd> odd,
        List<Passed> passed, int seen, int soldOut) {

    /** @param cv of one day, of what is asked for and of not knowing its mean. @param seen days that taught */
    public record Line(double cv, Map<DayOfWeek, Figure> days, int seen) { }

    /** @param mean portions of a dish of draw 1. @param error standard error as a share of the mean */
    public record Figure(double mean, double error, int seen, int soldOut) { }

    /** @param stated in its recipe. @param error standard error as a share */
    public record Dish(double draw, double stated, double error, int seen, int soldOut) { }

    /** @param expected portions by what was learned from all days */
    public record Odd(Observation day, double expected) { }

    public record Passed(Observation day, String why) { }

    /** Mean of a dish on a line and weekday, before the week's factor; 0 where nothing is offered. */
    public double mean(String line, DayOfWeek day, String dish) {
        Line l = lines.get(line);
        Figure f = l == null ? null : l.days().get(day);
        return f == null ? 0 : f.mean() * (dishes.containsKey(dish) ? dishes.get(dish).draw() : 1);
    }
}
