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
        return Double.isFinite(share) ? number("%.2f", 100 * share) : NONE;
    }

    static String number(String form, double value) {
        return String.format(Locale.ROOT, form, value);
    }

    static String head(String... cells) {
        return row(cells) + "|---" + "|---:".repeat(cells.length - 1) + "|\n";
    }

    static String row(String... cells) {
        return "| " + String.join(" | ", cells) + " |\n";
    }

    /** Of no numbers: 0. */
    static double median(Collection<? extends Number> numbers) {
        double[] sorted = numbers.stream().mapToDouble(Number::doubleValue).sorted().toArray();
        int n = sorted.length;
        return n == 0 ? 0 : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }
}
