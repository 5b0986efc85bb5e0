package croftboard.ledger;

import java.time.LocalDate;
import java.util.List;

/**
 * An order that was sent, as the ledger needs it.
 *
 * @param order {@code 2027-W33/hollow-brook/0816}, as on the paper order
 * @param fee of the delivery, cents
 */
public record SentOrder(String order, String vendor, LocalDate delivery, List<Ordered> lines, long fee) { }
