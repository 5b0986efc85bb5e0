package croftboard.bench;

import java.util.Collection;
import java.util.Locale;

/** How figures are written, and medians. */
final class Figures {
    static final String NONE = "none";

    private Figures() { }

    static String dollars(double cents) {
        return number("%,.2f", cents / 100);
    }

    static String percent(double share) {
        return number("%.2f", 100 * share);
    }

    static String number(String form, double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, form, value) : NONE;
    }

    static String head(String... cells) {
        return row(cells) + "|---" + "|---:".repeat(cells.length - 1) + "|\n";
    }

    static String row(String... cells) {
        return "| " + String.join(" | ", cells) + " |\n";
    }

    /** Of no numbers: not a number, written as none. */
    static double median(Collection<? extends Number> numbers) {
        double[] sorted = numbers.stream().mapToDouble(Number::doubleValue).sorted().toArray();
        int n = sorted.length;
        return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }
}
