package croftboard.plan.ask;

import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.PlanPacks;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Why a dish stands in a slot: the week with nothing there, and the week with each other dish there. Every other dish gets
 * orders near the plan's; the best few of them a search, the best of these the exact program.
 */
public final class WhyDish {
    private static final int SEARCHED = 6;
    private static final int EXACT = 3;
    private static final int ROUNDS = 400;
    private static final int NODES = 20;
    private final Question question;
    private final ChangedWeek week;
    private final WeekProblem problem;
    private final int[] packs;

    public WhyDish(Question question) {
        this.question = question;
        this.week = question.asItIs();
        this.problem = week.built().problem();
        this.packs = PlanPacks.of(problem, question.plan());
    }

    /** @throws Unanswerable when the plan has no such slot, or nothing stands there */
    public Why.Dish of(String slot) {
        WeekPlan plan = question.plan();
        WeekPlan.Served row = plan.menu().stream().filter(r -> r.slot().equals(slot)).findFirst().orElseThrow(() ->
                new Unanswerable("this plan has no place " + slot + " -> one of " + String.join(", ", plan.menu().stream()
                        .map(WeekPlan.Served::slot).toList())));
        int s = IntStream.range(0, problem.slots().size()).filter(n -> problem.slots().get(n).id().equals(slot)).findFirst()
                .orElseThrow(() -> new Unanswerable("nothing is sold any more on " + slot + " -> a day still to come"));
        if (row.recipe().isEmpty() || week.start()[s] < 0) {
            throw new Unanswerable("nothing stands on " + slot + " -> croftboard why-not " + plan.week() + " " + slot + " DISH");
        }
        return of(row, s);
    }

    private Why.Dish of(WeekPlan.Served row, int s) {
        boolean made = week.standing().rows().containsKey(row.slot());
        int[] empty = with(s, -1);
        WeekRun.Found without = Nearby.better(WeekRun.near(problem, empty, packs), WeekRun.orders(problem, empty, 1, ROUNDS));
        Account now = Account.of(problem, week.start(), packs);
        Account then = Account.of(problem, empty, without.packs());
        List<Why.Other> others = made ? List.of() : others(s, now);
        return new Why.Dish(row, made, row.kept(), now, then, minutes(empty), promises(now, then), usedUp(empty), others,
                made ? 0 : problem.slots().get(s).candidates().size() - 1, made ? 0 : tooNear(s));
    }

    private int tooNear(int s) {
        WeekProblem.Slot slot = problem.slots().get(s);
        return (int) IntStream.range(0, slot.candidates().size()).filter(k -> k != week.start()[s]
                && IntStream.range(0, problem.slots().size()).anyMatch(o -> o != s && Forced.near(problem, s, o, with(s, k)))).count();
    }

    private int[] with(int s, int k) {
        int[] menu = week.start().clone();
        menu[s] = k;
        return menu;
    }

    private List<Why.Minutes> minutes(int[] empty) {
        long[][] with = Workload.of(problem, week.start()).used();
        long[][] without = Workload.of(problem, empty).used();
        List<Why.Minutes> all = new ArrayList<>();
        for (int r = 0; r < with.length; r++) {
            long more = sum(with[r]) - sum(without[r]);
            if (problem.resources().get(r).hands() && more != 0) {
                all.add(new Why.Minutes(problem.resources().get(r).name(), more));
            }
        }
        return all;
    }

    private static long sum(long[] all) {
        return java.util.Arrays.stream(all).sum();
    }

    /** Promises that cost more without the dish; the empty place itself is told apart. */
    private List<WeekPlan.Promise> promises(Account with, Account without) {
        List<WeekPlan.Promise> was = WeekRun.promises(question.book(), problem, with);
        return WeekRun.promises(question.book(), problem, without).stream()
                .filter(p -> !p.kept() && !p.id().equals("filled-lines"))
                .filter(p -> p.cents() > cost(was, p)).map(p -> new WeekPlan.Promise(p.id(), p.say(), p.day(), false,
                        p.amount(), p.cents() - cost(was, p))).toList();
    }

    private static long cost(List<WeekPlan.Promise> all, WeekPlan.Promise like) {
        return all.stream().filter(p -> p.id().equals(like.id()) && p.day().equals(like.day()))
                .mapToLong(WeekPlan.Promise::cents).sum();
    }

    /** With the packs as they are: what of them would be left over more. */
    private List<Why.UsedUp> usedUp(int[] empty) {
        Buying with = Buying.of(problem, Workload.of(problem, week.start()).needMg(), packs);
        Buying without = Buying.of(problem, Workload.of(problem, empty).needMg(), packs);
        List<Why.UsedUp> all = new ArrayList<>();
        for (int i = 0; i < problem.items().size(); i++) {
            long more = without.keptMg()[i] + without.wastedMg()[i] - with.keptMg()[i] - with.wastedMg()[i];
            if (more > 0) {
                all.add(new Why.UsedUp(problem.items().get(i).id(), more));
            }
        }
        all.sort(Comparator.comparingLong((Why.UsedUp u) -> -u.mg()).thenComparing(Why.UsedUp::item));
        return all;
    }

    private List<Why.Other> others(int s, Account now) {
        WeekProblem.Slot slot = problem.slots().get(s);
        WeekProblem.Slot open = new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(), slot.emptyCents(),
                true, slot.candidates());
        List<WeekProblem.Slot> slots = new ArrayList<>(problem.slots());
        slots.set(s, open);
        WeekProblem free = Problems.withSlots(problem, slots);
        List<WeekRun.Found> found = IntStream.range(0, slot.candidates().size()).filter(k -> k != week.start()[s]).parallel()
                .mapToObj(k -> WeekRun.near(free, with(s, k), packs)).filter(WeekRun.Found::complete).toList();
        List<WeekRun.Found> best = found.stream().sorted(bestFirst()).limit(SEARCHED)
                .map(f -> Nearby.better(f, WeekRun.orders(free, f.choice(), 1, ROUNDS)))
                .map(f -> new MendedPacks(free, f.choice(), packs).all().stream().reduce(f, Nearby::better)).sorted(bestFirst()).limit(EXACT)
                .map(f -> Nearby.better(f, WeekRun.exact(free, f, NODES))).sorted(bestFirst()).toList();
        return best.stream().map(f -> other(slot.candidates().get(f.choice()[s]).recipe(), f, now)).toList();
    }

    private static Comparator<WeekRun.Found> bestFirst() {
        return Comparator.comparingLong((WeekRun.Found f) -> -f.valueCents())
                .thenComparing(f -> java.util.Arrays.toString(f.choice()));
    }

    private Why.Other other(String recipe, WeekRun.Found found, Account now) {
        Account then = Account.of(problem, found.choice(), found.packs());
        long sales = then.sales() + then.left() - now.sales() - now.left();
        long food = Food.cost(now) - Food.cost(then);
        long promises = now.brokenCents() - then.brokenCents();
        long lose = now.value() - then.value();
        return new Why.Other(recipe, lose, sales, food, promises, -lose - sales - food - promises,
                found.bestForMenu().map(b -> b - found.valueCents() <= 1).orElse(false));
    }
}
