package croftboard.plan;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Natives;
import croftboard.sourcing.Sourcing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * A rotation in a book whose facts have changed. All weeks are looked at as one. The dishes stay, and so do the packs of
 * every item that the facts leave alone; only if something can then not be had are other packs looked at, and last other
 * dishes, each change priced as the kitchen prices changes. One object answers once.
 */
public final class ChangedFacts {
    private static final int ROUNDS = 300;
    private static final int NODES = 40;
    private final Book book;
    private final Rotation rotation;
    private final Function<IsoWeek, Given> outside;
    private final Optional<LocalDateTime> now;
    private final long steps;
    private final BooleanSupplier stop;
    private final List<WeekPlan> plans;

    /**
     * @param book with the changed facts
     * @param outside what plans outside the rotation have decided for a week
     * @param steps menus that are looked at where dishes must give way
     */
    public ChangedFacts(Book book, Rotation rotation, Function<IsoWeek, Given> outside, Optional<LocalDateTime> now, long steps,
            BooleanSupplier stop) {
        this.book = book;
        this.rotation = rotation;
        this.outside = outside;
        this.now = now;
        this.steps = steps;
        this.stop = stop;
        this.plans = rotation.weeks().stream().map(Rotation.Week::plan).toList();
    }

    public RotationChange change() {
        Natives.startLoading();
        List<WeekProblem> problems = new ArrayList<>();
        for (int w = 0; w < plans.size(); w++) {
            problems.add(built(w, outside.apply(plans.get(w).week())).problem());
        }
        JoinedWeeks joined = new JoinedWeeks(problems);
        WeekProblem whole = joined.problem;
        int[] choice = whole.slots().isEmpty() ? new int[0] : dishes(problems);
        int[] wanted = wanted(whole);
        int[] packs = clamped(whole, wanted);
        Set<Integer> touched = touched(whole, wanted, packs);
        if (touched.isEmpty()) {
            return new RotationChange(List.of(), rotation.value(), rotation.value());
        }
        double local = book.kitchen().promises().localShare().toDouble() / 2;
        Sourcing few = new Sourcing(pinned(whole, touched, packs), local);
        Sourcing.Orders mended = few.exact(choice, few.better(choice, packs, 1, ROUNDS), 0, NODES);
        Chained best = chained(joined, choice, mended.packs());
        if (!best.complete()) {
            best = better(best, chained(joined, choice, new Sourcing(whole, local).better(choice, packs, 1, ROUNDS).packs()));
        }
        if (!best.complete()) {
            best = better(best, otherDishes(joined, problems, choice));
        }
        return told(best);
    }

    private ProblemBuilder.Built built(int week, Given given) {
        return ProblemBuilder.build(RotationBook.of(book, week), plans.get(week).week(), Map.of(), given, now);
    }

    private int[] dishes(List<WeekProblem> problems) {
        List<int[]> all = new ArrayList<>();
        for (int w = 0; w < problems.size(); w++) {
            Map<String, String> dishes = plans.get(w).choices();
            all.add(problems.get(w).slots().stream().mapToInt(s -> PricedChanges.number(s, dishes.get(s.id()))).toArray());
        }
        return JoinedWeeks.joined(all);
    }

    /** The rotation's packs by the problem's offers. */
    private int[] wanted(WeekProblem problem) {
        Map<List<Object>, Integer> ordered = new HashMap<>();
        plans.forEach(p -> p.orders().forEach(o -> o.lines().forEach(l -> ordered.merge(key(o, l), l.packs(), Integer::sum))));
        return problem.offers().stream().mapToInt(o -> ordered.getOrDefault(key(problem, o), 0)).toArray();
    }

    private static List<Object> key(WeekPlan.Order order, WeekPlan.OrderLine line) {
        return List.of(order.vendor(), order.delivery(), line.item(), line.pack());
    }

    private static List<Object> key(WeekProblem problem, WeekProblem.Offer offer) {
        return List.of(offer.vendor(), problem.firstDay().plusDays(problem.deliveries().get(offer.delivery()).day()),
                problem.items().get(offer.item()).id(), offer.pack());
    }

    private static int[] clamped(WeekProblem problem, int[] wanted) {
        int[] packs = new int[wanted.length];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            packs[o] = Math.max(offer.minPacks(), Math.min(offer.maxPacks(), wanted[o]));
        }
        return packs;
    }

    /** Items of which something that was ordered is not there any more, or has another price. */
    private Set<Integer> touched(WeekProblem problem, int[] wanted, int[] packs) {
        Map<List<Object>, Integer> offers = new HashMap<>();
        for (int o = 0; o < packs.length; o++) {
            offers.put(key(problem, problem.offers().get(o)), o);
        }
        Map<String, Integer> number = new HashMap<>();
        for (int i = 0; i < problem.items().size(); i++) {
            number.put(problem.items().get(i).id(), i);
        }
        Set<Integer> touched = new TreeSet<>();
        for (WeekPlan plan : plans) {
            for (WeekPlan.Order order : plan.orders()) {
                for (WeekPlan.OrderLine line : order.lines()) {
                    Integer o = offers.get(key(order, line));
                    boolean same = o != null && packs[o] == wanted[o] && problem.offers().get(o).priceCents(wanted[o]) == line.price();
                    if (!same && number.containsKey(line.item())) {
                        touched.add(number.get(line.item()));
                    }
                }
            }
        }
        return touched;
    }

    /** Packs of all other items stay. */
    private static WeekProblem pinned(WeekProblem problem, Set<Integer> touched, int[] packs) {
        List<WeekProblem.Offer> offers = new ArrayList<>();
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            offers.add(touched.contains(offer.item()) ? offer : offer.pinned(packs[o]));
        }
        return problem.withOffers(offers);
    }

    private Chained otherDishes(JoinedWeeks joined, List<WeekProblem> problems, int[] start) {
        long price = Math.max(1, book.kitchen().promises().change().value());
        List<WeekProblem> priced = new ArrayList<>();
        for (int w = 0; w < problems.size(); w++) {
            priced.add(new PricedChanges(problems.get(w), plans.get(w).choices(), price).problem);
        }
        WeekSolver.Solved solved = new MonthSolver(new JoinedWeeks(priced).problem, MonthBudget.ofStretch(java.time.Duration.ZERO,
                OptionalLong.of(steps)), 1, new Unheard(), stop).solve(start);
        return chained(joined, solved.choice(), solved.orders().packs());
    }

    /** @param value of all weeks as one: cents */
    private record Chained(List<WeekPlan> plans, long value) {
        boolean complete() {
            return plans.stream().allMatch(WeekPlan::complete);
        }
    }

    /** Complete before incomplete, then by value. */
    private static Chained better(Chained a, Chained b) {
        return a.complete() != b.complete() ? (a.complete() ? a : b) : b.value > a.value ? b : a;
    }

    /** Each week a plan of its own, from what the weeks before leave. */
    private Chained chained(JoinedWeeks joined, int[] choice, int[] packs) {
        WeekChain chain = new WeekChain(book);
        WeeksAccount sums = new WeeksAccount();
        List<WeekPlan> all = new ArrayList<>();
        for (int w = 0; w < plans.size(); w++) {
            IsoWeek of = plans.get(w).week();
            Given others = outside.apply(of);
            Given given = chain.given(of, others);
            ProblemBuilder.Built built = built(w, given);
            int[] own = joined.packsOf(w, packs);
            int[] dishes = renumbered(joined.choiceOf(w, choice), joined.problem, w, built.problem(), choice);
            WeekPlan plan = new PlanAssembler(book, of, built, dishes, own, Standing.NOTHING).assemble(new WeekPlan.Inputs(1, steps, 0, 0, new TreeMap<>(),
                    Optional.of(rotation.span().toString()), built.gone()), new WeekPlan.Proof(Optional.empty(), Optional.empty(), ""));
            chain.settle(built.problem(), of, given, others, dishes, own);
            sums.add(plan, built.problem());
            all.add(plan);
        }
        IsoWeek last = plans.get(plans.size() - 1).week();
        return new Chained(List.copyOf(all), sums.of(chain.left(last.monday().plusDays(Calendar.DAYS + 1 - Calendar.MONDAY))).value());
    }

    /** By the week's own numbers: what earlier weeks have served leaves fewer dishes to choose from. */
    private int[] renumbered(int[] own, WeekProblem whole, int week, WeekProblem problem, int[] choice) {
        int[] dishes = new int[own.length];
        int first = 0;
        while (first < whole.slots().size() && whole.slots().get(first).line() / 1000 < week) {
            first++;
        }
        for (int s = 0; s < own.length; s++) {
            WeekProblem.Slot slot = whole.slots().get(first + s);
            dishes[s] = own[s] < 0 ? -1 : PricedChanges.number(problem.slots().get(s), slot.candidates().get(choice[first + s]).recipe());
        }
        return dishes;
    }

    private RotationChange told(Chained is) {
        List<RotationChange.Week> weeks = new ArrayList<>();
        for (int w = 0; w < plans.size(); w++) {
            WeekPlan was = plans.get(w);
            WeekPlan now = is.plans.get(w);
            List<RotationChange.Dish> dishes = dishes(was, now);
            List<RotationChange.Packs> packs = packs(was, now);
            if (!dishes.isEmpty() || !packs.isEmpty() || was.complete() != now.complete()) {
                weeks.add(new RotationChange.Week(was.week(), was, now, dishes, packs));
            }
        }
        return new RotationChange(List.copyOf(weeks), rotation.value(), is.value);
    }

    private static List<RotationChange.Dish> dishes(WeekPlan was, WeekPlan is) {
        List<RotationChange.Dish> dishes = new ArrayList<>();
        for (WeekPlan.Served s : was.menu()) {
            Optional<String> now = Optional.ofNullable(is.choices().get(s.slot()));
            if (!now.equals(s.recipe())) {
                dishes.add(new RotationChange.Dish(s.slot(), s.recipe(), now));
            }
        }
        return dishes;
    }

    private static List<RotationChange.Packs> packs(WeekPlan was, WeekPlan is) {
        SortedMap<String, RotationChange.Packs> all = new TreeMap<>();
        add(was, -1, all);
        add(is, 1, all);
        return all.values().stream().filter(p -> p.was() != p.is() || p.cents() != 0).toList();
    }

    private static void add(WeekPlan plan, int sign, SortedMap<String, RotationChange.Packs> all) {
        plan.orders().forEach(o -> o.lines().forEach(l -> all.merge(l.item() + "\n" + o.vendor() + "\n" + l.pack(),
                new RotationChange.Packs(o.vendor(), l.item(), l.pack(), sign < 0 ? l.packs() : 0, sign < 0 ? 0 : l.packs(), sign * l.cost()),
                (a, b) -> new RotationChange.Packs(a.vendor(), a.item(), a.pack(), a.was() + b.was(), a.is() + b.is(), a.cents() + b.cents()))));
    }

    private static final class Unheard implements WeekSolver.Listener {
        @Override
        public void doing(String what) { }

        @Override
        public void better(WeekSolver.Solved solved) { }
    }
}
