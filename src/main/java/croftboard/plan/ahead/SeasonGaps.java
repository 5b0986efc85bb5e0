package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.book.Promises;
import croftboard.book.Recipe;
import croftboard.measure.IsoWeek;
import croftboard.measure.WeekRange;
import croftboard.safety.DishStatement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What the calendar does not cover: dishes without a local crop, crops without a dish, lines with too few dishes. */
final class SeasonGaps {
    private final Book book;
    private final Expectation farms;
    private final List<PlannedWeek> weeks;
    private final Purchased purchased;

    SeasonGaps(Book book, Expectation farms, Purchased purchased, List<PlannedWeek> weeks) {
        this.book = book;
        this.farms = farms;
        this.weeks = weeks;
        this.purchased = purchased;
    }

    private Set<String> items(String recipe) {
        return purchased.of(recipe).keySet();
    }

    /** Dishes of a week that use an item. */
    Set<String> dishes(PlannedWeek week, String item) {
        Set<String> dishes = new TreeSet<>();
        week.plan().menu().forEach(s -> s.recipe().filter(r -> items(r).contains(item)).ifPresent(dishes::add));
        return dishes;
    }

    long counted(String item, IsoWeek week) {
        Expectation.Had had = farms.of(item, week);
        return had.sure() + had.likely();
    }

    List<Season.Gap> gaps(List<Season.Demand> demands) {
        List<Season.Gap> gaps = new ArrayList<>();
        for (Season.Demand d : demands) {
            Season.Gap open = null;
            for (PlannedWeek week : weeks) {
                long mg = d.wanted().getOrDefault(week.week(), 0L);
                if (mg > 0 && counted(d.item(), week.week()) == 0) {
                    open = open == null ? new Season.Gap(d.item(), week.week(), week.week(), mg, List.copyOf(dishes(week, d.item())))
                            : new Season.Gap(d.item(), open.from(), week.week(), open.mg() + mg, both(open.dishes(), dishes(week, d.item())));
                } else if (mg > 0 && open != null) {
                    gaps.add(open);
                    open = null;
                }
            }
            if (open != null) {
                gaps.add(open);
            }
        }
        return List.copyOf(gaps);
    }

    private static List<String> both(List<String> a, Set<String> b) {
        TreeSet<String> all = new TreeSet<>(a);
        all.addAll(b);
        return List.copyOf(all);
    }

    /** Seasons of the kitchen that some planned week is in, by name. */
    private Map<String, List<IsoWeek>> seasons() {
        Map<String, List<IsoWeek>> all = new TreeMap<>();
        for (Map.Entry<String, WeekRange> s : book.seasons().named().entrySet()) {
            List<IsoWeek> in = weeks.stream().map(PlannedWeek::week).filter(s.getValue()::holds).toList();
            if (!in.isEmpty()) {
                all.put(s.getKey(), in);
            }
        }
        return all;
    }

    List<Season.Lack> lacks() {
        List<Season.Lack> lacks = new ArrayList<>();
        Set<String> courses = new java.util.LinkedHashSet<>();
        book.kitchen().lines().stream().filter(l -> l.standing().isEmpty()).forEach(l -> courses.add(l.course()));
        seasons().forEach((season, in) -> {
            for (String course : courses) {
                lack(season, course + " dishes", (int) dishes(course, in).count(), turned(course), lacks);
            }
            for (Promises.Coverage c : book.kitchen().promises().coverage()) {
                c.course().ifPresent(course -> lack(season, c.say(), (int) dishes(course, in).filter(r -> DishStatement.of(book, r.id()).keeps(c))
                        .count(), (int) Math.ceil(c.atLeast() * openDaysInGap()), lacks));
            }
        });
        return List.copyOf(lacks);
    }

    private static void lack(String season, String kind, int have, int need, List<Season.Lack> lacks) {
        if (have < need) {
            lacks.add(new Season.Lack(season, kind, have, need));
        }
    }

    private double openDaysInGap() {
        return book.kitchen().open().size() * book.kitchen().gapDays() / 7.0;
    }

    /** Dishes that the lines of a course begin within the days of the gap. */
    private int turned(String course) {
        return (int) Math.ceil(book.kitchen().lines().stream().filter(l -> l.course().equals(course) && l.standing().isEmpty())
                .mapToDouble(l -> openDaysInGap() / l.runDays()).sum() - 1e-9);
    }

    /** In season in every planned week of it. */
    private java.util.stream.Stream<Recipe> dishes(String course, List<IsoWeek> in) {
        Set<String> lines = new HashSet<>();
        book.kitchen().lines().stream().filter(l -> l.course().equals(course) && l.standing().isEmpty()).map(Kitchen.ServiceLine::id)
                .forEach(lines::add);
        return book.recipes().values().stream().filter(Recipe::isDish).filter(r -> r.sale().orElseThrow().fits().stream()
                .anyMatch(f -> f.equals(course) || lines.contains(f))).filter(r -> in.stream().allMatch(w -> r.inSeason(w, book.seasons())));
    }

    List<Season.Unused> unused() {
        List<Season.Unused> unused = new ArrayList<>();
        Set<String> crops = new TreeSet<>();
        book.vendors().values().stream().filter(v -> v.kind() == croftboard.book.Vendor.Kind.GROWER)
                .forEach(v -> v.offers().forEach(o -> crops.add(o.item())));
        seasons().forEach((season, in) -> {
            Set<String> used = new HashSet<>();
            book.recipes().values().stream().filter(Recipe::isDish).filter(r -> in.stream().anyMatch(w -> r.inSeason(w, book.seasons())))
                    .forEach(r -> used.addAll(items(r.id())));
            crops.stream().filter(c -> !used.contains(c)).filter(c -> in.stream().anyMatch(w -> counted(c, w) > 0))
                    .forEach(c -> unused.add(new Season.Unused(season, c)));
        });
        return List.copyOf(unused);
    }

    /** Whether an ingredient is the fresh crop of a frozen one, by the book: a declared substitute, or {@code X-frozen} of {@code X}. */
    static boolean isFrozenOf(Ingredient frozen, Ingredient fresh) {
        boolean plant = frozen.origins().equals(Set.of(Ingredient.Origin.PLANT));
        return plant && frozen.storage() == Ingredient.Storage.FREEZER && fresh.storage() != Ingredient.Storage.FREEZER
                && (frozen.id().equals(fresh.id() + "-frozen") || fresh.substitutes().stream().anyMatch(s -> s.use().equals(frozen.id())));
    }
}
