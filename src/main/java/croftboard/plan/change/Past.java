package croftboard.plan.change;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;

/**
 * What is done at a moment. What was made or delivered on an earlier day is done; until noon what stands on today's list can
 * still be changed, from noon on it counts as made (common practice, no source).
 *
 * @param now in the kitchen's zone
 */
record Past(LocalDateTime now) {
    private static final LocalTime HALF_DAY = LocalTime.NOON;

    /** The first day on which anything can still be changed. */
    LocalDate firstOpenDay() {
        return now.toLocalTime().isBefore(HALF_DAY) ? now.toLocalDate() : now.toLocalDate().plusDays(1);
    }

    boolean day(LocalDate day) {
        return day.isBefore(firstOpenDay());
    }

    boolean cutOff(LocalDateTime cutOff) {
        return cutOff.isBefore(now);
    }
}
