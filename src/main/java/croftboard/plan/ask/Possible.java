package croftboard.plan.ask;

import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.WeekRun;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Whether any plan of a week keeps its musts. Only what has to stand is put on the menu: other dishes only add to what is
 * needed. Gaps, lives, hands and food are then plain reckoning; only which deliveries are received is searched, and where the
 * search finds none the exact program says whether there is one.
 */
final class Possible {
    private static final int ROUNDS = 300;
    private static final long NODES = 500;
    private final WeekProblem problem;

    Possible(WeekProblem problem) {
        this.problem = problem;
    }

    /**
     * @param possible a plan is at hand that keeps the musts
     * @param proved true: what {@code possible} says holds for every menu and order; a plan at hand proves itself
     */
    record Verdict(boolean possible, boolean proved) { }

    /** @param more dishes that have to stand beside what has to stand anyway, -1 for none */
    Verdict with(int[] more) {
        int[] menu = more.clone();
        for (int s = 0; s < menu.length; s++) {
            menu[s] = menu[s] < 0 && !problem.slots().get(s).mayBeEmpty() ? 0 : menu[s];
        }
        Verdict verdict = menu(menu);
        if (!verdict.possible && WeekRun.isTiny(problem)) {
            return every(menu.clone(), 0);
        }
        return verdict.possible || !hasDemands(menu) ? verdict : new Verdict(false, provedWithoutBatches(menu));
    }

    Verdict musts() {
        int[] none = new int[problem.slots().size()];
        Arrays.fill(none, -1);
        return with(none);
    }

    /** Another dish can move a batch to where hands are: of a tiny week every menu is looked at. */
    private Verdict every(int[] menu, int s) {
        if (s == menu.length) {
            return menu(menu);
        }
        Verdict worst = every(menu, s + 1);
        int was = menu[s];
        for (int k = 0; k < problem.slots().get(s).candidates().size() && !worst.possible; k++) {
            if (k != was && (was < 0 || !problem.slots().get(s).mayBeEmpty())) {
                menu[s] = k;
                Verdict next = every(menu, s + 1);
                worst = next.possible ? next : new Verdict(false, worst.proved && next.proved);
            }
        }
        menu[s] = was;
        return worst;
    }

    private Verdict menu(int[] menu) {
        for (int a = 0; a < menu.length; a++) {
            for (int b = a + 1; b < menu.length; b++) {
                if (Forced.near(problem, a, b, menu)) {
                    return new Verdict(false, true);
                }
            }
        }
        Workload work = Workload.of(problem, menu);
        if (!work.missed().isEmpty() || work.unitsOver(problem) > 0) {
            return new Verdict(false, true);
        }
        return orders(menu, work);
    }

    private Verdict orders(int[] menu, Workload work) {
        int[] packs = most();
        if (packs.length == 0 && !problem.offers().isEmpty() || !Buying.of(problem, work.needMg(), packs).complete()) {
            return new Verdict(false, true);
        }
        for (int v = 0; v < problem.deliveries().size(); v++) {
            int[] fewer = closed(packs, v);
            packs = Buying.of(problem, work.needMg(), fewer).complete() ? fewer : packs;
        }
        if (problem.minimumsMet(packs) && docked(packs, work)) {
            return new Verdict(true, true);
        }
        if (WeekRun.orders(problem, menu, 1, ROUNDS).complete()) {
            return new Verdict(true, true);
        }
        return new Verdict(false, WeekRun.impossible(problem, menu, NODES));
    }

    /** Everything that is offered where minimums can be reached; empty: what is promised cannot come up to a minimum. */
    private int[] most() {
        boolean[] reachable = croftboard.need.Minimums.reachable(problem);
        int[] packs = new int[problem.offers().size()];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            if (!reachable[offer.delivery()] && offer.minPacks() > 0) {
                return new int[0];
            }
            packs[o] = reachable[offer.delivery()] ? offer.maxPacks() : 0;
        }
        return packs;
    }

    private int[] closed(int[] packs, int v) {
        int[] fewer = packs.clone();
        boolean promised = false;
        for (int o = 0; o < packs.length; o++) {
            promised |= problem.offers().get(o).delivery() == v && problem.offers().get(o).minPacks() > 0;
        }
        for (int o = 0; o < packs.length && !promised; o++) {
            fewer[o] = problem.offers().get(o).delivery() == v ? 0 : fewer[o];
        }
        return fewer;
    }

    private boolean docked(int[] packs, Workload work) {
        long[][] used = croftboard.need.Account.withReceiving(problem, packs, work.used());
        return new Workload(work.batches(), work.needMg(), used, work.missed(), work.stapleCents()).unitsOver(problem) == 0;
    }

    private boolean hasDemands(int[] menu) {
        for (int s = 0; s < menu.length; s++) {
            if (menu[s] >= 0 && !problem.slots().get(s).candidates().get(menu[s]).demands().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** What batches need is left out, and whether they can be ready: then other dishes can only make it worse. */
    private boolean provedWithoutBatches(int[] menu) {
        if (!Workload.of(problem, menu).missed().isEmpty()) {
            return true;
        }
        List<WeekProblem.Slot> slots = new ArrayList<>();
        for (int s = 0; s < menu.length; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            slots.add(menu[s] < 0 ? slot : new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(),
                    slot.emptyCents(), slot.mayBeEmpty(), slot.candidates().stream().map(Possible::bare).toList()));
        }
        Verdict bare = new Possible(Problems.withSlots(problem, slots)).menu(menu);
        return !bare.possible && bare.proved;
    }

    private static WeekProblem.Candidate bare(WeekProblem.Candidate c) {
        return new WeekProblem.Candidate(c.dish(), c.recipe(), c.portions(), c.salesCents(), c.leftCents(), c.stapleCents(),
                c.needs(), c.uses(), List.of(), c.loose(), c.looseStapleCents(), c.covers(), c.main(), c.method(), c.cuisine(),
                c.productions());
    }
}
