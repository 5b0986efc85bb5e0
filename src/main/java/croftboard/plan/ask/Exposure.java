package croftboard.plan.ask;

import java.util.Arrays;
import java.util.List;

/**
 * What a week, or several, would come to if food failed, after a quick repair.
 *
 * @param weeks as they are called
 * @param planned without any failure, with orders made as in the failing weeks
 * @param vendors each failing alone, dearest first. @param crops each failing at all growers alone, dearest first
 * @param runs weeks with random yields, by number of the run
 * @param survival dishes that fell out at least once, those that survive least often first
 * @param backUps worth most first
 */
public record Exposure(List<String> weeks, long seed, Outcome planned, List<Single> vendors, List<Single> crops,
        List<Outcome> runs, List<Survival> survival, List<BackUp> backUps) {

    /**
     * @param margin value without the price of broken promises, cents
     * @param local money surely local, cents. @param food money of all orders, cents
     * @param broken price of broken promises, empty places among them, cents
     * @param dropped places whose dish could not be made
     */
    public record Outcome(long margin, long local, long food, long broken, int dropped) {
        public long value() {
            return margin - broken;
        }

        /** Of food money, in hundredths of a per cent. */
        public long share() {
            return food == 0 ? 0 : local * 10_000 / food;
        }

        Outcome plus(Outcome o) {
            return new Outcome(margin + o.margin, local + o.local, food + o.food, broken + o.broken, dropped + o.dropped);
        }
    }

    /** @param id of the vendor or item. @param lost dishes that could not be made */
    public record Single(String id, Outcome outcome, List<String> lost) { }

    /** @param made in so many of the runs, over all places where it is planned. @param planned so many times */
    public record Survival(String recipe, long made, long planned) { }

    /** What would help. */
    public enum Help { SECOND_GROWER, FROZEN_STOCK, ANOTHER_DISH }

    /**
     * @param of an item, or for {@code ANOTHER_DISH} the recipe that would have a stand-in
     * @param cents worth in the middle of all runs
     * @param hit in so many runs it would have been called on
     */
    public record BackUp(Help help, String of, long cents, int hit) { }

    /** Figures below which so many of a hundred runs lie. */
    public record Spread(long low, long lowQuarter, long middle, long highQuarter, long high, long mean) {
        static Spread of(long[] all) {
            long[] s = all.clone();
            Arrays.sort(s);
            return s.length == 0 ? new Spread(0, 0, 0, 0, 0, 0) : new Spread(at(s, 5), at(s, 25), at(s, 50), at(s, 75), at(s, 95),
                    Math.round(Arrays.stream(s).asDoubleStream().sum() / s.length));
        }

        private static long at(long[] sorted, int percent) {
            return sorted[Math.min(sorted.length - 1, sorted.length * percent / 100)];
        }
    }

    public Spread margins() {
        return Spread.of(runs.stream().mapToLong(Outcome::margin).toArray());
    }

    public Spread shares() {
        return Spread.of(runs.stream().mapToLong(Outcome::share).toArray());
    }

    public Spread broken() {
        return Spread.of(runs.stream().mapToLong(Outcome::broken).toArray());
    }
}
