package croftboard.plan.change;

import croftboard.need.WeekProblem;
import croftboard.plan.WeekRun;
import java.util.Optional;

/**
 * A week so small that every menu can be tried with every order: the way out is the best there is, the price of order lines
 * counted.
 */
final class EveryWay {
    private static final long AT_MOST = 60_000;
    private final WeekProblem problem;
    private final int[] before;
    private final long lineCents;
    private WeekRun.Found best;
    private long bestWorth;

    /** @param problem with dishes priced. @param before packs of the plan. @param lineCents price of one changed line */
    EveryWay(WeekProblem problem, int[] before, long lineCents) {
        this.problem = problem;
        this.before = before;
        this.lineCents = lineCents;
    }

    static boolean suits(WeekProblem problem) {
        long ways = 1;
        for (WeekProblem.Slot s : problem.slots()) {
            ways = ways > AT_MOST ? ways : ways * (s.candidates().size() + (s.mayBeEmpty() ? 1 : 0));
        }
        for (WeekProblem.Offer o : problem.offers()) {
            ways = ways > AT_MOST ? ways : ways * (o.maxPacks() - o.minPacks() + 1);
        }
        return ways <= AT_MOST;
    }

    /** Empty: no way keeps every must. */
    Optional<WeekRun.Found> best() {
        menus(new int[problem.slots().size()], 0);
        return Optional.ofNullable(best);
    }

    private void menus(int[] choice, int s) {
        if (s == choice.length) {
            packs(choice, new int[before.length], 0, 0);
            return;
        }
        WeekProblem.Slot slot = problem.slots().get(s);
        for (int k = slot.mayBeEmpty() ? -1 : 0; k < slot.candidates().size(); k++) {
            choice[s] = k;
            menus(choice, s + 1);
        }
    }

    private void packs(int[] choice, int[] packs, int o, int changed) {
        if (o == packs.length) {
            WeekRun.Found found = WeekRun.judged(problem, choice, packs);
            long worth = found.valueCents() - lineCents * changed;
            if (found.complete() && (best == null || worth > bestWorth)) {
                best = found;
                bestWorth = worth;
            }
            return;
        }
        WeekProblem.Offer offer = problem.offers().get(o);
        for (packs[o] = offer.minPacks(); packs[o] <= offer.maxPacks(); packs[o]++) {
            packs(choice, packs, o + 1, changed + (packs[o] == before[o] ? 0 : 1));
        }
    }
}
