package croftboard.bench;

import static croftboard.bench.Figures.NONE;
import static croftboard.bench.Figures.dollars;
import static croftboard.bench.Figures.head;
import static croftboard.bench.Figures.median;
import static croftboard.bench.Figures.number;
import static croftboard.bench.Figures.percent;
import static croftboard.bench.Figures.row;

import croftboard.need.RandomWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Random weeks, solved in several times: how far from what no plan can pass. */
final class Quality {
    private Quality() { }

    static String measure(Request request) {
        StringBuilder all = new StringBuilder();
        StringBuilder text = new StringBuilder("Median over the weeks.\n\n").append(head("s a week", "weeks", "value",
                "gap to what no menu passes", "% of value", "% of purchases", "widest, % of value",
                "gap to what no order passes", "% of value"));
        for (int seconds : request.secondsOr("5,20,60", "5")) {
            List<Solved> weeks = new ArrayList<>();
            for (int seed : request.seedsOr("1-20", "1-5")) {
                weeks.add(Solved.week(RandomWeek.week(seed), seconds, 1));
            }
            text.append(summary(seconds, weeks));
            all.append("\n").append(seconds).append(" s a week:\n\n").append(table(weeks));
        }
        return text.append(all).toString();
    }

    private static String summary(int seconds, List<Solved> weeks) {
        return row(Integer.toString(seconds), Integer.toString(weeks.size()),
                dollars(median(weeks.stream().map(Solved::value).toList())), dollars(median(values(weeks, Solved::gap))),
                percent(median(shares(weeks, Solved::gap))), percent(median(ofPurchases(weeks))),
                percent(shares(weeks, Solved::gap).stream().mapToDouble(x -> x).max().orElse(Double.NaN)),
                dollars(median(values(weeks, Solved::ordersGap))), percent(median(shares(weeks, Solved::ordersGap))));
    }

    /** One row a week, then medians. */
    static String table(List<Solved> weeks) {
        StringBuilder text = new StringBuilder(head("week", "slots", "value", "no menu passes", "gap", "% of value",
                "% of purchases", "no order of this menu passes", "gap", "% of value", "median packs an item",
                "broken promises"));
        for (Solved w : weeks) {
            text.append(row(w.name(), Integer.toString(w.problem().slots().size()), dollars(w.value()),
                    money(w.answer().bestAtAll()), money(w.gap()), share(w.gap(), w.value()),
                    share(w.gap(), w.account().purchases()), money(w.answer().bestForMenu()), money(w.ordersGap()),
                    share(w.ordersGap(), w.value()), number("%.1f", w.medianPacks()),
                    dollars(w.account().brokenCents())));
        }
        return text.append(medians(weeks)).toString();
    }

    private static String medians(List<Solved> weeks) {
        return row("median", "", dollars(median(weeks.stream().map(Solved::value).toList())), "",
                dollars(median(values(weeks, Solved::gap))), percent(median(shares(weeks, Solved::gap))),
                percent(median(ofPurchases(weeks))), "", dollars(median(values(weeks, Solved::ordersGap))),
                percent(median(shares(weeks, Solved::ordersGap))),
                number("%.1f", median(weeks.stream().map(Solved::medianPacks).toList())),
                dollars(median(weeks.stream().map(w -> w.account().brokenCents()).toList())));
    }

    static List<Long> values(List<Solved> weeks, Function<Solved, Optional<Long>> of) {
        return weeks.stream().map(of).flatMap(Optional::stream).toList();
    }

    static List<Double> shares(List<Solved> weeks, Function<Solved, Optional<Long>> of) {
        return weeks.stream().filter(w -> of.apply(w).isPresent())
                .map(w -> of.apply(w).orElseThrow() / (double) w.value()).toList();
    }

    private static List<Double> ofPurchases(List<Solved> weeks) {
        return weeks.stream().filter(w -> w.gap().isPresent())
                .map(w -> w.gap().orElseThrow() / (double) Math.max(1, w.account().purchases())).toList();
    }

    private static String money(Optional<Long> cents) {
        return cents.map(c -> dollars(c)).orElse(NONE);
    }

    private static String share(Optional<Long> cents, long of) {
        return cents.map(c -> percent(c / (double) Math.max(1, of))).orElse(NONE);
    }
}
