package croftboard.safety;

import java.time.LocalDate;
import java.util.Collection;

/**
 * Dates by the rule "at most seven days, the day of preparation being day 1" (Food Code 3-501.17), calendar days.
 * A mixed dish carries the earliest date of its parts; mixing or cooking on site never resets it.
 */
public final class UseBy {
    /** The most that a refrigerated ready-to-eat food may be held, day of preparation included. */
    public static final int DAYS_AT_MOST = 7;

    private UseBy() { }

    /** @param lifeDays the recipe's own life, day of making is day 1; never more than seven is granted */
    public static LocalDate of(LocalDate made, int lifeDays) {
        return made.plusDays(Math.min(lifeDays, DAYS_AT_MOST) - 1L);
    }

    /** The earlier of the dish's own date and those of its parts. */
    public static LocalDate carried(LocalDate own, Collection<LocalDate> parts) {
        return parts.stream().reduce(own, (a, b) -> a.isBefore(b) ? a : b);
    }

    /** An opened package: seven days from opening, never past the maker's own date. */
    public static LocalDate opened(LocalDate opened, LocalDate makersDate) {
        LocalDate seven = of(opened, DAYS_AT_MOST);
        return makersDate.isBefore(seven) ? makersDate : seven;
    }

    /**
     * Freezing stops the clock, it does not set it back: the day of thawing is the next day that counts.
     *
     * @param used days used before freezing, day of making included
     * @return before {@code thawed} when no day is left
     */
    public static LocalDate thawed(LocalDate thawed, int lifeDays, int used) {
        return of(thawed, lifeDays).minusDays(used);
    }
}
