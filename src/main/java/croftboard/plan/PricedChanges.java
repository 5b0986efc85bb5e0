package croftboard.plan;

import croftboard.need.WeekProblem;
import java.util.List;
import java.util.Map;

/** A problem in which leaving the dishes of an earlier plan costs: on a slot that one of them can still hold, every other dish, and none, brings less. */
final class PricedChanges {
    final WeekProblem problem;
    private final WeekProblem whole;
    private final int[] wanted;
    private final long cents;

    /** @param dishes by slot id. @param cents price of each change */
    PricedChanges(WeekProblem whole, Map<String, String> dishes, long cents) {
        this.whole = whole;
        this.cents = cents;
        wanted = new int[whole.slots().size()];
        List<WeekProblem.Slot> slots = new java.util.ArrayList<>();
        for (int s = 0; s < wanted.length; s++) {
            WeekProblem.Slot slot = whole.slots().get(s);
            wanted[s] = number(slot, dishes.get(slot.id()));
            slots.add(wanted[s] < 0 ? slot : priced(slot, wanted[s]));
        }
        problem = with(whole, slots);
    }

    static WeekProblem with(WeekProblem p, List<WeekProblem.Slot> slots) {
        return new WeekProblem(p.name(), p.firstDay(), p.days(), p.openDays(), p.prepDays(), List.copyOf(slots), p.items(),
                p.components(), p.offers(), p.deliveries(), p.resources(), p.stock(), p.componentStock(), p.looseStock(),
                p.prices(), p.constantCents());
    }

    static WeekProblem.Slot with(WeekProblem.Slot s, List<WeekProblem.Candidate> dishes) {
        return new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), s.free(), s.emptyCents(), s.mayBeEmpty(),
                List.copyOf(dishes));
    }

    static int number(WeekProblem.Slot slot, String recipe) {
        for (int k = 0; k < slot.candidates().size(); k++) {
            if (slot.candidates().get(k).recipe().equals(recipe)) {
                return k;
            }
        }
        return -1;
    }

    private WeekProblem.Slot priced(WeekProblem.Slot s, int kept) {
        List<WeekProblem.Candidate> dishes = new java.util.ArrayList<>();
        for (int k = 0; k < s.candidates().size(); k++) {
            dishes.add(k == kept ? s.candidates().get(k) : dearer(s.candidates().get(k)));
        }
        return new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), s.free(), s.emptyCents() + cents, s.mayBeEmpty(),
                List.copyOf(dishes));
    }

    /** What is left behind counts, not sales: the promise of food cost looks at those. */
    private WeekProblem.Candidate dearer(WeekProblem.Candidate c) {
        return new WeekProblem.Candidate(c.dish(), c.recipe(), c.portions(), c.salesCents(), c.leftCents() - cents,
                c.stapleCents(), c.needs(), c.uses(), c.demands(), c.loose(), c.looseStapleCents(), c.covers(), c.main(),
                c.method(), c.cuisine(), c.productions());
    }

    /** The same, but where the earlier dish can stay it is the only one. */
    WeekProblem pinned() {
        List<WeekProblem.Slot> slots = new java.util.ArrayList<>();
        for (int s = 0; s < wanted.length; s++) {
            WeekProblem.Slot slot = whole.slots().get(s);
            slots.add(wanted[s] < 0 ? slot : with(slot, List.of(slot.candidates().get(wanted[s]))));
        }
        return with(whole, slots);
    }

    /** Slots whose earlier dish can still stand there. */
    int possible() {
        return (int) java.util.Arrays.stream(wanted).filter(k -> k >= 0).count();
    }

    boolean possible(int slot) {
        return wanted[slot] >= 0;
    }

    boolean changed(int slot, int candidate) {
        return wanted[slot] >= 0 && candidate != wanted[slot];
    }

    /** Changes of a menu. */
    int changes(int[] choice) {
        int n = 0;
        for (int s = 0; s < choice.length; s++) {
            n += changed(s, choice[s]) ? 1 : 0;
        }
        return n;
    }

    /** A menu of {@link #pinned()} in this problem's numbers. */
    int[] unpinned(int[] choice) {
        int[] all = choice.clone();
        for (int s = 0; s < all.length; s++) {
            all[s] = wanted[s] >= 0 && choice[s] >= 0 ? wanted[s] : choice[s];
        }
        return all;
    }
}
