package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Learned;
import croftboard.book.ManagersFigure;
import croftboard.measure.Ratio;
import croftboard.plan.look.WeekForecast;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a week is expected to sell, and how likely each batch of the plan runs out. */
public final class ForecastScreen implements Screen {
    private static final double OFTEN = 0.4;
    private final Book book;
    private final Names names;
    private final WeekForecast forecast;
    private final Optional<String> plan;

    /** @param plan the plan's name, where there is one */
    public ForecastScreen(Book book, WeekForecast forecast, Optional<String> plan) {
        this.book = book;
        this.names = new Names(book);
        this.forecast = forecast;
        this.plan = plan;
    }

    @Override
    public String name() {
        return "forecast";
    }

    @Override
    public void print(Page page) {
        page.heading("Forecast of " + forecast.week());
        page.say(book.seasons().learned().map(this::learned).orElse("Nothing was learned yet: these are the book's own figures"
                + " (seasons/demand.yaml). croftboard learn all."));
        page.gap();
        lines(page);
        own(page);
        if (plan.isPresent()) {
            made(page);
        } else {
            page.gap();
            page.say("There is no plan of " + forecast.week() + " yet, so no portions to hold it against: croftboard plan " + forecast.week());
        }
    }

    private String learned(Learned l) {
        return "Learned through " + l.through() + " from " + l.days() + " days, " + l.ranOut() + " of which ran out (version " + l.version() + ").";
    }

    private void lines(Page page) {
        page.subheading("Expected portions of a dish of average draw, and below it the range of eight days in ten");
        List<LocalDate> dates = forecast.lines().stream().map(WeekForecast.Day::date).distinct().sorted().toList();
        List<TextTable.Column> columns = new ArrayList<>(List.of(TextTable.Column.words("line")));
        dates.forEach(d -> columns.add(TextTable.Column.figure(Dates.shortDay(d))));
        columns.add(TextTable.Column.figure("days seen"));
        TextTable table = new TextTable(columns.toArray(TextTable.Column[]::new));
        for (String line : forecast.lines().stream().map(WeekForecast.Day::line).distinct().toList()) {
            List<String> expected = new ArrayList<>(List.of(names.line(line)));
            List<String> range = new ArrayList<>(List.of(""));
            for (LocalDate date : dates) {
                Optional<WeekForecast.Day> day = forecast.lines().stream().filter(d -> d.line().equals(line) && d.date().equals(date)).findFirst();
                expected.add(day.map(d -> Math.round(d.expected()) + (d.own().isPresent() ? "*" : "")).orElse("-"));
                range.add(day.map(d -> d.low() + "-" + d.high()).orElse(""));
            }
            expected.add(Integer.toString(forecast.lines().stream().filter(d -> d.line().equals(line)).mapToInt(WeekForecast.Day::seen).sum()));
            range.add("");
            table.row(expected.toArray(String[]::new));
            table.row(range.toArray(String[]::new));
        }
        page.table(table);
    }

    private void own(Page page) {
        forecast.lines().stream().filter(d -> d.own().isPresent()).forEach(d -> {
            ManagersFigure own = d.own().get();
            page.item("* ", names.line(d.line()) + ", " + Dates.day(d.date()) + ": " + figure(own.portions()) + " by the manager, the forecast says "
                    + Math.round(d.forecast()) + ". \"" + own.reason() + "\"");
        });
    }

    public static String figure(Ratio of) {
        return of.signum() == 0 ? "0" : of.toDecimal(1).stripTrailingZeros().toPlainString();
    }

    private void made(Page page) {
        page.subheading("Portions of " + plan.orElseThrow() + " against what is expected");
        TextTable table = new TextTable(TextTable.Column.mark("served"), TextTable.Column.words("dish"),
                TextTable.Column.figure("made"), TextTable.Column.figure("expected"), TextTable.Column.figure("range"),
                TextTable.Column.figure("runs out"), TextTable.Column.figure("seen"));
        for (WeekForecast.Made m : forecast.made()) {
            table.row(served(m), names.recipe(m.dish()), Integer.toString(m.planned()), Long.toString(Math.round(m.expected())),
                    m.low() + "-" + m.high(), chance(m.runsOut()), Integer.toString(m.seen()));
        }
        page.table(table);
        long often = forecast.made().stream().filter(m -> m.runsOut() >= OFTEN).count();
        page.gap();
        page.say("Seen: days of the dish behind its draw. Runs out: the chance that more are asked for than are made. " + (often == 0 ? "None is 40 % or more."
                : often + (often == 1 ? " is" : " are") + " 40 % or more: where a portion left over costs nearly as much as one missed, that is right."));
    }

    private static String served(WeekForecast.Made m) {
        return Dates.shortDay(m.first()) + (m.last().equals(m.first()) ? "" : " - " + Dates.shortDay(m.last()));
    }

    private static String chance(double of) {
        long percent = Math.round(100 * of);
        return percent == 0 ? "under 1 %" : percent >= 100 ? "over 99 %" : percent + " %";
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("kind", "line", "dish", "first", "last", "expected", "low", "high", "made", "runs_out", "own", "reason", "seen");
        forecast.lines().forEach(d -> rows.add("line", d.line(), "", d.date(), d.date(), decimal(d.expected()), d.low(), d.high(), "", "",
                d.own().map(o -> figure(o.portions())).orElse(""), d.own().map(ManagersFigure::reason).orElse(""), d.seen()));
        forecast.made().forEach(m -> rows.add("dish", m.line(), m.dish(), m.first(), m.last(), decimal(m.expected()), m.low(), m.high(), m.planned(),
                String.format(Locale.ROOT, "%.3f", m.runsOut()), "", "", m.seen()));
        return rows;
    }

    private static String decimal(double of) {
        return String.format(Locale.ROOT, "%.1f", of);
    }
}
