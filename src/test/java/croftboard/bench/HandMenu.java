package croftboard.bench;

import croftboard.need.Account;
import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * A menu as a careful cook writes it by hand, day by day: first the dishes that each day's coverage promises ask for, then
 * in every slot the dish that stands highest on a list and still fits: not back within its gap, within hands and
 * equipment, no trait more often than promised, food to be had in time. A slot into which nothing fits takes one after
 * another dish of the day has been exchanged for a lighter one, if that helps.
 */
final class HandMenu {
    private final WeekProblem problem;
    private final ToDoubleFunction<WeekProblem.Candidate> list;
    private final Set<SoldOut> soldOut;
    private final int[] choice;
    private final long[][] used;

    /** An item that a slot must do without, as vendors had no more of it. */
    record SoldOut(int slot, int item) { }

    /** @param list the higher the sooner a dish is taken */
    HandMenu(WeekProblem problem, ToDoubleFunction<WeekProblem.Candidate> list, Set<SoldOut> soldOut) {
        this.problem = problem;
        this.list = list;
        this.soldOut = soldOut;
        choice = new int[problem.slots().size()];
        Arrays.fill(choice, -1);
        used = problem.resources().stream().map(r -> new long[r.periods()]).toArray(long[][]::new);
    }

    /** Candidate of each slot, -1 for none. */
    int[] write() {
        for (int day : problem.openDays()) {
            for (int k = 0; k < problem.prices().coverage().size(); k++) {
                cover(day, k);
            }
            for (int s = 0; s < choice.length; s++) {
                if (choice[s] < 0 && slot(s).startDay() == day) {
                    put(s, best(s, -1, true));
                    if (choice[s] < 0) {
                        exchange(s, day);
                    }
                }
            }
        }
        return choice;
    }

    private WeekProblem.Slot slot(int s) {
        return problem.slots().get(s);
    }

    private WeekProblem.Candidate dish(int s) {
        return slot(s).candidates().get(choice[s]);
    }

    private void cover(int day, int rule) {
        for (int n = covered(day, rule); n < problem.prices().coverage().get(rule).atLeast(); n++) {
            int at = -1;
            int dish = -1;
            for (int s = 0; s < choice.length; s++) {
                int k = choice[s] < 0 && slot(s).startDay() == day ? best(s, rule, true) : -1;
                if (k >= 0 && (at < 0 || value(s, k) > value(at, dish))) {
                    at = s;
                    dish = k;
                }
            }
            if (at >= 0) {
                put(at, dish);
            }
        }
    }

    private double value(int s, int k) {
        return list.applyAsDouble(slot(s).candidates().get(k));
    }

    private int covered(int day, int rule) {
        int n = 0;
        for (int s = 0; s < choice.length; s++) {
            n += choice[s] >= 0 && serves(s, day) ? (int) (dish(s).covers() >> rule & 1) : 0;
        }
        return n;
    }

    private boolean serves(int s, int day) {
        return Arrays.stream(slot(s).serviceDays()).anyMatch(d -> d == day);
    }

    /** @param rule coverage promise that the dish must count for; -1: none. @return -1 when nothing fits */
    private int best(int s, int rule, boolean varied) {
        int best = -1;
        for (int k = 0; k < slot(s).candidates().size(); k++) {
            WeekProblem.Candidate c = slot(s).candidates().get(k);
            boolean counts = rule < 0 || (c.covers() >> rule & 1) == 1;
            if (counts && (best < 0 || value(s, k) > value(s, best)) && fits(s, c, varied)) {
                best = k;
            }
        }
        return best;
    }

    private boolean fits(int s, WeekProblem.Candidate c, boolean varied) {
        return !comesBack(s, c) && hasHands(c) && (!varied || varied(s, c))
                && c.needs().stream().allMatch(n -> canBeHad(n) && !soldOut.contains(new SoldOut(s, n.item())));
    }

    private boolean comesBack(int s, WeekProblem.Candidate c) {
        for (int o = 0; o < choice.length && slot(s).free(); o++) {
            if (o != s && choice[o] >= 0 && slot(o).free() && dish(o).dish() == c.dish()
                    && Math.abs(slot(o).startDay() - slot(s).startDay()) < problem.prices().gapDays()) {
                return true;
            }
        }
        return false;
    }

    private boolean hasHands(WeekProblem.Candidate c) {
        return c.uses().stream().allMatch(u -> {
            WeekProblem.Resource r = problem.resources().get(u.resource());
            int period = r.period()[u.day()];
            return used[u.resource()][period] + u.units() <= r.regular()[period];
        });
    }

    private boolean canBeHad(WeekProblem.Need n) {
        return problem.offers().stream().anyMatch(o -> {
            int day = problem.deliveries().get(o.delivery()).day();
            return o.item() == n.item() && day <= n.day() && n.day() <= day + problem.items().get(n.item()).lifeDays();
        });
    }

    private boolean varied(int s, WeekProblem.Candidate c) {
        for (WeekProblem.VarietyRule rule : problem.prices().variety()) {
            for (int day : slot(s).serviceDays()) {
                int same = 0;
                for (int o = 0; o < choice.length; o++) {
                    same += o != s && choice[o] >= 0 && slot(o).free() && serves(o, day)
                            && Account.trait(dish(o), rule.trait()) == Account.trait(c, rule.trait()) ? 1 : 0;
                }
                if (!rule.nextDay() && same >= rule.atMost()) {
                    return false;
                }
            }
        }
        return true;
    }

    private void put(int s, int k) {
        if (choice[s] >= 0) {
            dish(s).uses().forEach(u -> use(u, -1));
        }
        choice[s] = k;
        if (k >= 0) {
            dish(s).uses().forEach(u -> use(u, 1));
        }
    }

    private void use(WeekProblem.Use u, int sign) {
        used[u.resource()][problem.resources().get(u.resource()).period()[u.day()]] += (long) sign * u.units();
    }

    /** The best by the list of all exchanges of one other dish of the day that make room; variety may go. */
    private void exchange(int s, int day) {
        double most = Double.NEGATIVE_INFINITY;
        int[] change = null;
        for (int o = 0; o < choice.length; o++) {
            int old = choice[o];
            if (o == s || old < 0 || !serves(o, day)) {
                continue;
            }
            for (int k = 0; k < slot(o).candidates().size(); k++) {
                put(o, -1);
                if (fits(o, slot(o).candidates().get(k), false)) {
                    put(o, k);
                    int into = best(s, -1, false);
                    double sum = into < 0 ? Double.NEGATIVE_INFINITY : value(s, into) + value(o, k) - value(o, old);
                    if (sum > most) {
                        most = sum;
                        change = new int[] {o, k, into};
                    }
                }
            }
            put(o, old);
        }
        if (change != null) {
            put(change[0], change[1]);
            put(s, change[2]);
        } else {
            put(s, best(s, -1, false));
        }
    }
}
