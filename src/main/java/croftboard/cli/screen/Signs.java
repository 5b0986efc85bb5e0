package croftboard.cli.screen;

import croftboard.measure.Cents;

/** Differences with their sign. */
final class Signs {
    private Signs() { }

    /** {@code +$3.20}, {@code -$1.00}, {@code $0.00}. */
    static String money(long cents) {
        return (cents > 0 ? "+" : "") + new Cents(cents);
    }

    static String number(long n) {
        return (n > 0 ? "+" : "") + n;
    }

    /** {@code 1 dish}, {@code 3 dishes}. */
    static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
