package croftboard.plan;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Natives;
import croftboard.sourcing.Sourcing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Makes a rotation. Up to {@link #AS_ONE} weeks are one problem; more go by stretches of {@link #AHEAD} weeks, the first of
 * which is settled each time, so that time grows with the weeks and not faster. A cycle is planned once and then followed
 * block by block. Every week is settled in the end as a plan of its own, from what the weeks before leave. With steps in
 * place of time the same inputs give the same rotation, byte for byte. One object makes one rotation.
 */
public final class Rotator {
    /** Most weeks that are planned as one problem. */
    public static final int AS_ONE = 5;
    private static final int AHEAD = 3;
    private static final int MEND_ROUNDS = 2_000;
    private final Book book;
    private final Optional<LocalDateTime> now;
    private final RotationRequest request;
    private final List<IsoWeek> weeks;
    private final WeekChain chain;
    private final WeeksAccount sums = new WeeksAccount();
    private final NewDishes fresh;
    private final List<Rotation.Week> settled = new ArrayList<>();
    private final List<Rotation.Swap> swaps = new ArrayList<>();
    /** What a stretch thought of a week, by slot. */
    private final Map<IsoWeek, Map<String, String>> likely = new HashMap<>();
    private WeekPlan.Proof proof = new WeekPlan.Proof(Optional.empty(), Optional.empty(), "");

    /** @param now in the kitchen's zone: deliveries whose cut-off is before it are gone; empty: none is */
    public Rotator(Book book, Optional<LocalDateTime> now, RotationRequest request) {
        this.book = book;
        this.now = now;
        this.request = request;
        weeks = request.span().weeks();
        chain = new WeekChain(book);
        fresh = new NewDishes(request.served(), book.kitchen().newDishesPerMonth());
    }

    /** @throws IllegalStateException only for a fault of our own */
    public Rotation rotate() {
        Natives.startLoading();
        int count = weeks.size();
        if (request.cycle().isPresent()) {
            blocks(request.cycle().getAsInt());
        } else if (count <= AS_ONE) {
            window(0, count, count, MonthBudget.of(request.time(), request.steps()), true);
        } else {
            for (int w = 0; w <= count - AHEAD; w++) {
                window(w, AHEAD, w == count - AHEAD ? AHEAD : 1, stretch(w == 0 ? 4 : 1, count - AHEAD + 4), false);
            }
        }
        return rotation();
    }

    private void blocks(int size) {
        int blocks = (weeks.size() + size - 1) / size;
        for (int b = 0; b < blocks; b++) {
            int length = Math.min(size, weeks.size() - b * size);
            window(b * size, length, length, blocks == 1 ? MonthBudget.of(request.time(), request.steps())
                    : stretch(b == 0 ? 4 : 1, blocks + 3), blocks == 1);
        }
    }

    /** Of all the time or steps, so many of so many shares. */
    private MonthBudget stretch(int shares, int of) {
        return MonthBudget.ofStretch(request.time().multipliedBy(shares).dividedBy(of), request.steps().isPresent()
                ? java.util.OptionalLong.of(Math.max(1, request.steps().getAsLong() * shares / of)) : request.steps());
    }

    /** Plans weeks as one and settles the first of them. @param whole what is proved about them is proved of the rotation */
    private void window(int from, int length, int settle, MonthBudget budget, boolean whole) {
        List<IsoWeek> own = weeks.subList(from, from + length);
        request.progress().doing(length == weeks.size() ? "weeks " + own.get(0) + " to " + own.get(length - 1)
                : "weeks " + (from + 1) + " to " + (from + length) + " of " + weeks.size());
        List<WeekProblem> problems = new ArrayList<>();
        for (int w = 0; w < length; w++) {
            problems.add(built(from + w).problem());
        }
        List<WeekProblem> looked = followed(from, fresh.within(own, problems, request.seed()));
        if (request.cycle().isPresent() && from == 0 && length < weeks.size()) {
            looked = closed(looked, own);
        }
        JoinedWeeks joined = new JoinedWeeks(looked);
        WeekSolver.Solved solved = new MonthSolver(joined.problem, budget, request.seed() + from, ear(), request.stop())
                .solve(start(own, looked));
        for (int w = 0; w < length; w++) {
            Map<String, String> dishes = dishes(looked.get(w), joined.choiceOf(w, solved.choice()));
            likely.put(own.get(w), dishes);
            if (w < settle) {
                settle(from + w, dishes, joined.packsOf(w, solved.orders().packs()));
            }
        }
        if (whole) {
            proof = new WeekPlan.Proof(solved.orders().bestForMenu(), solved.bestAtAll(), "");
        }
    }

    /**
     * A cycle's last days meet its first ones again: the first weeks are settled by a search of their own, as far as the
     * gap reaches, and the last ones do not take up their dishes.
     */
    private List<WeekProblem> closed(List<WeekProblem> problems, List<IsoWeek> own) {
        int gap = book.kitchen().gapDays();
        int length = 7 * problems.size();
        JoinedWeeks joined = new JoinedWeeks(problems);
        int[] menu = new MonthSolver(joined.problem, stretch(1, 2 + weeks.size() / problems.size()), request.seed(), ear(),
                request.stop()).solve(start(own, problems)).choice();
        Map<Integer, Integer> first = new HashMap<>();
        List<WeekProblem> all = new ArrayList<>();
        for (int w = 0; w < problems.size(); w++) {
            int[] choice = joined.choiceOf(w, menu);
            List<WeekProblem.Slot> slots = new ArrayList<>();
            for (int s = 0; s < choice.length; s++) {
                WeekProblem.Slot slot = problems.get(w).slots().get(s);
                int day = slot.startDay() - Calendar.MONDAY + 7 * w;
                if (slot.free() && choice[s] >= 0 && day < gap - 1) {
                    WeekProblem.Candidate dish = slot.candidates().get(choice[s]);
                    first.merge(dish.dish(), day, Math::min);
                    slot = PricedChanges.with(slot, List.of(dish));
                } else if (slot.free() && day + gap > length) {
                    slot = PricedChanges.with(slot, slot.candidates().stream().filter(c -> !first.containsKey(c.dish())
                            || first.get(c.dish()) + length - day >= gap).toList());
                }
                slots.add(slot);
            }
            all.add(PricedChanges.with(problems.get(w), slots));
            likely.put(own.get(w), dishes(problems.get(w), choice));
        }
        return all;
    }

    private ProblemBuilder.Built built(int week) {
        IsoWeek of = weeks.get(week);
        return ProblemBuilder.build(RotationBook.of(book, week), of, Map.of(), chain.given(of, request.outside().apply(of)), now);
    }

    /** From the second block of a cycle on, leaving its dishes costs half of what an empty slot does. */
    private List<WeekProblem> followed(int from, List<WeekProblem> problems) {
        if (request.cycle().isEmpty() || from == 0) {
            return problems;
        }
        long cents = Math.max(book.kitchen().promises().change().value(), book.kitchen().promises().emptySlot().value() / 2);
        List<WeekProblem> all = new ArrayList<>();
        for (int w = 0; w < problems.size(); w++) {
            all.add(new PricedChanges(problems.get(w), cycleDishes(from + w), cents).problem);
        }
        return all;
    }

    private Map<String, String> cycleDishes(int week) {
        return settled.get(week % request.cycle().getAsInt()).plan().choices();
    }

    private int[] start(List<IsoWeek> own, List<WeekProblem> problems) {
        List<int[]> all = new ArrayList<>();
        for (int w = 0; w < own.size(); w++) {
            int week = weeks.indexOf(own.get(w));
            boolean follows = request.cycle().isPresent() && week >= request.cycle().getAsInt();
            all.add(numbers(problems.get(w), follows ? cycleDishes(week) : likely.getOrDefault(own.get(w), Map.of())));
        }
        return JoinedWeeks.joined(all);
    }

    private static int[] numbers(WeekProblem problem, Map<String, String> dishes) {
        return problem.slots().stream().mapToInt(s -> PricedChanges.number(s, dishes.get(s.id()))).toArray();
    }

    private static Map<String, String> dishes(WeekProblem problem, int[] choice) {
        Map<String, String> dishes = new TreeMap<>();
        for (int s = 0; s < choice.length; s++) {
            if (choice[s] >= 0) {
                WeekProblem.Slot slot = problem.slots().get(s);
                dishes.put(slot.id(), slot.candidates().get(choice[s]).recipe());
            }
        }
        return dishes;
    }

    /** A week becomes a plan of its own. */
    private void settle(int week, Map<String, String> dishes, int[] packs) {
        IsoWeek of = weeks.get(week);
        Given outside = request.outside().apply(of);
        Given given = chain.given(of, outside);
        ProblemBuilder.Built built = built(week);
        int[] choice = numbers(built.problem(), dishes);
        WeekPlan plan = plan(of, built, choice, packs);
        int[] last = packs;
        if (!plan.complete()) {
            Sourcing.Orders mended = new Sourcing(built.problem(), book.kitchen().promises().localShare().toDouble() / 2)
                    .better(choice, packs, request.seed(), MEND_ROUNDS);
            WeekPlan again = plan(of, built, choice, mended.packs());
            last = again.complete() ? mended.packs() : packs;
            plan = again.complete() ? again : plan;
        }
        if (request.cycle().isPresent() && week >= request.cycle().getAsInt()) {
            CycleSwaps.add(book, of, given, built.problem(), cycleDishes(week), plan.choices(), swaps);
        }
        chain.settle(built.problem(), of, given, outside, choice, last);
        sums.add(plan, built.problem());
        fresh.settle(plan);
        settled.add(new Rotation.Week(plan, given));
    }

    private WeekPlan plan(IsoWeek week, ProblemBuilder.Built built, int[] choice, int[] packs) {
        return new PlanAssembler(book, week, built, choice, packs, Standing.NOTHING).assemble(new WeekPlan.Inputs(request.seed(),
                request.steps().orElse(0), 0, 0, new TreeMap<>(), Optional.of(request.span().toString()), built.gone()),
                new WeekPlan.Proof(Optional.empty(), Optional.empty(), ""));
    }

    private Rotation rotation() {
        var account = sums.of(chain.left(weeks.get(weeks.size() - 1).monday().plusDays(Calendar.DAYS + 1 - Calendar.MONDAY)));
        long value = account.value();
        WeekPlan.Proof told = new WeekPlan.Proof(proof.bestForMenu().map(b -> Math.max(b, value)),
                proof.bestAtAll().map(b -> Math.max(b, value)), proof.how());
        return new Rotation(request.span(), book.fingerprint(), new Rotation.Inputs(request.seed(), request.steps().orElse(0),
                request.cycle().isPresent() ? Optional.of(request.cycle().getAsInt()) : Optional.empty(), fresh.limit()),
                List.copyOf(settled), account, sums.share(), told,
                VarietyCount.of(book, settled.stream().map(Rotation.Week::plan).toList()), fresh.list(), List.copyOf(swaps));
    }

    private WeekSolver.Listener ear() {
        return new WeekSolver.Listener() {
            @Override
            public void doing(String what) {
                request.progress().doing(what);
            }

            @Override
            public void better(WeekSolver.Solved solved) {
                request.progress().better(solved.orders().valueCents(), solved.complete());
            }
        };
    }
}
