package croftboard.ledger.share;

import croftboard.measure.Ratio;
import java.util.Optional;

/**
 * Food money by how it counts, in cents; {@code local + notLocal + unclassified} is all of it.
 *
 * @param mixedIn of {@code local}: mixed food, which counts whole
 * @param mixedInPart the local part of {@code mixedIn}, each line to the nearest cent
 * @param mixedOut of {@code notLocal}: mixed food of too little local part, which counts with nothing
 * @param mixedOutPart the local part of {@code mixedOut}
 */
public record Money(long local, long notLocal, long unclassified, long mixedIn, long mixedInPart, long mixedOut,
        long mixedOutPart) {
    public static final Money NONE = new Money(0, 0, 0, 0, 0, 0, 0);

    public long total() {
        return Math.addExact(Math.addExact(local, notLocal), unclassified);
    }

    public Money plus(Money o) {
        return new Money(Math.addExact(local, o.local), Math.addExact(notLocal, o.notLocal),
                Math.addExact(unclassified, o.unclassified), Math.addExact(mixedIn, o.mixedIn),
                Math.addExact(mixedInPart, o.mixedInPart), Math.addExact(mixedOut, o.mixedOut),
                Math.addExact(mixedOutPart, o.mixedOutPart));
    }

    /** The share by the definition: what is not classified counts as not local. Empty when no money was paid. */
    public Optional<Ratio> share() {
        return of(local);
    }

    /** The least that can be said: of mixed food only its local part, of what is not classified nothing. */
    public long lowCents() {
        return local - mixedIn + mixedInPart;
    }

    /** The most that can be said: all that is not classified, and the local part of mixed food that counts with nothing. */
    public long highCents() {
        return local + unclassified + mixedOutPart;
    }

    public Optional<Ratio> low() {
        return of(lowCents());
    }

    public Optional<Ratio> high() {
        return of(highCents());
    }

    private Optional<Ratio> of(long cents) {
        return total() > 0 ? Optional.of(Ratio.of(cents, total())) : Optional.empty();
    }
}
