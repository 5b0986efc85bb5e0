package croftboard.bench;

import static croftboard.bench.Figures.dollars;
import static croftboard.bench.Figures.head;
import static croftboard.bench.Figures.median;
import static croftboard.bench.Figures.number;
import static croftboard.bench.Figures.row;

import croftboard.plan.Engine;
import croftboard.planted.PlantedWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import java.util.stream.IntStream;

/** Weeks and months whose best value is known, and how much of it is reached. */
final class Planted {
    private static final double WEEK_BAR = .995;
    private static final double MONTH_BAR = .99;
    private static final int WEEKS = 4;

    private Planted() { }

    static String measure(Request request) {
        StringBuilder text = new StringBuilder("Money in dollars. *Nearly tied*: one decoy in seven comes within a "
                + "hundredth of the planted dish's slot; *tied*: within a cent.\n");
        for (int seconds : request.secondsOr("20", "20")) {
            List<Integer> seeds = request.seedsOr("1-5", "1-2");
            part(text, "54 slots, nearly tied", seconds, seeds, s -> PlantedWeek.week(s, false), WEEK_BAR);
            part(text, "54 slots, tied", seconds, seeds, s -> PlantedWeek.week(s, true), WEEK_BAR);
        }
        for (int seconds : request.secondsOr("60", "60")) {
            List<Integer> seeds = request.seedsOr("1-5", "1");
            part(text, "216 slots, nearly tied", seconds, seeds, s -> PlantedWeek.weeks(s, WEEKS, false), MONTH_BAR);
        }
        return text.toString();
    }

    private static void part(StringBuilder text, String what, int seconds, List<Integer> seeds,
            LongFunction<PlantedWeek> make, double bar) {
        text.append("\n").append(what).append(", ").append(seconds).append(" s:\n\n").append(head("week", "known best",
                "reached", "% of it", "by menu searches alone, %", "slots with the planted dish", "no menu passes"));
        List<Double> shares = new ArrayList<>();
        for (int seed : seeds) {
            PlantedWeek week = make.apply(seed);
            Solved s = week.problem().slots().size() > 100 ? Solved.month(week.problem(), seconds, 1)
                    : Solved.week(week.problem(), seconds, 1);
            double share = s.answer().complete() ? s.value() / (double) week.cents() : 0;
            shares.add(share);
            text.append(row(s.name(), dollars(week.cents()), dollars(s.value()), number("%.3f", 100 * share),
                    alone(s.answer(), week), same(s.answer(), week) + " of " + week.menu().length,
                    s.answer().bestAtAll().map(b -> dollars(b)).orElse(Figures.NONE)));
        }
        double lowest = shares.stream().mapToDouble(x -> x).min().orElse(0);
        text.append("\nMedian ").append(number("%.3f", 100 * median(shares))).append(" %. Every one at least ")
                .append(number("%.1f", 100 * bar)).append(" %: ").append(lowest >= bar ? "yes" : "no")
                .append(" (lowest ").append(number("%.3f", 100 * lowest)).append(" %).\n");
    }

    /** Before the joint program with whole numbers was looked at. */
    private static String alone(Engine.Answer answer, PlantedWeek week) {
        OptionalLong best = answer.searches().stream().flatMap(s -> s.trueCents().stream()).mapToLong(c -> c).max();
        return best.isPresent() ? number("%.3f", 100.0 * best.getAsLong() / week.cents()) : Figures.NONE;
    }

    private static long same(Engine.Answer answer, PlantedWeek week) {
        return IntStream.range(0, week.menu().length).filter(s -> week.menu()[s] == answer.choice()[s]).count();
    }
}
