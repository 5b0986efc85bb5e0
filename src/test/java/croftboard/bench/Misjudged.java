package croftboard.bench;

import static croftboard.bench.Figures.NONE;
import static croftboard.bench.Figures.dollars;
import static croftboard.bench.Figures.head;
import static croftboard.bench.Figures.median;
import static croftboard.bench.Figures.number;
import static croftboard.bench.Figures.percent;
import static croftboard.bench.Figures.row;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What menu searches think their menus worth, beside what the menus are worth with orders that keep every must. */
final class Misjudged {
    private Misjudged() { }

    static String measure(Request request) {
        StringBuilder text = new StringBuilder();
        for (int seconds : request.secondsOr("20", "5")) {
            text.append(seconds).append(" s a week, seed 1, money in dollars.\n\n")
                    .append(head("week", "searches", "menus tried a second by one search", "menus misjudged by, median",
                            "lowest", "highest", "median, % of value"));
            List<Double> shares = new ArrayList<>();
            for (WeekProblem week : weeks(request)) {
                Solved solved = Solved.week(week, seconds, 1);
                text.append(line(solved));
                if (!solved.misjudged().isEmpty()) {
                    shares.add(median(solved.misjudged()) / solved.value());
                }
            }
            text.append("\nMedian over the weeks: ").append(percent(median(shares))).append(" % of the value.\n");
        }
        return text.toString();
    }

    private static List<WeekProblem> weeks(Request request) {
        List<WeekProblem> weeks = new ArrayList<>(Demo.weeks(request.folder()));
        request.seedsOr("1-10", "1-2").forEach(seed -> weeks.add(RandomWeek.week(seed)));
        return request.quick() ? weeks.subList(weeks.size() - 3, weeks.size()) : weeks;
    }

    private static String line(Solved w) {
        List<Long> all = w.misjudged();
        boolean any = !all.isEmpty();
        return row(w.name(), Integer.toString(w.answer().searches().size()), number("%,.0f", w.triesPerSecond()),
                any ? dollars(median(all)) : NONE, any ? dollars(Collections.min(all)) : NONE,
                any ? dollars(Collections.max(all)) : NONE, any ? percent(median(all) / w.value()) : NONE);
    }
}
