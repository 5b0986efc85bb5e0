package croftboard.ledger;

/**
 * A line of an order.
 *
 * @param item ingredient id. @param pack of the book's offer
 * @param packs ordered. @param packMg as purchased, one pack
 * @param price of a pack, cents. @param cents of the line
 */
public record Ordered(String item, String pack, int packs, long packMg, long price, long cents) { }
