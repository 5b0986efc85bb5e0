package croftboard.plan.look;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Learned;
import croftboard.book.ManagersFigure;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.forecast.Demand;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is expected of a week: of each line and day, and, where there is a plan, of each production.
 *
 * @param lines each line's days, a dish of average draw
 * @param made each production of the plan; empty when there is none
 */
public record WeekForecast(IsoWeek week, List<Day> lines, List<Made> made) {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    /**
     * @param expected mean portions. @param low, @param high eight days in ten lie between
     * @param forecast without the manager's own figure
     * @param seen days that stand behind it; 0: the book's figure
     */
    public record Day(String line, LocalDate date, double expected, int low, int high, double forecast, Optional<ManagersFigure> own,
            int seen, int ranOut) { }

    /**
     * @param first, @param last service days that it serves
     * @param runsOut chance that more are asked for than are made, 0 to 1
     * @param seen days of the dish that stand behind its draw
     */
    public record Made(String line, String dish, LocalDate first, LocalDate last, double expected, int low, int high, int planned,
            double runsOut, Ratio draw, int seen) { }

    public static WeekForecast of(Book book, IsoWeek week, Optional<WeekPlan> plan) {
        List<Day> lines = new ArrayList<>();
        for (Kitchen.ServiceLine line : book.kitchen().lines()) {
            for (DayOfWeek day : DayOfWeek.values()) {
                LocalDate date = week.day(day);
                if (book.kitchen().open().contains(day) && !book.seasons().closures().containsKey(date)
                        && book.seasons().demand().containsKey(line.id())) {
                    lines.add(day(book.seasons(), line.id(), date, week));
                }
            }
        }
        List<Made> made = new ArrayList<>();
        plan.ifPresent(p -> p.menu().forEach(slot -> made(book, p, slot, made)));
        return new WeekForecast(week, List.copyOf(lines), List.copyOf(made));
    }

    private static Day day(Seasons seasons, String line, LocalDate date, IsoWeek week) {
        DayOfWeek day = date.getDayOfWeek();
        Demand demand = demand(seasons, line, date, week, Ratio.ONE);
        Optional<Learned.Day> learned = seasons.learned().flatMap(l -> Optional.ofNullable(l.lines().get(line)))
                .flatMap(l -> Optional.ofNullable(l.days().get(day)));
        return new Day(line, date, demand.mean(), demand.quantile(LOW), demand.quantile(HIGH),
                seasons.forecast(line, day, week).toDouble(), seasons.override(line, day, week),
                learned.map(Learned.Day::seen).orElse(0), learned.map(Learned.Day::ranOut).orElse(0));
    }

    private static Demand demand(Seasons seasons, String line, LocalDate date, IsoWeek week, Ratio draw) {
        return Demand.ofDay(seasons.expected(line, date.getDayOfWeek(), week).times(draw).toDouble(), seasons.variation(line).toDouble());
    }

    private static void made(Book book, WeekPlan plan, WeekPlan.Served slot, List<Made> into) {
        Seasons seasons = book.seasons();
        Recipe dish = slot.recipe().map(book.recipes()::get).orElse(null);
        if (dish == null || !seasons.demand().containsKey(slot.line()) || slot.productions().isEmpty()) {
            return;
        }
        LocalDate next = slot.days().get(0);
        for (WeekPlan.Production p : slot.productions()) {
            LocalDate from = next;
            List<LocalDate> days = slot.days().stream().filter(d -> !d.isBefore(from) && !d.isAfter(p.lastServed())).toList();
            if (!days.isEmpty()) {
                Demand demand = days.stream().map(d -> demand(seasons, slot.line(), d, plan.week(), seasons.draw(dish)))
                        .reduce(Demand::plus).orElseThrow();
                into.add(new Made(slot.line(), dish.id(), days.get(0), p.lastServed(), demand.mean(), demand.quantile(LOW),
                        demand.quantile(HIGH), p.portions(), 1 - demand.atMost(p.portions()), seasons.draw(dish),
                        seasons.learned().flatMap(l -> Optional.ofNullable(l.dishes().get(dish.id()))).map(Learned.Dish::seen).orElse(0)));
            }
            next = p.lastServed().plusDays(1);
        }
    }
}
