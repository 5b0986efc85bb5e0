package croftboard.ledger.share;

import croftboard.book.LocalCheck.Answer;
import croftboard.ledger.Receipt;
import croftboard.measure.Ratio;

/**
 * A receipt line of food and how it counts.
 *
 * @param why one clause for people
 */
public record Counted(Receipt receipt, Answer answer, String why, Near near) {
    /** The line's money under its answer. */
    public Money money() {
        long cents = receipt.cents();
        boolean mixed = receipt.origin().localPart().isPresent();
        long part = receipt.origin().localPart().map(p -> p.times(cents)).map(Ratio::round).orElse(0L);
        return switch (answer) {
            case LOCAL -> new Money(cents, 0, 0, mixed ? cents : 0, part, 0, 0);
            case NOT_LOCAL -> new Money(0, cents, 0, 0, 0, mixed ? cents : 0, part);
            case UNCLASSIFIED -> new Money(0, 0, cents, 0, 0, 0, 0);
        };
    }

    /** {@code 2027-08}. */
    public String month() {
        return java.time.YearMonth.from(receipt.date()).toString();
    }
}
