package croftboard.ledger;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Food thrown or given away.
 *
 * @param dish recipe id, when it was a dish or component. @param item ingredient id, when it was an ingredient; both empty: not
 *     matched yet
 * @param words as written
 * @param portions of a dish; zero when it was weighed
 * @param mg weighed; 0 when it was counted
 * @param cents what it had cost, when told; 0: not told
 * @param note for people
 */
public record Waste(Stamp stamp, LocalDate date, Optional<String> dish, Optional<String> item, String words, Quantity portions, long mg,
        Reason reason, long cents, String note) implements Entry {
    /** The words of the production sheet. OTHER: none of them, see the note. */
    public enum Reason {
        OVER_PRODUCTION, SPOILED, TRIM, MISTAKE, SAMPLED, DONATED, OTHER;

        /** {@code over-production}. */
        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The reason of such a word, in any case, with hyphen or blank. */
        public static Optional<Reason> named(String word) {
            String plain = word.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
            return Arrays.stream(values()).filter(r -> r.toString().equals(plain)).findFirst();
        }
    }

    /** On the list of what is to be matched. */
    public boolean unmatched() {
        return dish.isEmpty() && item.isEmpty();
    }

    @Override
    public Waste stamped(Stamp other) {
        return new Waste(other, date, dish, item, words, portions, mg, reason, cents, note);
    }
}
