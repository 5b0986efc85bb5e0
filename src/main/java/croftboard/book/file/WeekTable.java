package croftboard.book.file;

import croftboard.measure.WeekRange;
import java.util.Optional;

/** The weeks of a year, each taken by the first range that holds it. */
final class WeekTable {
    private final WeekRange[] takenBy = new WeekRange[54];

    /** Takes the free weeks of the range; gives the range that had one of them before, if any. */
    Optional<WeekRange> take(WeekRange range) {
        WeekRange other = null;
        for (int week = 1; week <= 53; week++) {
            if (range.holds(week)) {
                if (takenBy[week] == null) {
                    takenBy[week] = range;
                } else if (other == null) {
                    other = takenBy[week];
                }
            }
        }
        return Optional.ofNullable(other);
    }

    /** The weeks of the range that nobody has taken, {@code W36..W38}; an empty text when there is none. */
    String missingOf(WeekRange range) {
        long missing = 0;
        for (int week = 1; week <= 53; week++) {
            missing |= range.holds(week) && takenBy[week] == null ? 1L << week : 0;
        }
        return Supply.weeksOf(missing);
    }
}
