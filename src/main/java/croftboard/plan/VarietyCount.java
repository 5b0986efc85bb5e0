package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** Counts the variety of weeks. Standing dishes, events and empty slots take no part. */
public final class VarietyCount {
    private static final int[] WITHIN = {1, 2, 3};
    private final Book book;
    private final List<Serving> servings = new ArrayList<>();

    private record Serving(String recipe, String course, Recipe.Sale sale, List<LocalDate> days) {
        LocalDate start() {
            return days.get(0);
        }
    }

    private VarietyCount(Book book) {
        this.book = book;
    }

    public static RotationVariety of(Book book, List<WeekPlan> weeks) {
        VarietyCount count = new VarietyCount(book);
        Map<String, Kitchen.ServiceLine> lines = new HashMap<>();
        book.kitchen().lines().stream().filter(l -> l.standing().isEmpty()).forEach(l -> lines.put(l.id(), l));
        for (WeekPlan week : weeks) {
            week.menu().stream().filter(s -> s.recipe().isPresent() && lines.containsKey(s.line()) && onLine(s))
                    .forEach(s -> count.servings.add(new Serving(s.recipe().get(), lines.get(s.line()).course(),
                            book.recipe(s.recipe().get()).sale().orElseThrow(), s.days())));
        }
        count.servings.sort(Comparator.comparing(Serving::start).thenComparing(Serving::recipe));
        return new RotationVariety(count.servings.size(), (int) count.servings.stream().map(Serving::recipe).distinct().count(),
                count.sameWeekday(), count.near(), count.members());
    }

    /** An event's course may bear a line's name. */
    private static boolean onLine(WeekPlan.Served s) {
        return s.slot().equals(Calendar.shortName(s.days().get(0).getDayOfWeek()) + "/" + s.line());
    }

    private List<RotationVariety.SameWeekday> sameWeekday() {
        Map<String, Integer> times = new TreeMap<>();
        servings.forEach(s -> times.merge(s.start().getDayOfWeek().getValue() + s.recipe(), 1, Integer::sum));
        return times.entrySet().stream().filter(e -> e.getValue() > 1).map(e -> new RotationVariety.SameWeekday(
                e.getKey().substring(1), DayOfWeek.of(e.getKey().charAt(0) - '0'), e.getValue())).toList();
    }

    private List<RotationVariety.Near> near() {
        List<RotationVariety.Near> all = new ArrayList<>();
        for (int days : WITHIN) {
            all.add(new RotationVariety.Near("main", days, again(s -> s.sale().main(), days), servings.size()));
            all.add(new RotationVariety.Near("method", days, again(s -> s.sale().method(), days), servings.size()));
        }
        return List.copyOf(all);
    }

    private int again(Function<Serving, String> trait, int days) {
        int count = 0;
        for (Serving s : servings) {
            count += servings.stream().anyMatch(o -> o.course().equals(s.course()) && o.start().isBefore(s.start())
                    && ChronoUnit.DAYS.between(o.start(), s.start()) <= days
                    && trait.apply(o).equals(trait.apply(s))) ? 1 : 0;
        }
        return count;
    }

    private List<RotationVariety.Member> members() {
        List<RotationVariety.Member> all = new ArrayList<>();
        List<DayOfWeek> open = book.kitchen().open().stream().sorted().toList();
        for (int a = 0; a < open.size(); a++) {
            for (int b = a + 1; b < open.size(); b++) {
                Set<DayOfWeek> days = EnumSet.of(open.get(a), open.get(b));
                member(days, all);
            }
        }
        return List.copyOf(all);
    }

    private void member(Set<DayOfWeek> days, List<RotationVariety.Member> all) {
        String first = book.kitchen().lines().get(0).course();
        Map<String, Integer> seen = new TreeMap<>();
        Set<String> mains = new HashSet<>();
        int count = 0;
        for (Serving s : servings) {
            int times = (int) s.days().stream().filter(d -> days.contains(d.getDayOfWeek())).count();
            if (times > 0) {
                count += times;
                seen.merge(s.recipe(), times, Integer::sum);
                if (s.course().equals(first)) {
                    mains.add(s.recipe());
                }
            }
        }
        if (count > 0) {
            var most = seen.entrySet().stream().max(Comparator.comparingInt((Map.Entry<String, Integer> e) -> e.getValue())
                    .thenComparing(Map.Entry::getKey, Comparator.reverseOrder())).orElseThrow();
            all.add(new RotationVariety.Member(days, count, seen.size(), mains.size(), most.getKey(), most.getValue()));
        }
    }
}
