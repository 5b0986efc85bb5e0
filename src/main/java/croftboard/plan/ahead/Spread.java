package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.book.Vendor;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/**
 * How far a week's need of an item, and what a field brings, may fall from what is reckoned with: standard deviations as
 * parts of the mean.
 */
final class Spread {
    /**
     * Of what a grower brings, by how sure the grower is. Common practice, no source: a crop that is counted on comes within
     * a tenth or so, a likely one within a quarter, a hoped one within a half.
     */
    private static final Map<Vendor.Confidence, Double> YIELD = Map.of(Vendor.Confidence.SURE, 0.08, Vendor.Confidence.LIKELY, 0.20,
            Vendor.Confidence.HOPE, 0.40);
    /** Where a line's demand says nothing. */
    private static final double UNTOLD = 0.25;
    private final Book book;
    private final Map<String, double[]> byItem = new HashMap<>();

    Spread(Book book, WeekPlan plan, Purchased purchased) {
        this.book = book;
        for (WeekPlan.Served s : plan.menu()) {
            s.recipe().map(book.recipes()::get).ifPresent(r -> add(purchased, s, r));
        }
    }

    /** Runs are independent of each other: their variances add up. */
    private void add(Purchased purchased, WeekPlan.Served served, Recipe dish) {
        if (!dish.isDish() || dish.worthOnly().isPresent()) {
            return;
        }
        double batches = served.portions() / dish.portionsPerBatch().toDouble();
        double cv = cv(served);
        purchased.of(dish.id()).forEach((item, grams) -> {
            double need = batches * grams;
            double[] sums = byItem.computeIfAbsent(item, i -> new double[2]);
            sums[0] += need;
            sums[1] += need * cv * need * cv;
        });
    }

    /** Of all days of the run together; an event's heads are guaranteed. */
    private double cv(WeekPlan.Served served) {
        Seasons.LineDemand demand = book.seasons().demand().get(served.line());
        if (demand == null) {
            return book.kitchen().lines().stream().anyMatch(l -> l.id().equals(served.line())) ? UNTOLD : 0;
        }
        double mean = 0;
        double variance = 0;
        for (LocalDate day : served.days()) {
            double here = demand.mean().containsKey(day.getDayOfWeek()) ? demand.mean().get(day.getDayOfWeek()).toDouble() : 0;
            mean += here;
            variance += Math.max(here, Math.pow(here * demand.cv().toDouble(), 2));
        }
        return mean == 0 ? 0 : Math.sqrt(variance) / mean;
    }

    /** Of the week's need of an item; 0 when no dish of the week wants it. */
    double demand(String item) {
        double[] sums = byItem.get(item);
        return sums == null || sums[0] == 0 ? 0 : Math.sqrt(sums[1]) / sums[0];
    }

    /** @param packs sure, likely, hoped. Each kind falls as one. */
    static double fieldSpread(int[] packs) {
        double all = packs[0] + packs[1];
        return all == 0 ? 0 : Math.sqrt(Math.pow(packs[0] * YIELD.get(Vendor.Confidence.SURE), 2)
                + Math.pow(packs[1] * YIELD.get(Vendor.Confidence.LIKELY), 2)) / all;
    }

    static double of(Vendor.Confidence confidence) {
        return YIELD.get(confidence);
    }

    /** What comes at least, so many standard deviations down. */
    static double low(int[] packs, double deviations) {
        return (packs[0] + packs[1]) * Math.max(0, 1 - deviations * fieldSpread(packs));
    }
}
