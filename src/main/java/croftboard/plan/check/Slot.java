package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Seasons;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

    /** @param id by the first day that the run has by the book */
    record Run(int number, String id, Kitchen.ServiceLine of, List<LocalDate> days) implements Slot {
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

    /** @param revised a run whose food was lost ends on the day before, and the rest of its days is a run of its own */
    static List<Slot> all(Book book, Days days, Optional<Revised> revised) {
        List<Slot> slots = new ArrayList<>();
        for (Kitchen.ServiceLine line : book.kitchen().lines()) {
            for (List<LocalDate> run : days.runs(line.runDays())) {
                String id = Days.shortName(run.get(0)) + "/" + line.id();
                List<LocalDate> sold = run.stream().filter(d -> !days.notSold().contains(d)).toList();
                LocalDate from = revised.flatMap(r -> r.row(id).flatMap(r::lostFrom)).orElse(LocalDate.MAX);
                add(slots, id, line, sold.stream().filter(d -> d.isBefore(from)).toList());
                List<LocalDate> rest = sold.stream().filter(d -> !d.isBefore(from)).toList();
                add(slots, rest.isEmpty() ? id : Days.shortName(rest.get(0)) + "/" + line.id(), line, rest);
            }
        }
        for (Seasons.Event event : events(book, days)) {
            for (Seasons.Course course : event.menu()) {
                slots.add(new Meal(slots.size(), event, course));
            }
        }
        return List.copyOf(slots);
    }

    private static void add(List<Slot> slots, String id, Kitchen.ServiceLine line, List<LocalDate> days) {
        if (!days.isEmpty()) {
            slots.add(new Run(slots.size(), id, line, days));
        }
    }

    /** Events on a day of the week. */
    static List<Seasons.Event> events(Book book, Days days) {
        return book.seasons().events().stream()
                .filter(e -> !e.date().isBefore(days.monday()) && !e.date().isAfter(days.sunday())).toList();
    }
}
