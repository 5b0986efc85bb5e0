package croftboard.plan.ask;

import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.WeekRun;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Orders for a menu that differ from known ones only in what the menu lacks or has too much of: what is missing is added pack by
 * pack, the cheapest for what it brings, first on deliveries that come anyway, else on any; then packs that nobody needs any more
 * are left out as long as that gains.
 */
final class MendedPacks {
    private static final int MOST_PACKS = 400;
    private final WeekProblem problem;
    private final int[] menu;
    private final int[] known;
    private final Workload work;

    /** @param known within what is offered */
    MendedPacks(WeekProblem problem, int[] menu, int[] known) {
        this.problem = problem;
        this.menu = menu;
        this.known = known;
        this.work = Workload.of(problem, menu);
    }

    /** Complete ones only. */
    List<WeekRun.Found> all() {
        List<WeekRun.Found> all = new ArrayList<>();
        for (boolean anywhere : new boolean[] {false, true}) {
            int[] packs = known.clone();
            if (fill(packs, anywhere)) {
                all.add(WeekRun.judged(problem, menu, packs));
                spare(packs);
                all.add(WeekRun.judged(problem, menu, packs));
            }
        }
        return all.stream().filter(WeekRun.Found::complete).toList();
    }

    private boolean fill(int[] packs, boolean anywhere) {
        boolean[] comes = new boolean[problem.deliveries().size()];
        for (int o = 0; o < packs.length; o++) {
            comes[problem.offers().get(o).delivery()] |= anywhere || packs[o] > 0;
        }
        long[] missing = missing(packs);
        for (int n = 0; n < MOST_PACKS && Arrays.stream(missing).sum() > 0; n++) {
            long value = value(packs);
            int best = -1;
            double least = Double.MAX_VALUE;
            for (int o = 0; o < packs.length; o++) {
                WeekProblem.Offer offer = problem.offers().get(o);
                if (missing[offer.item()] > 0 && packs[o] < offer.maxPacks() && comes[offer.delivery()]) {
                    packs[o]++;
                    long brings = missing[offer.item()] - missing(packs)[offer.item()];
                    double price = (value - value(packs) + 1.0) / brings;
                    if (brings > 0 && price < least) {
                        least = price;
                        best = o;
                    }
                    packs[o]--;
                }
            }
            if (best < 0) {
                return false;
            }
            packs[best]++;
            missing = missing(packs);
        }
        return Arrays.stream(missing).sum() == 0;
    }

    private void spare(int[] packs) {
        long value = value(packs);
        for (int o = 0; o < packs.length; o++) {
            while (packs[o] > problem.offers().get(o).minPacks()) {
                packs[o]--;
                long then = value(packs);
                if (then <= value || Arrays.stream(missing(packs)).sum() > 0 || belowMinimum(packs, problem.offers().get(o).delivery())) {
                    packs[o]++;
                    break;
                }
                value = then;
            }
        }
    }

    private boolean belowMinimum(int[] packs, int delivery) {
        long money = 0;
        for (int o = 0; o < packs.length; o++) {
            money += problem.offers().get(o).delivery() == delivery ? problem.offers().get(o).costCents(packs[o]) : 0;
        }
        return money > 0 && money < problem.deliveries().get(delivery).minimumCents();
    }

    /** By item. */
    private long[] missing(int[] packs) {
        return Arrays.stream(Buying.of(problem, work.needMg(), packs).missingMg()).mapToLong(d -> Arrays.stream(d).sum()).toArray();
    }

    private long value(int[] packs) {
        return Account.of(problem, menu, packs, work).value();
    }
}
