package croftboard.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Weeks of any year, both ends included; {@code first > last} runs over New Year. Week 53 of a long year counts
 * as week 52 where a range ends at 52, so that no week falls between two ranges.
 *
 * @param first 1 to 53
 * @param last 1 to 53
 */
public record WeekRange(int first, int last) {
    private static final Pattern FORM = Pattern.compile("W(\\d{2})(?:\\.\\.W(\\d{2}))?");
    public static final WeekRange ALL = new WeekRange(1, 53);

    /** Reads {@code W30..W38}, {@code W49..W12} or {@code W33}; empty when it is none of these. */
    public static Optional<WeekRange> parse(String text) {
        Matcher m = FORM.matcher(text.trim());
        if (!m.matches()) {
            return Optional.empty();
        }
        int first = Integer.parseInt(m.group(1));
        int last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
        boolean there = first >= 1 && first <= 53 && last >= 1 && last <= 53;
        return there ? Optional.of(new WeekRange(first, last)) : Optional.empty();
    }

    public boolean holds(IsoWeek week) {
        return holds(week.week());
    }

    /** @param week 1 to 53 */
    public boolean holds(int week) {
        return within(week) || week == 53 && within(52);
    }

    private boolean within(int week) {
        return first <= last ? week >= first && week <= last : week >= first || week <= last;
    }

    /** Whether the two have a week in common. */
    public boolean overlaps(WeekRange other) {
        for (int w = 1; w <= 53; w++) {
            if (holds(w) && other.holds(w)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public String toString() {
        return first == last ? String.format(Locale.ROOT, "W%02d", first)
                : String.format(Locale.ROOT, "W%02d..W%02d", first, last);
    }
}
