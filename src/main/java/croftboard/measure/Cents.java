package croftboard.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Money in whole US cents; any sign.
 *
 * @param value cents
 */
public record Cents(long value) implements Comparable<Cents> {
    public static final Cents ZERO = new Cents(0);
    private static final Pattern DOLLARS = Pattern.compile("\\$(\\d{1,7})(?:\\.(\\d{2}))?");

    /** Reads {@code $3.40} or {@code $12}; empty when it is neither. */
    public static Optional<Cents> parse(String text) {
        Matcher m = DOLLARS.matcher(text.trim());
        if (!m.matches()) {
            return Optional.empty();
        }
        long cents = m.group(2) == null ? 0 : Long.parseLong(m.group(2));
        return Optional.of(new Cents(Long.parseLong(m.group(1)) * 100 + cents));
    }

    public Cents plus(Cents other) {
        return new Cents(Math.addExact(value, other.value));
    }

    public Cents minus(Cents other) {
        return new Cents(Math.subtractExact(value, other.value));
    }

    public Cents times(long factor) {
        return new Cents(Math.multiplyExact(value, factor));
    }

    /** Exact, to be rounded once by the caller. */
    public Ratio times(Ratio factor) {
        return factor.times(value);
    }

    @Override
    public int compareTo(Cents other) {
        return Long.compare(value, other.value);
    }

    /** {@code $1,234.50}, or {@code -$0.05}. */
    @Override
    public String toString() {
        long abs = Math.abs(value);
        return String.format(Locale.ROOT, "%s$%,d.%02d", value < 0 ? "-" : "", abs / 100, abs % 100);
    }
}
