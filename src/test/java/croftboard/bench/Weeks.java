package croftboard.bench;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.book.file.BookReading;
import croftboard.measure.IsoWeek;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.MeasuredWeek;
import croftboard.plan.ProblemBuilder;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Weeks solved within a time, as two tables: how good the plans are, how well the search judged its menus. */
final class Weeks {
    private static final List<String> DEMO = List.of("2027-W33", "2027-W03", "2027-W16", "2027-W41");
    private static final int RANDOM = 10;
    private static final String NONE = "none";

    private Weeks() { }

    static String demo(Path folder, Duration time) {
        Book book = ((BookReading.Read) BookReader.read(folder)).book();
        List<MeasuredWeek> weeks = new ArrayList<>();
        for (String week : DEMO) {
            WeekProblem problem = ProblemBuilder.build(book, IsoWeek.parse(week).orElseThrow(), Map.of(),
                    Given.NOTHING, Optional.empty()).problem();
            weeks.add(MeasuredWeek.of(problem, time, 1));
        }
        return tables(weeks, time);
    }

    static String random(Duration time) {
        List<MeasuredWeek> weeks = new ArrayList<>();
        for (int seed = 1; seed <= RANDOM; seed++) {
            weeks.add(MeasuredWeek.of(RandomWeek.week(seed), time, 1));
        }
        return tables(weeks, time);
    }

    private static String tables(List<MeasuredWeek> weeks, Duration time) {
        StringBuilder text = new StringBuilder();
        text.append(time.toSeconds()).append(" s a week, seed 1, money in dollars.\n\n")
                .append(head("week", "slots", "value", "no menu passes", "gap", "% of value", "% of purchases",
                        "no order of this menu passes", "gap", "% of value", "median packs an item",
                        "broken promises"));
        weeks.forEach(w -> text.append(quality(w)));
        text.append(medians(weeks)).append("\n")
                .append(head("week", "menus tried a second by one search", "menus misjudged by, median", "lowest",
                        "highest", "median, % of value"));
        weeks.forEach(w -> text.append(judgement(w)));
        return text.toString();
    }

    private static String quality(MeasuredWeek w) {
        Optional<Long> all = w.bestAtAll();
        Optional<Long> one = w.bestForMenu();
        return row(w.name() + (w.complete() ? "" : " (not complete)"), Integer.toString(w.slots()),
                dollars(w.value()), all.map(Weeks::dollars).orElse(NONE), gap(w, all), percent(w, all, w.value()),
                percent(w, all, w.purchases()), one.map(Weeks::dollars).orElse(NONE), gap(w, one),
                percent(w, one, w.value()), number("%.1f", w.medianPacks()), dollars(w.broken()));
    }

    private static String medians(List<MeasuredWeek> weeks) {
        List<MeasuredWeek> all = weeks.stream().filter(w -> w.bestAtAll().isPresent()).toList();
        List<MeasuredWeek> one = weeks.stream().filter(w -> w.bestForMenu().isPresent()).toList();
        return row("median", "", dollars(median(weeks, MeasuredWeek::value)), "",
                dollars(median(all, w -> w.bestAtAll().orElseThrow() - w.value())),
                number("%.2f", median(all, w -> share(w, w.bestAtAll().orElseThrow(), w.value()))),
                number("%.2f", median(all, w -> share(w, w.bestAtAll().orElseThrow(), w.purchases()))), "",
                dollars(median(one, w -> w.bestForMenu().orElseThrow() - w.value())),
                number("%.2f", median(one, w -> share(w, w.bestForMenu().orElseThrow(), w.value()))),
                number("%.1f", median(weeks, MeasuredWeek::medianPacks)), dollars(median(weeks, MeasuredWeek::broken)));
    }

    private static String judgement(MeasuredWeek w) {
        boolean any = !w.misjudged().isEmpty();
        double median = MeasuredWeek.median(w.misjudged());
        return row(w.name(), number("%,.0f", w.triesPerSecond()), any ? dollars(median) : NONE,
                any ? dollars(java.util.Collections.min(w.misjudged())) : NONE,
                any ? dollars(java.util.Collections.max(w.misjudged())) : NONE,
                any ? number("%.2f", 100 * median / w.value()) : NONE);
    }

    private static double median(List<MeasuredWeek> weeks, ToDoubleFunction<MeasuredWeek> of) {
        return MeasuredWeek.median(weeks.stream().map(of::applyAsDouble).toList());
    }

    private static String gap(MeasuredWeek w, Optional<Long> bound) {
        return bound.map(b -> dollars(b - w.value())).orElse(NONE);
    }

    private static String percent(MeasuredWeek w, Optional<Long> bound, long of) {
        return bound.map(b -> number("%.2f", share(w, b, of))).orElse(NONE);
    }

    private static double share(MeasuredWeek w, long bound, long of) {
        return 100.0 * (bound - w.value()) / of;
    }

    private static String dollars(double cents) {
        return number("%,.2f", cents / 100);
    }

    private static String number(String form, double value) {
        return String.format(Locale.ROOT, form, value);
    }

    private static String head(String... cells) {
        return row(cells) + "|---" + "|---:".repeat(cells.length - 1) + "|\n";
    }

    static String row(String... cells) {
        return "| " + String.join(" | ", cells) + " |\n";
    }
}
