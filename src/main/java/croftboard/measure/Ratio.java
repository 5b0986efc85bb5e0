package croftboard.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * An exact rational number in lowest terms. All kitchen arithmetic runs on it, so that a recipe
 * scaled by a and then by b is the recipe scaled by ab; rounding happens once, by a method that says how.
 *
 * @param num numerator, any sign
 * @param den denominator, above 0
 */
public record Ratio(BigInteger num, BigInteger den) implements Comparable<Ratio> {
    public static final Ratio ZERO = of(0);
    public static final Ratio ONE = of(1);
    private static final BigInteger TWO = BigInteger.TWO;

    /** @throws ArithmeticException when {@code den} is zero */
    public Ratio {
        if (den.signum() == 0) {
            throw new ArithmeticException("a ratio with denominator 0: " + num + "/0");
        }
        if (den.signum() < 0) {
            num = num.negate();
            den = den.negate();
        }
        if (!den.equals(BigInteger.ONE)) {
            BigInteger common = num.gcd(den);
            if (!common.equals(BigInteger.ONE)) {
                num = num.divide(common);
                den = den.divide(common);
            }
        }
    }

    public static Ratio of(long whole) {
        return new Ratio(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    /** @throws ArithmeticException when {@code den} is zero */
    public static Ratio of(long num, long den) {
        return new Ratio(BigInteger.valueOf(num), BigInteger.valueOf(den));
    }

    /** The exact value of a decimal such as {@code 2.5}. */
    public static Ratio of(BigDecimal decimal) {
        return decimal.scale() <= 0
                ? new Ratio(decimal.toBigIntegerExact(), BigInteger.ONE)
                : new Ratio(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    /**
     * The exact value of a decimal written in digits.
     *
     * @throws NumberFormatException when {@code text} is not a decimal number
     */
    public static Ratio decimal(String text) {
        return of(new BigDecimal(text));
    }

    public Ratio plus(Ratio other) {
        if (den.equals(other.den)) {
            return new Ratio(num.add(other.num), den);
        }
        return new Ratio(num.multiply(other.den).add(other.num.multiply(den)), den.multiply(other.den));
    }

    public Ratio minus(Ratio other) {
        return plus(other.negate());
    }

    public Ratio times(Ratio other) {
        return new Ratio(num.multiply(other.num), den.multiply(other.den));
    }

    public Ratio times(long factor) {
        return new Ratio(num.multiply(BigInteger.valueOf(factor)), den);
    }

    /** @throws ArithmeticException when {@code other} is zero */
    public Ratio over(Ratio other) {
        return new Ratio(num.multiply(other.den), den.multiply(other.num));
    }

    /** @throws ArithmeticException when {@code divisor} is zero */
    public Ratio over(long divisor) {
        return new Ratio(num, den.multiply(BigInteger.valueOf(divisor)));
    }

    public Ratio negate() {
        return new Ratio(num.negate(), den);
    }

    public Ratio max(Ratio other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public Ratio min(Ratio other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public int signum() {
        return num.signum();
    }

    public boolean isWhole() {
        return den.equals(BigInteger.ONE);
    }

    /** The largest whole number not above this. @throws ArithmeticException when it does not fit a long */
    public long floor() {
        BigInteger[] parts = num.divideAndRemainder(den);
        BigInteger whole = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
        return whole.longValueExact();
    }

    /** The smallest whole number not below this. @throws ArithmeticException when it does not fit a long */
    public long ceil() {
        return -negate().floor();
    }

    /** The nearest whole number; a half goes up (away from zero for positive numbers). */
    public long round() {
        return new Ratio(num.multiply(TWO).add(den), den.multiply(TWO)).floor();
    }

    /** The nearest multiple of {@code step}; a half goes up. @param step above 0 */
    public Ratio roundTo(Ratio step) {
        return step.times(over(step).round());
    }

    /** The smallest multiple of {@code step} that is not below this. @param step above 0 */
    public Ratio ceilTo(Ratio step) {
        return step.times(over(step).ceil());
    }

    /** For display and for the solvers only; never for money or mass that is kept. */
    public double toDouble() {
        return new BigDecimal(num).divide(new BigDecimal(den), MathContext.DECIMAL64).doubleValue();
    }

    /** Rounded half up to {@code places} decimals, for print. */
    public BigDecimal toDecimal(int places) {
        return new BigDecimal(num).divide(new BigDecimal(den), places, java.math.RoundingMode.HALF_UP);
    }

    @Override
    public int compareTo(Ratio other) {
        return num.multiply(other.den).compareTo(other.num.multiply(den));
    }

    /** {@code 3}, {@code 1/4} or {@code 7/4}. */
    @Override
    public String toString() {
        return isWhole() ? num.toString() : num + "/" + den;
    }
}
