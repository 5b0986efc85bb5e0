package croftboard.ledger;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How many, exact to a thousandth: packs, portions, units sold. May be negative (a return).
 *
 * @param thousandths 1000 is one
 */
public record Quantity(long thousandths) implements Comparable<Quantity> {
    public static final Quantity ZERO = new Quantity(0);
    private static final Pattern FORM = Pattern.compile("-?\\d{1,9}(\\.\\d{1,3})?");

    public static Quantity of(long whole) {
        return new Quantity(Math.multiplyExact(whole, 1000L));
    }

    /** Reads {@code 12}, {@code 2.5} or {@code -1}; empty when it is none of these. */
    public static Optional<Quantity> parse(String text) {
        return FORM.matcher(text).matches()
                ? Optional.of(new Quantity(new BigDecimal(text).movePointRight(3).longValueExact())) : Optional.empty();
    }

    public Quantity plus(Quantity other) {
        return new Quantity(Math.addExact(thousandths, other.thousandths));
    }

    public Quantity minus(Quantity other) {
        return new Quantity(Math.subtractExact(thousandths, other.thousandths));
    }

    public int signum() {
        return Long.signum(thousandths);
    }

    @Override
    public int compareTo(Quantity other) {
        return Long.compare(thousandths, other.thousandths);
    }

    /** The shortest exact decimal: {@code 12}, {@code 2.5}. */
    @Override
    public String toString() {
        return thousandths == 0 ? "0" : BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString();
    }
}
