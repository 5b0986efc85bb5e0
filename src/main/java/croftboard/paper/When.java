package croftboard.paper;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and hours as paper says them: hours of twelve with am and pm, noon and midnight by name. */
public final class When {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter PRINTED = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("h a", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.ENGLISH);

    private When() { }

    /** {@code Tue 17 Aug}. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** {@code Tuesday, August 17, 2027}. */
    public static String full(LocalDate date) {
        return FULL.format(date);
    }

    /** {@code noon}, {@code 5 pm}, {@code 5:30 pm}. */
    public static String clock(LocalTime time) {
        if (time.equals(LocalTime.NOON)) {
            return "noon";
        }
        return time.equals(LocalTime.MIDNIGHT) ? "midnight" : (time.getMinute() == 0 ? HOUR : CLOCK).format(time).toLowerCase(Locale.ENGLISH);
    }

    /** {@code Fri 13 Aug, noon}. */
    public static String moment(LocalDateTime time) {
        return day(time.toLocalDate()) + ", " + clock(time.toLocalTime());
    }

    /** {@code Thu 12 Aug 2027 06:05}, for a page's foot. */
    public static String printed(LocalDateTime time) {
        return PRINTED.format(time);
    }
}
