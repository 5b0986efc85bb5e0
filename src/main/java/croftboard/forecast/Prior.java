package croftboard.forecast;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * What the book says before anything has been seen: the manager's figures of each line, the stated draw of each dish and
 * what makes dishes kin, the manager's factor of each week.
 *
 * @param factor of a week on every line's mean, above 0
 */
public record Prior(Map<String, Line> lines, Map<String, Dish> dishes, ToDoubleFunction<IsoWeek> factor) {

    /** @param cv of one day, above 0. @param mean portions by weekday of a dish of draw 1, each above 0 */
    public record Line(double cv, Map<DayOfWeek, Double> mean) { }

    /** @param draw stated, above 0. @param main dishes of the same main ingredient are kin; so by method and cuisine */
    public record Dish(double draw, String main, String method, String cuisine) { }

    /** The figures that the manager wrote, not those learned since. */
    public static Prior of(Book book) {
        Map<String, Line> lines = new TreeMap<>();
        book.seasons().demand().forEach((id, d) -> lines.put(id, line(d)));
        Map<String, Dish> dishes = new TreeMap<>();
        for (Recipe recipe : book.recipes().values()) {
            recipe.sale().ifPresent(s -> dishes.put(recipe.id(),
                    new Dish(s.draw().toDouble(), s.main(), s.method(), s.cuisine())));
        }
        return new Prior(Collections.unmodifiableMap(lines), Collections.unmodifiableMap(dishes),
                w -> Math.max(0.01, book.seasons().demandFactorFor(w).toDouble()));
    }

    private static Line line(Seasons.LineDemand d) {
        Map<DayOfWeek, Double> mean = new EnumMap<>(DayOfWeek.class);
        d.mean().forEach((day, portions) -> {
            if (portions.signum() > 0) {
                mean.put(day, portions.toDouble());
            }
        });
        return new Line(Math.max(0.05, d.cv().toDouble()), Collections.unmodifiableMap(mean));
    }
}
