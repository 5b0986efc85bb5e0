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
            List<Solved> singles = new ArrayList<>();
            for (int seed : request.seedsOr("1-5", "1")) {
                months.add(Solved.month(RandomWeek.weeks(seed, WEEKS), seconds, 1));
                singles.add(Solved.oneByOne(RandomWeek.weeks(seed, WEEKS), seconds, 1));
            }
            text.append("\n").append(seconds).append(" s a month:\n\n").append(Quality.table(months)).append("\n").append(beside(months, singles));
            lines.add(row(Integer.toString(seconds), dollars(median(months.stream().map(Solved::value).toList())),
                    percent(median(Quality.shares(months, Solved::gap))),
                    Long.toString(months.stream().filter(m -> m.answer().complete()).count()) + " of " + months.size()));
        }
        return text.append("\n").append(head("s a month", "value, median", "gap, % of value, median", "complete"))
                .append(String.join("", lines)).toString();
    }

    /** Beside the same weeks one after the other. */
    private static String beside(List<Solved> months, List<Solved> singles) {
        StringBuilder text = new StringBuilder(head("month", "as one", "one week after the other", "more, %",
                "promises broken, as one", "one after the other", "orders below the best for the menu, %"));
        List<Double> more = new ArrayList<>();
        for (int n = 0; n < months.size(); n++) {
            Solved one = months.get(n);
            Solved other = singles.get(n);
            more.add(one.value() / (double) other.value() - 1);
            text.append(row(one.name(), dollars(one.value()), dollars(other.value()) + (other.answer().complete() ? "" : " (not complete)"),
                    percent(more.get(n)), Integer.toString(one.account().broken().size()),
                    Integer.toString(other.account().broken().size()),
                    percent(one.ordersGap().map(g -> g / (double) one.value()).orElse(Double.NaN))));
        }
        return text.append("\nMore in the median: ").append(percent(median(more))).append(" %.\n").toString();
    }
}
