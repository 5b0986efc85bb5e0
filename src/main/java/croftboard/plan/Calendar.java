package croftboard.plan;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The days of one week's plan: day 0 is the Monday before it (deliveries may come so early), day 7 its own Monday,
 * day 13 its Sunday. Batches are made from the Sunday before (day 6) to its Saturday.
 */
final class Calendar {
    static final int DAYS = 14;
    static final int MONDAY = 7;
    private final Book book;
    private final IsoWeek week;
    private final Set<LocalDate> notSold;

    Calendar(Book book, IsoWeek week) {
        this(book, week, Set.of());
    }

    /** @param notSold days without service on which the kitchen may still work */
    Calendar(Book book, IsoWeek week, Set<LocalDate> notSold) {
        this.book = book;
        this.week = week;
        this.notSold = notSold;
    }

    IsoWeek week() {
        return week;
    }

    LocalDate date(int day) {
        return week.monday().plusDays(day - MONDAY);
    }

    /** May be outside 0 .. {@link #DAYS} - 1. */
    int day(LocalDate date) {
        return MONDAY + Math.toIntExact(java.time.temporal.ChronoUnit.DAYS.between(week.monday(), date));
    }

    boolean closed(int day) {
        return book.seasons().closures().containsKey(date(day));
    }

    DayOfWeek weekday(int day) {
        return date(day).getDayOfWeek();
    }

    boolean open(int day) {
        return day >= MONDAY && book.kitchen().open().contains(weekday(day)) && !closed(day);
    }

    boolean prep(int day) {
        return day >= MONDAY - 1 && day < DAYS - 1 && book.kitchen().prepDays().contains(weekday(day)) && !closed(day);
    }

    /** Whether something is sold on the day. */
    boolean sold(int day) {
        return open(day) && !notSold.contains(date(day));
    }

    int[] openDays() {
        return java.util.stream.IntStream.range(MONDAY, DAYS).filter(this::sold).toArray();
    }

    boolean[] prepDays() {
        boolean[] prep = new boolean[DAYS];
        for (int d = 0; d < DAYS; d++) {
            prep[d] = prep(d);
        }
        return prep;
    }

    /** The runs of a line: its days in chunks of {@code runDays}, closed days taken out, empty chunks left out. */
    List<int[]> runs(int runDays) {
        List<Integer> pattern = new ArrayList<>();
        for (int d = MONDAY; d < DAYS; d++) {
            if (book.kitchen().open().contains(weekday(d))) {
                pattern.add(d);
            }
        }
        List<int[]> runs = new ArrayList<>();
        for (int i = 0; i < pattern.size(); i += runDays) {
            int[] run = pattern.subList(i, Math.min(pattern.size(), i + runDays)).stream()
                    .mapToInt(x -> x).filter(this::open).toArray();
            if (run.length > 0) {
                runs.add(run);
            }
        }
        return runs;
    }

    /** The prep day at or before {@code day}; -1 when there is none. */
    int prepDayAtOrBefore(int day) {
        int d = Math.min(day, DAYS - 1);
        while (d >= 0 && !prep(d)) {
            d--;
        }
        return d;
    }

    static String shortName(DayOfWeek day) {
        return day.name().substring(0, 3).toLowerCase(java.util.Locale.ROOT);
    }
}
