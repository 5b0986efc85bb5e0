package croftboard.paper.served;

import croftboard.measure.Cents;
import java.util.Optional;

/**
 * The store's own number for a packed dish with its price, twelve digits: 2, the item's five, a verifier of the price, the
 * price in cents, a check digit. It is for restricted circulation: never sent outside the store (GS1 General Specifications
 * 2.1.12 and 7.9).
 */
public record PriceNumber(String digits) {
    private static final int MOST_CENTS = 9_999;

    /** @param item five digits. Empty when the price does not fit four digits or is nothing */
    public static Optional<PriceNumber> of(String item, Cents price) {
        if (price.value() <= 0 || price.value() > MOST_CENTS || !item.matches("\\d{5}")) {
            return Optional.empty();
        }
        String cents = String.format(java.util.Locale.ROOT, "%04d", price.value());
        String number = "2" + item + verifier4(cents) + cents;
        return Optional.of(new PriceNumber(number + checkDigit(number)));
    }

    /** The last digit of a number whose other digits are given: weights 3, 1, 3 ... from the right. */
    public static int checkDigit(String digits) {
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            sum += digit(digits, digits.length() - 1 - i) * (i % 2 == 0 ? 3 : 1);
        }
        return (10 - sum % 10) % 10;
    }

    /** Of a price of four digits: weights 2-, 2-, 3, 5-; the sum times 3, last digit. */
    public static int verifier4(String price) {
        return 3 * (twiceLess(digit(price, 0)) + twiceLess(digit(price, 1)) + digit(price, 2) * 3
                + fiveLess(digit(price, 3))) % 10;
    }

    /** Of a price of five digits: weights 5+, 2-, 5-, 5+, 2-; what the sum lacks to ten, looked up backwards in 5-. */
    public static int verifier5(String price) {
        int sum = fiveMore(digit(price, 0)) + twiceLess(digit(price, 1)) + fiveLess(digit(price, 2))
                + fiveMore(digit(price, 3)) + twiceLess(digit(price, 4));
        int lacks = (10 - sum % 10) % 10;
        for (int d = 0; d < 10; d++) {
            if (fiveLess(d) == lacks) {
                return d;
            }
        }
        throw new IllegalStateException("the weight 5- takes every value once");
    }

    private static int digit(String digits, int at) {
        return Character.digit(digits.charAt(at), 10);
    }

    private static int twiceLess(int d) {
        return (2 * d - 2 * d / 10) % 10;
    }

    private static int fiveLess(int d) {
        return (5 * d - 5 * d / 10) % 10;
    }

    private static int fiveMore(int d) {
        return (5 * d + 5 * d / 10) % 10;
    }
}
