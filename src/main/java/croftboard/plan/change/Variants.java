package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import croftboard.plan.Altered;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import croftboard.plan.WeekPlan;
import croftboard.safety.DishStatement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Other ways of keeping a dish of the plan where it stands: with its declared substitute, or in fewer portions. Each is one
 * more choice of its slot beside the dish as planned.
 */
final class Variants {
    /** What a cook would try: three quarters, then a half; common practice, no source. */
    private static final List<Ratio> SHARES = List.of(Ratio.of(3, 4), Ratio.of(1, 2));
    private final Book book;
    private final WeekPlan plan;
    private final Given given;
    private final Altered altered;
    private final WeekProblem problem;
    private final int openDay;
    private final boolean accept;
    private final List<WeekProblem.Slot> slots;
    private final Map<Integer, Map<Integer, Variant>> found = new HashMap<>();

    /** @param openDay first day on which anything can still be changed. @param accept statements may change */
    Variants(Book book, WeekPlan plan, Given given, Altered altered, WeekProblem problem, int openDay, boolean accept) {
        this.book = book;
        this.plan = plan;
        this.given = given;
        this.altered = altered;
        this.problem = problem;
        this.openDay = openDay;
        this.accept = accept;
        this.slots = new ArrayList<>(problem.slots());
    }

    /**
     * @param fewer share of the portions, where fewer are made
     * @param swaps substitutes by ingredient, where there are any
     * @param newStatement the substitute changes what must be said of the dish
     */
    record Variant(Optional<Ratio> fewer, Map<String, String> swaps, boolean newStatement) { }

    /** Slot and number of candidate of each variant. */
    Map<Integer, Map<Integer, Variant>> found() {
        return found;
    }

    /** @param concerned items that are short. @return the problem with the variants added */
    WeekProblem add(Set<String> concerned) {
        substitutes(concerned);
        for (Ratio share : SHARES) {
            fewer(share);
        }
        return Problems.withSlots(problem, slots);
    }

    private Optional<WeekProblem.Candidate> own(WeekProblem.Slot slot) {
        String planned = plan.choices().get(slot.id());
        return slot.candidates().stream().filter(c -> c.recipe().equals(planned)).findFirst();
    }

    private Optional<WeekPlan.Served> row(WeekProblem.Slot slot) {
        return plan.menu().stream().filter(r -> r.slot().equals(slot.id())).findFirst();
    }

    private WeekProblem rebuilt(Map<String, SortedMap<LocalDate, Ratio>> made, Map<String, Map<String, String>> swaps) {
        return ProblemBuilder.build(book, plan.week(), plan.choices(), given, LostProduction.asOf(plan),
                new Altered(altered.notSold(), made, altered.again(), swaps)).problem();
    }

    private void take(WeekProblem other, Map<String, Variant> which) {
        for (int s = 0; s < slots.size(); s++) {
            WeekProblem.Slot slot = slots.get(s);
            Optional<WeekProblem.Candidate> before = own(slot);
            if (which.containsKey(slot.id()) && before.isPresent()) {
                int at = s;
                other.slots().stream().filter(x -> x.id().equals(slot.id())).flatMap(x -> x.candidates().stream())
                        .filter(c -> c.recipe().equals(before.get().recipe()) && !c.needs().equals(before.get().needs())
                                && pastIsTheSame(before.get(), c)).findFirst()
                        .ifPresent(c -> put(at, c, which.get(slot.id())));
            }
        }
    }

    private void put(int s, WeekProblem.Candidate c, Variant variant) {
        WeekProblem.Slot slot = slots.get(s);
        List<WeekProblem.Candidate> all = new ArrayList<>(slot.candidates());
        found.computeIfAbsent(s, k -> new HashMap<>()).put(all.size(), variant);
        all.add(c);
        slots.set(s, new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(), slot.emptyCents(),
                slot.mayBeEmpty(), all));
    }

    /** What is thawed, cut or cooked already cannot be taken back. */
    private boolean pastIsTheSame(WeekProblem.Candidate a, WeekProblem.Candidate b) {
        return a.needs().stream().filter(n -> n.day() < openDay).toList()
                .equals(b.needs().stream().filter(n -> n.day() < openDay).toList())
                && a.uses().stream().filter(n -> n.day() < openDay).toList()
                        .equals(b.uses().stream().filter(n -> n.day() < openDay).toList())
                && a.demands().stream().filter(n -> n.useDay() < openDay).toList()
                        .equals(b.demands().stream().filter(n -> n.useDay() < openDay).toList());
    }

    private void fewer(Ratio share) {
        Map<String, SortedMap<LocalDate, Ratio>> made = new HashMap<>(altered.made());
        Map<String, Variant> which = new TreeMap<>();
        for (WeekProblem.Slot slot : problem.slots()) {
            Optional<WeekProblem.Candidate> own = own(slot);
            if (own.isEmpty() || !book.recipes().containsKey(own.get().recipe())) {
                continue;
            }
            Recipe recipe = book.recipe(own.get().recipe());
            SortedMap<LocalDate, Ratio> batches = new TreeMap<>(made.getOrDefault(slot.id(), new TreeMap<>()));
            boolean less = false;
            for (WeekProblem.Production p : own.get().productions()) {
                Ratio now = p.batches().times(share).ceilTo(recipe.batchStep());
                if (p.day() >= openDay && now.compareTo(p.batches()) < 0) {
                    batches.put(problem.firstDay().plusDays(p.day()), now);
                    less = true;
                }
            }
            if (less) {
                made.put(slot.id(), batches);
                which.put(slot.id(), new Variant(Optional.of(share), Map.of(), false));
            }
        }
        if (!which.isEmpty()) {
            take(rebuilt(made, altered.swaps()), which);
        }
    }

    private void substitutes(Set<String> concerned) {
        Map<String, Map<String, String>> swaps = new TreeMap<>(altered.swaps());
        Map<String, Variant> which = new TreeMap<>();
        for (WeekProblem.Slot slot : problem.slots()) {
            Optional<WeekProblem.Candidate> own = own(slot);
            boolean open = row(slot).map(r -> !altered.made().containsKey(slot.id())
                    && own.isPresent() && own.get().productions().stream().allMatch(p -> p.day() >= openDay)).orElse(false);
            if (!open || !book.recipes().containsKey(own.get().recipe()) || !standsOnce(slot, own.get().dish())
                    || isPart(own.get().recipe())) {
                continue;
            }
            Map<String, String> replaced = replaced(own.get().recipe(), concerned);
            if (!replaced.isEmpty()) {
                Map<String, String> all = new TreeMap<>(swaps.getOrDefault(own.get().recipe(), Map.of()));
                boolean changes = !sameStatement(own.get().recipe(), all, replaced);
                all.putAll(replaced);
                swaps.put(own.get().recipe(), all);
                which.put(slot.id(), new Variant(Optional.empty(), replaced, changes));
            }
        }
        if (!which.isEmpty()) {
            take(rebuilt(altered.made(), swaps), which);
        }
    }

    /** One dish has one statement in a week: a dish that may stand in two places keeps its own ingredients. */
    private boolean standsOnce(WeekProblem.Slot at, int dish) {
        return problem.slots().stream().filter(s -> !s.id().equals(at.id()))
                .filter(s -> !s.free() || !at.free() || Math.abs(s.startDay() - at.startDay()) >= problem.prices().gapDays())
                .noneMatch(s -> s.candidates().stream().anyMatch(c -> c.dish() == dish));
    }

    /** A dish that others are made of as well keeps its ingredients: what is said of those others would change with it. */
    private boolean isPart(String recipe) {
        return book.recipes().values().stream().anyMatch(r -> r.ingredients().stream().anyMatch(l -> l.item().equals(recipe)));
    }

    /** For each line of the dish itself whose ingredient is short: the first declared substitute that may be used. */
    private Map<String, String> replaced(String recipe, Set<String> concerned) {
        Map<String, String> all = new TreeMap<>();
        Set<String> seen = new HashSet<>();
        for (Recipe.Line line : book.recipe(recipe).ingredients()) {
            Ingredient own = book.ingredients().get(line.item());
            if (own != null && concerned.contains(own.id()) && !own.isStaple() && seen.add(own.id())) {
                own.substitutes().stream().map(Ingredient.Substitute::use).filter(use -> !concerned.contains(use))
                        .filter(use -> accept || sameStatement(recipe, altered.swaps().getOrDefault(recipe, Map.of()),
                                Map.of(own.id(), use))).findFirst().ifPresent(use -> all.put(own.id(), use));
            }
        }
        return all;
    }

    private boolean sameStatement(String recipe, Map<String, String> before, Map<String, String> more) {
        Map<String, String> now = new TreeMap<>(before);
        now.putAll(more);
        return DishStatement.planned(book, recipe, everyLine(now)).sameFor(DishStatement.planned(book, recipe,
                everyLine(before)));
    }

    static Map<String, String> everyLine(Map<String, String> swaps) {
        Map<String, String> all = new TreeMap<>();
        swaps.forEach((item, use) -> all.put(item + DishStatement.EVERY_LINE, use));
        return all;
    }
}
