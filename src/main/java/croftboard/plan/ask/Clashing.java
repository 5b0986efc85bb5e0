package croftboard.plan.ask;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The smallest set of facts that cannot all hold: halves of the facts are dropped as long as the rest still clashes, then each
 * fact that is left alone. Every fact of the answer is needed: without any one of them a plan is at hand.
 */
final class Clashing {
    private static final int MOST_TRIES = 3_000;
    private final WeekProblem problem;
    private final Optional<Fact.Kept> promise;
    private int tries;

    /** @param promise that is to be kept as if it were a must; empty: only the musts of the week */
    Clashing(WeekProblem problem, Optional<Fact.Kept> promise) {
        this.problem = problem;
        this.promise = promise;
    }

    /** @param proved that they clash whatever else is planned; that none can be left out is always proved, by a plan */
    record Core(List<Fact> facts, boolean proved) { }

    /** Empty: nothing clashes. */
    Optional<Core> find() {
        List<Fact> all = Facts.of(problem);
        if (judge(all, all).possible()) {
            return Optional.empty();
        }
        List<Fact> core = new ArrayList<>(smallest(all, List.of(), false, all));
        for (Fact f : List.copyOf(core)) {
            List<Fact> fewer = new ArrayList<>(core);
            fewer.remove(f);
            if (!judge(fewer, all).possible()) {
                core = fewer;
            }
        }
        return Optional.of(new Core(List.copyOf(core), judge(core, all).proved()));
    }

    /** Of {@code facts}, those needed beside {@code base} for a clash. @param news the base has grown since it was last judged */
    private List<Fact> smallest(List<Fact> facts, List<Fact> base, boolean news, List<Fact> all) {
        if (news && !judge(base, all).possible()) {
            return List.of();
        }
        if (facts.size() <= 1) {
            return facts;
        }
        List<Fact> first = facts.subList(0, facts.size() / 2);
        List<Fact> second = facts.subList(facts.size() / 2, facts.size());
        List<Fact> ofSecond = smallest(second, plus(base, first), true, all);
        List<Fact> ofFirst = smallest(first, plus(base, ofSecond), !ofSecond.isEmpty(), all);
        return plus(ofFirst, ofSecond);
    }

    private static List<Fact> plus(List<Fact> a, List<Fact> b) {
        List<Fact> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    /** Whether these facts, and no others, can hold together. */
    Possible.Verdict judge(Collection<Fact> hold, List<Fact> all) {
        Set<Fact> kept = new HashSet<>(hold);
        WeekProblem p = Facts.without(problem, all.stream().filter(f -> !kept.contains(f)).toList());
        Possible possible = new Possible(p);
        if (promise.isEmpty()) {
            return possible.musts();
        }
        tries = 0;
        int[] more = new int[p.slots().size()];
        Arrays.fill(more, -1);
        return covered(p, possible, more, 0);
    }

    /** Dishes that count for the promise are put where something may still stand, until enough stand there. */
    private Possible.Verdict covered(WeekProblem p, Possible possible, int[] more, int from) {
        Possible.Verdict verdict = possible.with(more);
        if (!verdict.possible() || missing(p, more) <= 0) {
            return verdict;
        }
        boolean proved = true;
        for (int s = from; s < more.length && tries < MOST_TRIES; s++) {
            WeekProblem.Slot slot = p.slots().get(s);
            for (int k = 0; k < slot.candidates().size() && slot.mayBeEmpty() && serves(slot) && tries < MOST_TRIES; k++) {
                if (counts(slot.candidates().get(k))) {
                    tries++;
                    more[s] = k;
                    Possible.Verdict next = covered(p, possible, more, s + 1);
                    if (next.possible()) {
                        return next;
                    }
                    proved &= next.proved();
                    more[s] = -1;
                }
            }
        }
        return new Possible.Verdict(false, proved && tries < MOST_TRIES);
    }

    private int missing(WeekProblem p, int[] more) {
        int have = 0;
        for (int s = 0; s < more.length; s++) {
            WeekProblem.Slot slot = p.slots().get(s);
            int k = more[s] < 0 && !slot.mayBeEmpty() ? 0 : more[s];
            have += k >= 0 && k < slot.candidates().size() && serves(slot) && counts(slot.candidates().get(k)) ? 1 : 0;
        }
        return p.prices().coverage().get(promise.orElseThrow().rule()).atLeast() - have;
    }

    private boolean serves(WeekProblem.Slot slot) {
        return Arrays.stream(slot.serviceDays()).anyMatch(d -> d == promise.orElseThrow().day());
    }

    private boolean counts(WeekProblem.Candidate dish) {
        return (dish.covers() >> promise.orElseThrow().rule() & 1) == 1;
    }
}
