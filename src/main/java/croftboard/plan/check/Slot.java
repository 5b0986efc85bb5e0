package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Seasons;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A place in the offer as the book gives it: a run of a line or a course of an event.
 *
 * @param number lines in the kitchen's order, each run by run; events after them
 */
sealed interface Slot {
    int number();

    List<LocalDate> days();

    String id();

    /** The line's or course's own id. */
    String line();

    /** Takes part in gap and variety: standing dishes and events do not. */
    boolean free();

    record Run(int number, Kitchen.ServiceLine of, List<LocalDate> days) implements Slot {
        @Override
        public String id() {
            return Days.shortName(days.get(0)) + "/" + of.id();
        }

        @Override
        public String line() {
            return of.id();
        }

        @Override
        public boolean free() {
            return of.standing().isEmpty();
        }
    }

    record Meal(int number, Seasons.Event event, Seasons.Course of) implements Slot {
        @Override
        public List<LocalDate> days() {
            return List.of(event.date());
        }

        @Override
        public String id() {
            return event.id() + "/" + of.id();
        }

        @Override
        public String line() {
            return of.id();
        }

        @Override
        public boolean free() {
            return false;
        }

        /** Portions to make: the guarantee and the share above it. */
        int portions() {
            return Math.toIntExact(Ratio.ONE.plus(event.overage()).times(event.guarantee()).times(of.share()).ceil());
        }
    }

    static List<Slot> all(Book book, Days days) {
        List<Slot> slots = new ArrayList<>();
        for (Kitchen.ServiceLine line : book.kitchen().lines()) {
            for (List<LocalDate> run : days.runs(line.runDays())) {
                slots.add(new Run(slots.size(), line, run));
            }
        }
        for (Seasons.Event event : events(book, days)) {
            for (Seasons.Course course : event.menu()) {
                slots.add(new Meal(slots.size(), event, course));
            }
        }
        return List.copyOf(slots);
    }

    /** Events on a day of the week. */
    static List<Seasons.Event> events(Book book, Days days) {
        return book.seasons().events().stream()
                .filter(e -> !e.date().isBefore(days.monday()) && !e.date().isAfter(days.sunday())).toList();
    }
}
