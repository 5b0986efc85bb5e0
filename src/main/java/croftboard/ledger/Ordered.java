package croftboard.ledger;

import java.time.LocalDate;

/**
 * A line of an order that was sent, as the ledger needs it.
 *
 * @param order {@code 2027-W33/hollow-brook/0816}, as on the paper order
 * @param item ingredient id. @param pack of the book's offer
 * @param packs ordered. @param packMg as purchased, one pack
 * @param price of a pack, cents. @param cents of the line
 */
public record Ordered(String order, String vendor, LocalDate delivery, String item, String pack, int packs, long packMg,
        long price, long cents) { }
