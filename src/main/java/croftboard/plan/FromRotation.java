package croftboard.plan;

import croftboard.measure.Cents;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.sourcing.JointRelaxation;
import croftboard.sourcing.Relaxation;
import croftboard.sourcing.Sourcing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A week planned from its rotation: the search starts there, and each dish that could stay and does not costs the kitchen's
 * price of a change. When fewer than four in five stay, the best plan that keeps all that can stay is made as well, and the
 * one worth more after the price of changes is taken.
 */
final class FromRotation {
    private static final int KEPT_OF_HUNDRED = 80;
    private final WeekProblem problem;
    private final PricedChanges priced;
    private final long cents;
    private Optional<Long> bound;
    private String note = "";

    FromRotation(WeekProblem problem, Map<String, String> dishes, long cents) {
        this.problem = problem;
        this.cents = cents;
        priced = new PricedChanges(problem, dishes, cents);
        bound = JointRelaxation.of(problem).map(Relaxation::boundCents);
    }

    /**
     * @param search solves a problem from a menu; the whole of the time first
     * @param again the same with a part of the time, for the plan that keeps all
     */
    WeekSolver.Solved solve(int[] start, Searching search, Searching again) {
        WeekSolver.Solved first = truth(search.solve(priced.problem, start));
        int changes = priced.changes(first.choice());
        if ((priced.possible() - changes) * 100 >= KEPT_OF_HUNDRED * priced.possible()) {
            return first;
        }
        WeekProblem pinned = priced.pinned();
        WeekSolver.Solved held = again.solve(pinned, new int[0]);
        int[] menu = priced.unpinned(held.choice());
        WeekSolver.Solved all = truth(new WeekSolver.Solved(menu, new Sourcing.Orders(held.orders().packs(),
                held.orders().complete(), held.orders().valueCents() - cents * priced.changes(menu),
                held.orders().bestForMenu().map(b -> b - cents * priced.changes(menu)), held.orders().rounds()),
                held.complete(), Optional.empty(), held.how()));
        long lost = first.orders().valueCents() - all.orders().valueCents();
        boolean keep = all.complete() && (!first.complete() || lost <= cents * (changes - priced.changes(menu)));
        note = keep ? "" : all.complete() ? "The best plan that keeps all of them is worth " + new Cents(lost)
                + " less, more than its changes cost." : "No plan that keeps all of them is complete.";
        return keep ? all : first;
    }

    /** Solves a problem; an empty start: nothing is set. */
    interface Searching {
        WeekSolver.Solved solve(WeekProblem problem, int[] start);
    }

    /** The same without the price of changes: what it is worth by the account. */
    WeekSolver.Solved truth(WeekSolver.Solved s) {
        long back = cents * priced.changes(s.choice());
        Optional<Long> best = lower(s.bound().map(b -> b + cents * priced.possible()), bound);
        long value = Account.of(problem, s.choice(), s.orders().packs()).value();
        return new WeekSolver.Solved(s.choice(), new Sourcing.Orders(s.orders().packs(), s.orders().complete(), value,
                s.orders().bestForMenu().map(b -> Math.max(b + back, value)), s.orders().rounds()), s.complete(), best, s.how());
    }

    private static Optional<Long> lower(Optional<Long> a, Optional<Long> b) {
        return a.isPresent() && b.isPresent() ? Optional.of(Math.min(a.get(), b.get())) : a.isPresent() ? a : b;
    }

    /** Why so few stay; empty when enough do. */
    String note() {
        return note;
    }

    /** What became of the rotation's dishes, for people. */
    static RotationKept kept(croftboard.book.Book book, WeekPlan rotation, WeekPlan plan, Given given, ProblemBuilder.Built built,
            String note) {
        List<Rotation.Swap> changes = new java.util.ArrayList<>();
        int possible = 0;
        int kept = 0;
        Map<String, String> was = rotation.choices();
        Map<String, String> is = plan.choices();
        Function<String, Optional<WeekProblem.Slot>> slots = id -> built.problem().slots().stream()
                .filter(s -> s.id().equals(id) && s.free()).findFirst();
        for (String id : new java.util.TreeSet<>(was.keySet())) {
            Optional<WeekProblem.Slot> slot = slots.apply(id);
            if (slot.isEmpty()) {
                continue;
            }
            boolean can = PricedChanges.number(slot.get(), was.get(id)) >= 0;
            boolean same = was.get(id).equals(is.get(id));
            possible += can ? 1 : 0;
            kept += can && same ? 1 : 0;
            if (!same) {
                changes.add(new Rotation.Swap(plan.week(), id, was.get(id), Optional.ofNullable(is.get(id)), can
                        ? "worth more than a change costs" : CycleSwaps.why(book, plan.week(), given, built.problem(),
                                slot.get(), was.get(id))));
            }
        }
        return new RotationKept(rotation.inputs().from().orElse(""), possible, kept, List.copyOf(changes), note);
    }
}
