package croftboard.plan.ask;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.change.Problems;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Random yields by the calendar's confidence, one draw for each vendor and item of a week. Common practice, no source: these
 * chances are a scenario to think with, not measured. What stands on a grower's own list of the week is as good as sure; what
 * is only hoped for is in no plan and is not drawn.
 *
 * <pre>
 * confidence                all of it   a part, evenly from 1/4 to 3/4   nothing
 * sure, from a distributor    99.6 %              0.2 %                  0.2 %
 * sure                          97 %                2 %                    1 %
 * likely                        85 %               11 %                    4 %
 * </pre>
 */
final class Yields {
    private static final double[] ALL = {99.6, 97, 85};
    private static final double[] PART = {.2, 2, 11};
    private static final long MIX = 0x9E3779B97F4A7C15L;
    private final WeekProblem problem;
    /** By {@code vendor/item}: its row in the table, the least sure one of its packs. */
    private final Map<String, Integer> rows = new TreeMap<>();

    Yields(Book book, WeekProblem problem) {
        this.problem = problem;
        for (WeekProblem.Offer o : problem.offers()) {
            int row = !o.onList() && likely(book, o) ? 2 : distributed(book, o) ? 0 : 1;
            rows.merge(key(o), row, Math::max);
        }
    }

    private String key(WeekProblem.Offer o) {
        return o.vendor() + "/" + problem.items().get(o.item()).id();
    }

    /** What a distributor is sure of is no crop of one field. */
    private static boolean distributed(Book book, WeekProblem.Offer o) {
        return book.vendors().containsKey(o.vendor()) && book.vendor(o.vendor()).kind() == Vendor.Kind.DISTRIBUTOR;
    }

    private boolean likely(Book book, WeekProblem.Offer o) {
        LocalDate date = problem.firstDay().plusDays(problem.deliveries().get(o.delivery()).day());
        return book.vendors().containsKey(o.vendor()) && book.vendor(o.vendor()).offers().stream()
                .filter(x -> x.item().equals(problem.items().get(o.item()).id()) && x.pack().equals(o.pack()))
                .flatMap(x -> x.weeks().stream()).anyMatch(w -> w.weeks().holds(IsoWeek.of(date))
                        && w.confidence() == Vendor.Confidence.LIKELY);
    }

    /** The share that comes, by {@code vendor/item}; the same for the same seed and run. */
    Map<String, Double> draw(long seed, int run) {
        Random g = new Random(seed * MIX + run * 31L * MIX + 7);
        g.nextLong();
        Map<String, Double> shares = new TreeMap<>();
        rows.forEach((key, row) -> shares.put(key, draw(g, ALL[row], PART[row])));
        return shares;
    }

    /** Two numbers are always taken, so that one draw never moves the next. */
    private static double draw(Random g, double all, double part) {
        double chance = g.nextDouble() * 100;
        double half = .25 + g.nextDouble() / 2;
        return chance < all ? 1 : chance < all + part ? half : 0;
    }

    /** The problem when of each {@code vendor/item} only that share of the packs comes; 1 where nothing is said. */
    WeekProblem with(Map<String, Double> shares) {
        List<WeekProblem.Offer> offers = new ArrayList<>();
        for (WeekProblem.Offer o : problem.offers()) {
            int most = (int) Math.floor(o.maxPacks() * shares.getOrDefault(key(o), 1.0) + 1e-9);
            offers.add(most == o.maxPacks() ? o : Problems.packs(o, Math.min(o.minPacks(), most), most));
        }
        return Problems.withSupply(problem, offers, problem.deliveries());
    }

    /** Nothing comes of any offer that is meant. */
    Map<String, Double> without(java.util.function.Predicate<WeekProblem.Offer> meant) {
        Map<String, Double> shares = new TreeMap<>();
        problem.offers().stream().filter(meant).forEach(o -> shares.put(key(o), 0.0));
        return shares;
    }
}
