package croftboard.plan.work;

import croftboard.book.OnHand;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Something that is fetched for the bench.
 *
 * @param day on which it is taken out
 * @param item an ingredient, or a recipe that was made here
 * @param readyOn when it is wanted: later than {@code day} for what must thaw
 * @param mg as purchased, or of the component
 * @param useBy what is left of it: the last day; empty when nobody can tell
 * @param users what it is for, by day
 */
public record Pull(LocalDate day, String item, Place from, LocalDate readyOn, long mg, Source source,
        Optional<LocalDate> useBy, List<Making> users) {

    public enum Place { FREEZER, WALK_IN, DRY_STORE }

    /** Out of the freezer into the cold, some days before it is wanted. */
    public boolean thaws() {
        return from == Place.FREEZER && readyOn.isAfter(day);
    }

    public sealed interface Source { }

    /**
     * @param vendors ids, those whose order for that day holds the item
     * @param openedOn a pack of it was opened that day and is used first
     * @param opens packs that are opened now
     */
    public record Delivered(LocalDate on, List<String> vendors, Optional<LocalDate> openedOn, List<Packs> opens)
            implements Source { }

    /** @param pack in the vendor's words */
    public record Packs(String pack, int count) { }

    public record Counted(OnHand row) implements Source { }

    public record Made(Making batch) implements Source { }

    /** What earlier weeks' orders left over; the count does not name it. */
    public record EarlierOrders() implements Source { }

    /** Nothing covers it: the plan is not complete. */
    public record Missing() implements Source { }
}
