package croftboard.forecast;

import croftboard.measure.IsoWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How well each way of forecasting would have done: week after week, each knows only what was seen before that week.
 */
public final class Backtest {
    private static final double TAUGHT_WEIGHT = 0.3;

    /** A way of forecasting. */
    public enum Way {
        LEARNED("learned"), BOOK("the book's figures"), LAST_WEEK("same weekday, last week"),
        WEEKDAY_MEAN("same weekday, mean of all before"), SMOOTHED("same weekday, smoothed 0.3");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /**
     * @param days forecast and seen. @param soldOut of them. @param sold portions on all of them
     * @param off sum of what each way was off by, portions
     */
    public record Report(IsoWeek from, IsoWeek to, int days, int soldOut, long sold, Map<Way, Double> off) { }

    /**
     * Portions between what the forecast would have had sold of what was put out, and what did sell. Cutting both at what was
     * put out keeps a forecast that is too low from looking good only because days that ran out hide what was missed (Powell,
     * Least absolute deviations estimation for the censored regression model, 1984; from memory).
     */
    static double off(double forecast, Observation day) {
        return Math.abs(Math.min(forecast, Math.max(day.prepared(), day.sold())) - day.sold());
    }

    private final Prior prior;
    private final Learner learner;
    private final List<Observation> seen;

    public Backtest(Prior prior, DayCurve curve, List<Observation> observations) {
        this.prior = prior;
        this.learner = new Learner(prior, curve);
        this.seen = observations.stream().filter(o -> learner.whyNot(o).isEmpty()).sorted().toList();
    }

    /** Only days on which every way has something to go by, so that all are measured on the same. */
    public Report over(IsoWeek from, IsoWeek to) {
        Map<Way, Double> off = new EnumMap<>(Way.class);
        for (Way way : Way.values()) {
            off.put(way, 0.0);
        }
        int days = 0;
        int soldOut = 0;
        long sold = 0;
        for (IsoWeek week = from; week.compareTo(to) <= 0; week = week.plusWeeks(1)) {
            Learning learned = learner.learn(seen, week);
            for (Observation o : of(week)) {
                List<Observation> before = before(o, week);
                if (!before.isEmpty()) {
                    forecasts(o, week, before, learned).forEach((way, f) -> off.merge(way, off(f, o), Double::sum));
                    days++;
                    soldOut += o.soldOut() ? 1 : 0;
                    sold += o.sold();
                }
            }
        }
        return new Report(from, to, days, soldOut, sold, off);
    }

    private List<Observation> of(IsoWeek week) {
        return seen.stream().filter(o -> IsoWeek.of(o.date()).equals(week)).toList();
    }

    private List<Observation> before(Observation o, IsoWeek week) {
        return seen.stream().filter(b -> b.date().isBefore(week.monday()) && b.line().equals(o.line())
                && b.date().getDayOfWeek() == o.date().getDayOfWeek()).toList();
    }

    private Map<Way, Double> forecasts(Observation o, IsoWeek week, List<Observation> before, Learning learned) {
        double factor = prior.factor().applyAsDouble(week);
        Prior.Line line = prior.lines().get(o.line());
        List<Double> sales = new ArrayList<>();
        before.forEach(b -> sales.add((double) b.sold()));
        double[] figures = sales.stream().mapToDouble(s -> s).toArray();
        Map<Way, Double> all = new EnumMap<>(Way.class);
        all.put(Way.LEARNED, learned.mean(o.line(), o.date().getDayOfWeek(), o.dish())
                * (learned.season().isEmpty() ? factor : learned.season().get(week.week() - 1)));
        all.put(Way.BOOK, line.mean().get(o.date().getDayOfWeek()) * prior.dishes().get(o.dish()).draw() * factor);
        all.put(Way.LAST_WEEK, figures[figures.length - 1]);
        all.put(Way.WEEKDAY_MEAN, sales.stream().mapToDouble(s -> s).average().orElseThrow());
        all.put(Way.SMOOTHED, Smoothing.expected(figures, TAUGHT_WEIGHT)[figures.length]);
        return all;
    }
}
