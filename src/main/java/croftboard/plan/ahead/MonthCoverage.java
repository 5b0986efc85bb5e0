package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import croftboard.plan.WeekPlan;
import croftboard.safety.DishStatement;
import croftboard.safety.DishStatement.Known;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Who finds a main on which day, over weeks that are planned. Mains are the dishes of the kitchen's first course, without
 * those that always stand there; events take no part.
 *
 * @param course of the mains
 * @param planned weeks that were looked at
 * @param open weeks of the span of which there is no plan
 * @param days on which mains are served, in order
 */
public record MonthCoverage(WeekSpan span, String course, List<PlannedWeek> planned, List<IsoWeek> open, List<LocalDate> days,
        List<Diet> diets) {
    /** Somebody eats poorly whose one dish fills more than one in so many of the days. */
    private static final int SAME_DISH = 3;

    /**
     * One eater's month.
     *
     * @param mains dishes by day; days without any are not in it
     * @param perhaps days on which only a dish would do of which something is not stated
     * @param dishes eaten, the most frequent first
     * @param weekday on which the month has the fewest different dishes
     */
    public record Diet(Eater eater, Map<LocalDate, List<String>> mains, TreeSet<LocalDate> perhaps, List<Often> dishes,
            Optional<Weekday> weekday) {

        /** In words, each a reason; empty: eats well. @param days that are served */
        public List<String> poorly(List<LocalDate> days) {
            List<String> why = new ArrayList<>();
            int without = days.size() - mains.size();
            if (without > 0) {
                why.add("no main on " + without + " of " + days.size() + " days");
            }
            if (!dishes.isEmpty() && days.size() > SAME_DISH && dishes.get(0).days().size() * SAME_DISH > days.size()) {
                why.add("the same dish on " + dishes.get(0).days().size() + " of " + days.size() + " days");
            }
            weekday.filter(w -> w.of() >= SAME_DISH && w.dishes() * 2 <= w.of()).ifPresent(w -> why.add(w.dishes()
                    + (w.dishes() == 1 ? " dish" : " different dishes") + " on " + w.of() + " " + name(w.day()) + "s"));
            return why;
        }

        private static String name(DayOfWeek day) {
            return day.getDisplayName(java.time.format.TextStyle.FULL, java.util.Locale.ENGLISH);
        }
    }

    /** @param days on which it is served, in order */
    public record Often(String recipe, List<LocalDate> days) {
        /** Fewest days from one to the next; empty when it comes once. */
        public Optional<Long> nearest() {
            return java.util.stream.IntStream.range(1, days.size())
                    .mapToObj(i -> ChronoUnit.DAYS.between(days.get(i - 1), days.get(i))).min(Long::compare);
        }
    }

    /** @param dishes different mains that the eater finds on that weekday. @param of such days */
    public record Weekday(DayOfWeek day, int dishes, int of) { }

    /** @param weeks in order, each once */
    public static MonthCoverage of(Book book, WeekSpan span, List<PlannedWeek> weeks) {
        String course = book.kitchen().lines().get(0).course();
        List<String> lines = book.kitchen().lines().stream().filter(l -> l.course().equals(course) && l.standing().isEmpty())
                .map(Kitchen.ServiceLine::id).toList();
        TreeMap<LocalDate, Map<String, DishStatement>> served = new TreeMap<>();
        for (PlannedWeek week : weeks) {
            week.plan().menu().stream().filter(s -> lines.contains(s.line())).forEach(s -> s.days().forEach(day -> {
                Map<String, DishStatement> here = served.computeIfAbsent(day, d -> new TreeMap<>());
                s.recipe().filter(book.recipes()::containsKey).ifPresent(r -> here.put(r, statement(book, week.plan(), r)));
            }));
        }
        List<LocalDate> days = List.copyOf(served.keySet());
        List<IsoWeek> there = weeks.stream().map(PlannedWeek::week).toList();
        return new MonthCoverage(span, course, List.copyOf(weeks), span.weeks().stream().filter(w -> !there.contains(w)).toList(),
                days, Eater.of(book).stream().map(e -> diet(e, served)).toList());
    }

    private static DishStatement statement(Book book, WeekPlan plan, String recipe) {
        return DishStatement.planned(book, recipe, plan.swaps().getOrDefault(recipe, new TreeMap<>()));
    }

    private static Diet diet(Eater eater, TreeMap<LocalDate, Map<String, DishStatement>> served) {
        TreeMap<LocalDate, List<String>> mains = new TreeMap<>();
        TreeSet<LocalDate> perhaps = new TreeSet<>();
        TreeMap<String, List<LocalDate>> dishes = new TreeMap<>();
        served.forEach((day, here) -> here.forEach((recipe, statement) -> {
            Known eats = eater.eats(statement);
            if (eats == Known.YES) {
                mains.computeIfAbsent(day, d -> new ArrayList<>()).add(recipe);
                dishes.computeIfAbsent(recipe, r -> new ArrayList<>()).add(day);
            } else if (eats == Known.UNKNOWN) {
                perhaps.add(day);
            }
        }));
        perhaps.removeAll(mains.keySet());
        List<Often> often = dishes.entrySet().stream().map(e -> new Often(e.getKey(), List.copyOf(e.getValue())))
                .sorted(Comparator.comparing((Often o) -> -o.days().size()).thenComparing(Often::recipe)).toList();
        return new Diet(eater, mains, perhaps, often, weekday(served, mains));
    }

    private static Optional<Weekday> weekday(TreeMap<LocalDate, Map<String, DishStatement>> served, Map<LocalDate, List<String>> mains) {
        List<Weekday> all = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            List<LocalDate> such = served.keySet().stream().filter(d -> d.getDayOfWeek() == day).toList();
            if (!such.isEmpty()) {
                all.add(new Weekday(day, (int) such.stream().flatMap(d -> mains.getOrDefault(d, List.of()).stream()).distinct()
                        .count(), such.size()));
            }
        }
        return all.stream().min(Comparator.comparingInt(Weekday::dishes).thenComparing(Weekday::day));
    }
}
