package croftboard.measure;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A calendar week by ISO 8601: Monday to Sunday, week 1 holds 4 January.
 *
 * @param year week-based year, 1900 to 2199
 * @param week 1 to 52 or 53
 */
public record IsoWeek(int year, int week) implements Comparable<IsoWeek> {
    private static final Pattern FORM = Pattern.compile("(\\d{4})-W(\\d{2})");

    /** @throws IllegalArgumentException when the year has no such week */
    public IsoWeek {
        if (year < 1900 || year > 2199 || week < 1 || week > weeksIn(year)) {
            throw new IllegalArgumentException("no such week: [" + year + "-W" + week + "]");
        }
    }

    /** Reads {@code 2027-W33}; empty when it is no week of that year. */
    public static Optional<IsoWeek> parse(String text) {
        Matcher m = FORM.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        int year = Integer.parseInt(m.group(1));
        int week = Integer.parseInt(m.group(2));
        boolean there = year >= 1900 && year <= 2199 && week >= 1 && week <= weeksIn(year);
        return there ? Optional.of(new IsoWeek(year, week)) : Optional.empty();
    }

    public static IsoWeek of(LocalDate date) {
        return new IsoWeek(date.get(IsoFields.WEEK_BASED_YEAR), date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }

    /** 52 or 53: the week of 28 December is always the last one. */
    public static int weeksIn(int year) {
        return LocalDate.of(year, 12, 28).get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }

    public LocalDate monday() {
        return LocalDate.of(year, 1, 4).with(DayOfWeek.MONDAY).plusWeeks(week - 1L);
    }

    public LocalDate day(DayOfWeek day) {
        return monday().plusDays(day.getValue() - 1L);
    }

    public IsoWeek plusWeeks(int weeks) {
        return of(monday().plusWeeks(weeks));
    }

    @Override
    public int compareTo(IsoWeek other) {
        return year != other.year ? Integer.compare(year, other.year) : Integer.compare(week, other.week);
    }

    /** {@code 2027-W33}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%04d-W%02d", year, week);
    }
}
