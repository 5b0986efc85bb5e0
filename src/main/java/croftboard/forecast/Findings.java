package croftboard.forecast;

import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a fit says of lines, weekdays, dishes and the season, each figure with the days behind it. */
final class Findings {
    /** A year that has a week 53. */
    private static final int LONG_YEAR = 2026;
    private final Prior prior;
    private final List<Observation> seen;
    private final Fit fit;
    private final IsoWeek next;

    Findings(Prior prior, List<Observation> seen, Fit fit, IsoWeek next) {
        this.prior = prior;
        this.seen = seen;
        this.fit = fit;
        this.next = next;
    }

    Learning learning(List<Learning.Passed> passed) {
        Map<String, Learning.Line> lines = new TreeMap<>();
        prior.lines().forEach((id, line) -> lines.put(id, line(id, line)));
        Map<String, Learning.Dish> draws = new TreeMap<>();
        prior.dishes().forEach((id, dish) -> draws.put(id, dish(id, dish)));
        return new Learning(next, lines, draws, season(), odd(), List.copyOf(passed), seen.size(),
                (int) seen.stream().filter(Observation::soldOut).count());
    }

    private Learning.Line line(String id, Prior.Line line) {
        Map<DayOfWeek, Learning.Figure> days = new EnumMap<>(DayOfWeek.class);
        double inverse = 0;
        double doubt = 0;
        for (Map.Entry<DayOfWeek, Double> day : line.mean().entrySet()) {
            int[] next4 = fit.unknowns().next(id, day.getKey());
            double mean = day.getValue() * StrictMath.exp(fit.sumOf(next4));
            double error = Math.sqrt(fit.variance(next4));
            List<Observation> own = seen.stream().filter(o -> o.line().equals(id)
                    && o.date().getDayOfWeek() == day.getKey()).toList();
            days.put(day.getKey(), new Learning.Figure(mean, error, own.size(),
                    (int) own.stream().filter(Observation::soldOut).count()));
            inverse += 1 / mean;
            doubt += error * error;
        }
        int n = Math.max(1, days.size());
        int count = days.values().stream().mapToInt(Learning.Figure::seen).sum();
        double cv = Math.sqrt(fit.spread(id) + inverse / n + (count == 0 ? 0 : doubt / n));
        return new Learning.Line(count == 0 ? line.cv() : cv, days, count);
    }

    private Learning.Dish dish(String id, Prior.Dish dish) {
        int[] of = fit.unknowns().draw(id);
        List<Observation> own = seen.stream().filter(o -> o.dish().equals(id)).toList();
        return new Learning.Dish(dish.draw() * StrictMath.exp(fit.sumOf(of)), dish.draw(),
                Math.sqrt(fit.variance(of) + (own.isEmpty() ? fit.dishes() * fit.dishes() : 0)), own.size(),
                (int) own.stream().filter(Observation::soldOut).count());
    }

    private List<Double> season() {
        List<Double> season = new ArrayList<>();
        int[] of = fit.unknowns().seasonParts();
        for (int week = 1; fit.unknowns().hasSeason() && week <= 53; week++) {
            double[] waves = Unknowns.waves(week);
            double sum = 0;
            for (int h = 0; h < of.length; h++) {
                sum += waves[h] * fit.value(of[h]);
            }
            season.add(prior.factor().applyAsDouble(new IsoWeek(LONG_YEAR, week)) * StrictMath.exp(sum));
        }
        return List.copyOf(season);
    }

    private List<Learning.Odd> odd() {
        List<Learning.Odd> odd = new ArrayList<>();
        for (int i = 0; i < seen.size(); i++) {
            if (fit.isFar(i)) {
                odd.add(new Learning.Odd(seen.get(i), fit.mean(i)));
            }
        }
        odd.sort(Comparator.comparing(o -> o.day()));
        return List.copyOf(odd);
    }
}
