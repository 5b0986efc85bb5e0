package croftboard.bench;

import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * A week planned by hand: once with the dishes that sell best first, once with those that leave most after food at list
 * prices; the better of both. Where vendors run out of an item, the dish that needs most of it makes room for another and
 * the week is written again.
 */
final class HandRule {
    private static final int REWRITES = 300;
    private final WeekProblem problem;

    private HandRule(WeekProblem problem) {
        this.problem = problem;
    }

    /** Empty when no plan by hand keeps every must. */
    static Optional<Judged> plan(WeekProblem problem) {
        HandRule rule = new HandRule(problem);
        double[] cents = new double[problem.items().size()];
        Arrays.fill(cents, Double.MAX_VALUE);
        problem.offers().forEach(o -> cents[o.item()] =
                Math.min(cents[o.item()], o.priceCents(1) / (double) o.packMg()));
        Judged popular = rule.plan(WeekProblem.Candidate::valueCents);
        Judged margin = rule.plan(c -> c.valueCents()
                - c.needs().stream().mapToDouble(n -> n.mg() * cents[n.item()]).sum());
        return Judged.better(popular, margin);
    }

    private Judged plan(ToDoubleFunction<WeekProblem.Candidate> list) {
        Set<HandMenu.SoldOut> soldOut = new HashSet<>();
        int[] menu = new HandMenu(problem, list, soldOut).write();
        int[] packs = HandOrders.of(problem, menu);
        for (int n = 0; n < REWRITES && without(menu, packs, soldOut); n++) {
            menu = new HandMenu(problem, list, soldOut).write();
            packs = HandOrders.of(problem, menu);
        }
        return Judged.of(problem, menu, packs);
    }

    /** Notes for the first item that is missing which slot does without it. @return false when nothing is missing */
    private boolean without(int[] menu, int[] packs, Set<HandMenu.SoldOut> soldOut) {
        long[][] missing = Buying.of(problem, Workload.of(problem, menu).needMg(), packs).missingMg();
        for (int i = 0; i < missing.length; i++) {
            for (int d = 0; d < missing[i].length; d++) {
                if (missing[i][d] > 0) {
                    return soldOut.add(new HandMenu.SoldOut(user(menu, i, d), i));
                }
            }
        }
        return false;
    }

    private int user(int[] menu, int item, int day) {
        int most = -1;
        long mg = -1;
        for (int s = 0; s < menu.length; s++) {
            if (menu[s] >= 0) {
                long own = problem.slots().get(s).candidates().get(menu[s]).needs().stream()
                        .filter(n -> n.item() == item && n.day() == day).mapToLong(WeekProblem.Need::mg).sum();
                if (own > mg) {
                    mg = own;
                    most = s;
                }
            }
        }
        return most;
    }
}
