package croftboard.measure;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Weeks of the calendar that follow each other, both ends included: {@code 2027-W36..2027-W39}. */
public record WeekSpan(IsoWeek first, IsoWeek last) implements Comparable<WeekSpan> {
    private static final Pattern FORM = Pattern.compile("(.+?)\\.\\.(.+)");

    /** @throws IllegalArgumentException when the last is before the first */
    public WeekSpan {
        if (last.compareTo(first) < 0) {
            throw new IllegalArgumentException("[" + last + "] is before [" + first + "]");
        }
    }

    /** @param weeks at least 1 */
    public static WeekSpan of(IsoWeek first, int weeks) {
        return new WeekSpan(first, first.plusWeeks(weeks - 1));
    }

    /** Reads {@code 2027-W36..2027-W39}; empty when it is none or runs backward. */
    public static Optional<WeekSpan> parse(String text) {
        Matcher m = FORM.matcher(text.trim());
        if (!m.matches()) {
            return Optional.empty();
        }
        Optional<IsoWeek> first = IsoWeek.parse(m.group(1));
        Optional<IsoWeek> last = IsoWeek.parse(m.group(2));
        return first.isPresent() && last.isPresent() && first.get().compareTo(last.get()) <= 0
                ? Optional.of(new WeekSpan(first.get(), last.get())) : Optional.empty();
    }

    public boolean holds(IsoWeek week) {
        return first.compareTo(week) <= 0 && week.compareTo(last) <= 0;
    }

    public boolean overlaps(WeekSpan other) {
        return first.compareTo(other.last) <= 0 && other.first.compareTo(last) <= 0;
    }

    public List<IsoWeek> weeks() {
        return Stream.iterate(first, this::holds, w -> w.plusWeeks(1)).toList();
    }

    @Override
    public int compareTo(WeekSpan other) {
        return first.equals(other.first) ? last.compareTo(other.last) : first.compareTo(other.first);
    }

    @Override
    public String toString() {
        return first + ".." + last;
    }
}
