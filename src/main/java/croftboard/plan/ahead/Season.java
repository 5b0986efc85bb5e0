package croftboard.plan.ahead;

import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * What a season asks of the growers, read out of weeks that are planned. Masses are milligrams as purchased, money cents.
 *
 * @param planned weeks that were looked at
 * @param open weeks of the span of which there is no plan
 * @param demands the most wanted crops first
 * @param promises worth making, the most valuable first
 */
public record Season(WeekSpan span, List<PlannedWeek> planned, List<IsoWeek> open, List<Demand> demands, List<Promise> promises,
        List<Gap> gaps, List<Freezing> freezing, List<Lack> lacks, List<Unused> unused) {

    /**
     * One crop.
     *
     * @param wanted by week
     * @param growers what each grower would bring of it, by week, the first in line first
     */
    public record Demand(String item, SortedMap<IsoWeek, Long> wanted, Map<String, SortedMap<IsoWeek, Long>> growers) {
        public long all() {
            return wanted.values().stream().mapToLong(x -> x).sum();
        }

        public long of(String grower) {
            return growers.get(grower).values().stream().mapToLong(x -> x).sum();
        }

        public long elsewhere() {
            return all() - growers.keySet().stream().mapToLong(this::of).sum();
        }
    }

    /**
     * A commitment that is worth proposing, in packs a week.
     *
     * @param already promised in the book, in the first of the weeks
     * @param price a pack, cents
     * @param worth cents that it saves in the mean against buying week by week, over all its weeks
     */
    public record Promise(String vendor, String item, String pack, IsoWeek from, IsoWeek to, int weeks, int floor, int packs, int ceiling,
            int already, long price, long worth) { }

    /** Weeks in which dishes want a crop that no grower counts on having. @param dishes that want it */
    public record Gap(String item, IsoWeek from, IsoWeek to, long mg, List<String> dishes) { }

    /**
     * Surplus that freezing would carry to dishes of later weeks.
     *
     * @param item the fresh crop
     * @param frozen its frozen form in the book
     * @param from weeks of the surplus, with {@code to}
     * @param mg as purchased, no more than the field leaves and the later dishes eat
     * @param frozenMg what lies in the freezer
     * @param minutes of hands
     * @param worth cents, after crop and hands; may be negative
     * @param dishes that eat it
     */
    public record Freezing(String item, String frozen, IsoWeek from, IsoWeek to, long mg, long frozenMg, long minutes, long worth,
            List<String> dishes) {
        /** Cubic feet, rounded up. Common practice, no source: about 35 pounds of bagged vegetables to a cubic foot. */
        public long cubicFeet() {
            return (long) Math.ceil(frozenMg / 453_592.37 / 35);
        }
    }

    /** Fewer dishes of a kind than its lines turn over within the gap. @param kind in words */
    public record Lack(String season, String kind, int have, int need) { }

    /** A crop that growers count on in a season and no dish of it uses. */
    public record Unused(String season, String item) { }
}
