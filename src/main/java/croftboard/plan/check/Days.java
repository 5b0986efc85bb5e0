package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The days of one week's plan: deliveries from the Monday before, batches from the Sunday before to the Saturday. */
record Days(Book book, IsoWeek week, java.util.Set<LocalDate> notSold) {
    Days(Book book, IsoWeek week) {
        this(book, week, java.util.Set.of());
    }

    LocalDate monday() {
        return week.monday();
    }

    LocalDate sunday() {
        return week.monday().plusDays(6);
    }

    /** The first day on which a delivery may come and a need may fall. */
    LocalDate first() {
        return week.monday().minusDays(7);
    }

    boolean holds(LocalDate date) {
        return !date.isBefore(first()) && !date.isAfter(sunday());
    }

    List<LocalDate> all() {
        return first().datesUntil(sunday().plusDays(1)).toList();
    }

    boolean closed(LocalDate date) {
        return book.seasons().closures().containsKey(date);
    }

    boolean open(LocalDate date) {
        return !date.isBefore(monday()) && !date.isAfter(sunday()) && !closed(date)
                && book.kitchen().open().contains(date.getDayOfWeek());
    }

    /** Days on which something is sold. */
    List<LocalDate> openDays() {
        return all().stream().filter(d -> open(d) && !notSold.contains(d)).toList();
    }

    /** Whether batches may be made on that day. */
    boolean prep(LocalDate date) {
        return !date.isBefore(monday().minusDays(1)) && date.isBefore(sunday()) && !closed(date)
                && book.kitchen().prepDays().contains(date.getDayOfWeek());
    }

    Optional<LocalDate> lastPrepDay(LocalDate atOrBefore) {
        return all().stream().filter(d -> !d.isAfter(atOrBefore)).filter(this::prep).reduce((a, b) -> b);
    }

    /** Runs of a line: the open weekdays in groups of {@code length}; closed days fall out, and so do empty groups. */
    List<List<LocalDate>> runs(int length) {
        List<List<LocalDate>> runs = new ArrayList<>();
        int weekdays = 0;
        for (DayOfWeek weekday : DayOfWeek.values()) {
            if (!book.kitchen().open().contains(weekday)) {
                continue;
            }
            if (weekdays % length == 0) {
                runs.add(new ArrayList<>());
            }
            weekdays++;
            if (open(week.day(weekday))) {
                runs.get(runs.size() - 1).add(week.day(weekday));
            }
        }
        runs.removeIf(List::isEmpty);
        return runs;
    }

    static String shortName(LocalDate date) {
        return date.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
    }
}
