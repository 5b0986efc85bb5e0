package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Promises;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.need.WeekProblem;
import croftboard.safety.DishStatement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The slots of a week: runs of every line, then the courses of events; each with the dishes that may stand there. */
final class SlotBuilder {
    private final Book book;
    private final Calendar calendar;
    private final WeekIndex index;
    private final Given given;
    private final Map<String, String> kept;
    private final CandidateBuilder candidates;
    private final Altered altered;
    private final Map<String, DishStatement> statements = new HashMap<>();
    final List<WeekProblem.Slot> slots = new ArrayList<>();
    /** Kept dishes that name no slot or no dish that may stand there, in words. */
    final List<String> keptFaults = new ArrayList<>();
    long eventCents;

    SlotBuilder(Book book, Calendar calendar, WeekIndex index, Given given, Map<String, String> kept,
            CandidateBuilder candidates, Altered altered) {
        this.book = book;
        this.altered = altered;
        this.calendar = calendar;
        this.index = index;
        this.given = given;
        this.kept = kept;
        this.candidates = candidates;
        List<Kitchen.ServiceLine> lines = book.kitchen().lines();
        for (int l = 0; l < lines.size(); l++) {
            addLine(lines.get(l), l);
        }
        for (Seasons.Event event : book.seasons().events()) {
            addEvent(event);
        }
        KeptDishes.check(kept, slots, book, keptFaults);
    }

    private void addLine(Kitchen.ServiceLine line, int number) {
        for (Run run : runs(line)) {
            String id = run.id;
            int[] days = run.days;
            boolean standing = line.standing().isPresent();
            List<Recipe> dishes = standing ? List.of(book.recipe(line.standing().get()))
                    : book.recipes().values().stream().filter(r -> mayStand(r, line, days[0])).toList();
            boolean fixed = kept.containsKey(id);
            if (fixed && book.recipes().containsKey(kept.get(id)) && book.recipe(kept.get(id)).isDish()) {
                dishes = List.of(book.recipe(kept.get(id)));
            }
            List<WeekProblem.Candidate> all = new ArrayList<>();
            for (Recipe dish : dishes) {
                long covers = covers(dish, line.course());
                candidates.forLine(dish, line, days, covers, fixed || standing, altered.madeAt(id)).ifPresent(all::add);
            }
            slots.add(new WeekProblem.Slot(id, number, days, !standing, book.kitchen().promises().emptySlot().value(),
                    !(fixed || standing) || all.isEmpty(), List.copyOf(all)));
        }
    }

    private record Run(String id, int[] days) { }

    /** The line's runs; one whose food is lost ends on the day before, and the rest of its days is a run of its own. */
    private List<Run> runs(Kitchen.ServiceLine line) {
        List<Run> runs = new ArrayList<>();
        for (int[] days : calendar.runs(line.runDays())) {
            String id = idOf(line, days[0]);
            int from = java.util.Optional.ofNullable(altered.again().get(id)).map(calendar::day).orElse(Integer.MAX_VALUE);
            int[] sold = java.util.Arrays.stream(days).filter(calendar::sold).toArray();
            runs.add(new Run(id, java.util.Arrays.stream(sold).filter(d -> d < from).toArray()));
            int[] rest = java.util.Arrays.stream(sold).filter(d -> d >= from).toArray();
            runs.add(new Run(rest.length == 0 ? "" : idOf(line, rest[0]), rest));
        }
        runs.removeIf(run -> run.days.length == 0);
        return runs;
    }

    private String idOf(Kitchen.ServiceLine line, int day) {
        return Calendar.shortName(calendar.weekday(day)) + "/" + line.id();
    }

    private boolean mayStand(Recipe recipe, Kitchen.ServiceLine line, int day) {
        if (!recipe.isDish()) {
            return false;
        }
        Recipe.Sale sale = recipe.sale().orElseThrow();
        boolean fits = sale.fits().contains(line.course()) || sale.fits().contains(line.id());
        return fits && recipe.inSeason(calendar.week(), book.seasons()) && given.served().stream()
                .noneMatch(s -> s.recipe().equals(recipe.id())
                        && Math.abs(calendar.day(s.start()) - day) < book.kitchen().gapDays());
    }

    /** A course that nobody cooks costs the promise and what its guests have paid. */
    private void addEvent(Seasons.Event event) {
        int day = calendar.day(event.date());
        if (day < Calendar.MONDAY || day >= Calendar.DAYS) {
            return;
        }
        eventCents += event.price().value() * event.guarantee();
        for (Seasons.Course course : event.menu()) {
            int portions = event.portions(course);
            String id = event.id() + "/" + course.id();
            java.util.Optional<String> fixed = java.util.Optional.ofNullable(kept.get(id)).or(course::dish);
            List<WeekProblem.Candidate> all = new ArrayList<>();
            for (Recipe dish : book.recipes().values()) {
                if (dish.isDish() && fixed.map(dish.id()::equals).orElseGet(() -> mayServe(dish, course))) {
                    candidates.forEvent(dish, day, portions, fixed.isPresent()).ifPresent(all::add);
                }
            }
            slots.add(new WeekProblem.Slot(id, book.kitchen().lines().size(), new int[] {day}, false,
                    book.kitchen().promises().emptySlot().value() + event.price().value() * portions,
                    fixed.isEmpty() || all.isEmpty(), List.copyOf(all)));
        }
    }

    private boolean mayServe(Recipe dish, Seasons.Course course) {
        return dish.isDish() && dish.sale().orElseThrow().fits().contains(course.course())
                && dish.inSeason(calendar.week(), book.seasons())
                && course.diet().map(d -> known(dish, d)).orElse(true);
    }

    private boolean known(Recipe dish, Promises.Diet diet) {
        DishStatement s = statement(dish);
        return (diet == Promises.Diet.VEGAN ? s.vegan() : s.vegetarian()) == DishStatement.Known.YES;
    }

    private DishStatement statement(Recipe dish) {
        Map<String, String> swaps = candidates.swaps(dish.id());
        return statements.computeIfAbsent(dish.id(),
                id -> DishStatement.planned(book, id, swaps));
    }

    /** Bit k: the dish counts for coverage promise k. */
    private long covers(Recipe dish, String course) {
        long bits = 0;
        List<Promises.Coverage> promises = book.kitchen().promises().coverage();
        for (int k = 0; k < promises.size(); k++) {
            Promises.Coverage p = promises.get(k);
            if (p.course().map(course::equals).orElse(true) && statement(dish).keeps(p)) {
                bits |= 1L << k;
            }
        }
        return bits;
    }
}
