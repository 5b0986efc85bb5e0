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
}
