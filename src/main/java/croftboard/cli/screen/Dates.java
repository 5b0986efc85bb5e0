package croftboard.cli.screen;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and hours as people say them. */
final class Dates {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

    private Dates() { }

    /** {@code Mon 16 Aug}. */
    static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** {@code Mon 16}, where the month is plain. */
    static String shortDay(LocalDate date) {
        return SHORT.format(date);
    }

    /** {@code Mon 16 Aug 2027}. */
    static String full(LocalDate date) {
        return FULL.format(date);
    }

    /** {@code Fri 13 Aug 12:00}. */
    static String hour(LocalDateTime time) {
        return HOUR.format(time);
    }
}
