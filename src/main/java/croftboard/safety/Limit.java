package croftboard.safety;

import croftboard.measure.Ratio;

/**
 * One number of a health code.
 *
 * @param unit F, s, min, h or day
 * @param section of the code
 * @param source key of sources.csv: where the number was read
 * @param say the rule in words
 */
public record Limit(Ratio value, String unit, String section, String source, String say) {
    /** @throws ArithmeticException when it is no whole number */
    public int whole() {
        if (!value.isWhole()) {
            throw new ArithmeticException(value + " " + unit);
        }
        return Math.toIntExact(value.floor());
    }

    /** {@code 41 F}, {@code 2 h}, {@code 15 s}. */
    public String shown() {
        boolean hours = unit.equals("min") && value.isWhole() && whole() % 60 == 0;
        String number = value.toDecimal(1).stripTrailingZeros().toPlainString();
        return hours ? whole() / 60 + " h" : number + " " + (unit.equals("day") && whole() != 1 ? "days" : unit);
    }
}
