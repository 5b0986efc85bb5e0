package croftboard.plan;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Natives;
import croftboard.sourcing.Sourcing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * A rotation in a book whose facts have changed. Weeks go in order, with what the weeks before now leave. Each keeps its
 * dishes and changes as few packs as it must; where something can then not be had, dishes give way, each change priced as
 * the kitchen prices changes. One object answers once.
 */
public final class ChangedFacts {
    private static final int ROUNDS = 400;
    private final Book book;
    private final Rotation rotation;
    private final Function<IsoWeek, Given> outside;
    private final Optional<LocalDateTime> now;
    private final long steps;
    private final BooleanSupplier stop;
    private final WeekChain chain;

    /**
     * @param book with the changed facts
     * @param outside what plans outside the rotation have decided for a week
     * @param steps menus that are looked at in a week where dishes must give way
     */
    public ChangedFacts(Book book, Rotation rotation, Function<IsoWeek, Given> outside, Optional<LocalDateTime> now, long steps,
            BooleanSupplier stop) {
        this.book = book;
        this.rotation = rotation;
        this.outside = outside;
        this.now = now;
        this.steps = steps;
        this.stop = stop;
        this.chain = new WeekChain(book);
    }

    public RotationChange change() {
        Natives.startLoading();
        List<RotationChange.Week> weeks = new ArrayList<>();
        for (int w = 0; w < rotation.weeks().size(); w++) {
            WeekPlan was = rotation.weeks().get(w).plan();
            Settled is = settled(w, was);
            List<RotationChange.Dish> dishes = dishes(was, is.plan);
            List<RotationChange.Packs> packs = packs(was, is.plan);
            boolean same = dishes.isEmpty() && packs.stream().allMatch(p -> p.was() == p.is() && p.cents() == 0);
            if (!same) {
                weeks.add(new RotationChange.Week(was.week(), was, is.plan, dishes, packs));
            }
        }
        return new RotationChange(List.copyOf(weeks), weeks.stream().mapToLong(x -> x.was().value()).sum(),
                weeks.stream().mapToLong(x -> x.is().value()).sum());
    }

    private record Settled(int[] choice, int[] packs, WeekPlan plan) { }

    private Settled settled(int week, WeekPlan was) {
        IsoWeek of = was.week();
        Given others = outside.apply(of);
        Given given = chain.given(of, others);
        ProblemBuilder.Built built = ProblemBuilder.build(RotationBook.of(book, week), of, Map.of(), given, now);
        WeekProblem problem = built.problem();
        int[] choice = problem.slots().stream().mapToInt(s -> PricedChanges.number(s, was.choices().get(s.id()))).toArray();
        int[] wanted = wanted(problem, was);
        int[] packs = new int[wanted.length];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            packs[o] = Math.max(offer.minPacks(), Math.min(offer.maxPacks(), wanted[o]));
        }
        Settled kept = assembled(built, of, choice, packs);
        boolean cut = !java.util.Arrays.equals(wanted, packs) || was.orders().stream().flatMap(o -> o.lines().stream())
                .mapToInt(WeekPlan.OrderLine::packs).sum() != java.util.Arrays.stream(packs).sum();
        if (cut || !kept.plan.complete()) {
            Sourcing.Orders orders = new Sourcing(problem, book.kitchen().promises().localShare().toDouble() / 2)
                    .better(choice, packs, 1, ROUNDS);
            Settled again = assembled(built, of, choice, orders.packs());
            kept = better(kept, again) ? again : kept;
        }
        if (!kept.plan.complete()) {
            Settled other = otherDishes(built, was);
            kept = better(kept, other) ? other : kept;
        }
        chain.settle(problem, of, given, others, kept.choice, kept.packs);
        return kept;
    }

    /** Complete before incomplete, then by value. */
    private static boolean better(Settled than, Settled is) {
        return than.plan.complete() != is.plan.complete() ? is.plan.complete() : is.plan.value() > than.plan.value();
    }

    private Settled otherDishes(ProblemBuilder.Built built, WeekPlan was) {
        PricedChanges priced = new PricedChanges(built.problem(), was.choices(), Math.max(1, book.kitchen().promises().change().value()));
        int[] start = built.problem().slots().stream().mapToInt(s -> PricedChanges.number(s, was.choices().get(s.id()))).toArray();
        WeekSolver.Solved solved = new WeekSolver(priced.problem, Budget.of(java.time.Duration.ZERO, OptionalLong.of(steps)), 1,
                new Unheard(), stop).solve(start);
        return assembled(built, was.week(), solved.choice(), solved.orders().packs());
    }

    private Settled assembled(ProblemBuilder.Built built, IsoWeek week, int[] choice, int[] packs) {
        WeekPlan plan = new PlanAssembler(book, week, built, choice, packs).assemble(new WeekPlan.Inputs(1, steps, 0, 0, new TreeMap<>(),
                Optional.of(rotation.span().toString()), built.gone()), new WeekPlan.Proof(Optional.empty(), Optional.empty(), ""));
        return new Settled(choice, packs, plan);
    }

    /** The rotation's packs by the problem's offers. */
    private static int[] wanted(WeekProblem problem, WeekPlan plan) {
        int[] packs = new int[problem.offers().size()];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            WeekProblem.Delivery delivery = problem.deliveries().get(offer.delivery());
            LocalDate date = problem.firstDay().plusDays(delivery.day());
            String item = problem.items().get(offer.item()).id();
            packs[o] = plan.orders().stream().filter(x -> x.vendor().equals(offer.vendor()) && x.delivery().equals(date))
                    .flatMap(x -> x.lines().stream()).filter(l -> l.item().equals(item) && l.pack().equals(offer.pack()))
                    .mapToInt(WeekPlan.OrderLine::packs).sum();
        }
        return packs;
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
        plan.orders().forEach(o -> o.lines().forEach(l -> all.merge(o.vendor() + "\n" + l.item() + "\n" + l.pack(),
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
