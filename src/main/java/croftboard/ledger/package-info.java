/**
 * The ledger: what came, what sold, what was left and thrown away, what was counted. Nothing in it is ever changed or taken
 * out. An {@link croftboard.ledger.Entry} tells one thing that happened and carries a {@link croftboard.ledger.Stamp}: its
 * number, by which {@link croftboard.ledger.Booking} it came in (when, by whom, from which file), on which line, and which
 * earlier entry it corrects. A correction takes the earlier entry's place and keeps it; a
 * {@link croftboard.ledger.Withdrawal} takes it out and puts nothing there. {@link croftboard.ledger.Ledger} reads entries by
 * kind and dates with corrections applied.
 *
 * <p>What is not understood is kept, never dropped: a {@link croftboard.ledger.Receipt} without an item is still money paid
 * to a vendor, a {@link croftboard.ledger.Sale} without a dish still money taken. They are the list of what is to be matched;
 * matching one books a correction of it.
 *
 * <p>Money in whole cents, masses in milligrams, everything else counted in exact {@link croftboard.ledger.Quantity}s. No personal
 * data: {@code who} is a role or initials. {@code ledger.store} is the only package that knows SQL, {@code ledger.file} the only
 * one that reads and writes files of other people. This package knows {@code book} and {@code measure} and nothing above: orders of a plan come
 * in as {@link croftboard.ledger.Ordered} records.
 */
package croftboard.ledger;
