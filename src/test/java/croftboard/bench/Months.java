package croftboard.bench;

import static croftboard.bench.Figures.dollars;
import static croftboard.bench.Figures.head;
import static croftboard.bench.Figures.median;
import static croftboard.bench.Figures.percent;
import static croftboard.bench.Figures.row;

import croftboard.need.RandomWeek;
import java.util.ArrayList;
import java.util.List;

/** Four random weeks planned as one: 216 slots. */
final class Months {
    private static final int WEEKS = 4;

    private Months() { }

    static String measure(Request request) {
        StringBuilder text = new StringBuilder("Money in dollars.\n");
        List<String> lines = new ArrayList<>();
        for (int seconds : request.secondsOr("60,180", "60")) {
            List<Solved> months = new ArrayList<>();
            for (int seed : request.seedsOr("1-5", "1")) {
                months.add(Solved.month(RandomWeek.weeks(seed, WEEKS), seconds, 1));
            }
            text.append("\n").append(seconds).append(" s a month:\n\n").append(Quality.table(months));
            lines.add(row(Integer.toString(seconds), dollars(median(months.stream().map(Solved::value).toList())),
                    percent(median(Quality.shares(months, Solved::gap))),
                    Long.toString(months.stream().filter(m -> m.answer().complete()).count()) + " of " + months.size()));
        }
        return text.append("\n").append(head("s a month", "value, median", "gap, % of value, median", "complete"))
                .append(String.join("", lines)).toString();
    }
}
