package croftboard.ledger;

import java.time.LocalDateTime;

/**
 * One act of taking in: a file, or what was typed at once. It is in the ledger whole or not at all.
 *
 * @param number 1, 2, 3 ... in the order of booking
 * @param at local time of the kitchen, whole seconds
 * @param who a role or initials, never a person's data
 * @param by the command that took it in, for example {@code receive}
 * @param name of the file, without its folder; {@code typed} when there was none
 * @param fingerprint hex digest of what came in; the same one is booked once
 */
public record Booking(long number, LocalDateTime at, String who, String by, String name, String fingerprint) {
    public static final String TYPED = "typed";
}
