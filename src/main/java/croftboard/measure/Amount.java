package croftboard.measure;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as a cook writes it: {@code 1-1/2 cups}, {@code 25 lb}, {@code 12 cloves}.
 *
 * @param value exact, not negative when it comes from a book
 * @param unit its unit
 */
public record Amount(Ratio value, Unit unit) {
    private static final Pattern NUMBER = Pattern.compile(
            "(\\d{1,9})-(\\d{1,4})/(\\d{1,4})|(\\d{1,9})/(\\d{1,4})|(\\d{1,9}(?:\\.\\d{1,9})?)");
    private static final Pattern AMOUNT = Pattern.compile("(\\S+) +(\\S+)");

    /** The exact value of {@code 6}, {@code 2.5}, {@code 1/2} or {@code 1-1/2}; empty when it is none of these. */
    public static Optional<Ratio> number(String text) {
        Matcher m = NUMBER.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        if (m.group(1) != null) {
            return fraction(m.group(2), m.group(3)).map(f -> f.plus(Ratio.decimal(m.group(1))));
        }
        if (m.group(4) != null) {
            return fraction(m.group(4), m.group(5));
        }
        return Optional.of(Ratio.decimal(m.group(6)));
    }

    private static Optional<Ratio> fraction(String num, String den) {
        long d = Long.parseLong(den);
        return d == 0 ? Optional.empty() : Optional.of(Ratio.of(Long.parseLong(num), d));
    }

    /** Reads {@code NUMBER UNIT}; empty when the number or the unit is not one. */
    public static Optional<Amount> parse(String text) {
        Matcher m = AMOUNT.matcher(text.trim());
        if (!m.matches()) {
            return Optional.empty();
        }
        Optional<Unit> unit = Unit.named(m.group(2));
        return unit.isEmpty() ? Optional.empty() : number(m.group(1)).map(n -> new Amount(n, unit.get()));
    }

    /** The exact size in grams, millilitres, minutes or pieces. */
    public Ratio base() {
        return value.times(unit.base());
    }

    /** @throws IllegalArgumentException when the two units do not convert */
    public Amount in(Unit other) {
        if (!unit.converts(other)) {
            throw new IllegalArgumentException("[" + unit + "] does not convert to [" + other + "]");
        }
        return new Amount(base().over(other.base()), other);
    }

    public Amount times(Ratio factor) {
        return new Amount(value.times(factor), unit);
    }

    @Override
    public String toString() {
        return value + " " + (value.compareTo(Ratio.ONE) > 0 ? unit.plural() : unit.name());
    }
}
