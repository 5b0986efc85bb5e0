package croftboard.plan.change;

import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.WeekRun;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Takes dishes off a menu whose food cannot be had, one at a time, for the best that can: another dish, or none. */
final class Mend {
    private static final int ROUNDS = 12;
    private static final int OTHERS = 3;
    private static final int ORDER_ROUNDS = 200;
    private final WeekProblem problem;
    private final long seed;

    Mend(WeekProblem problem, long seed) {
        this.problem = problem;
        this.seed = seed;
    }

    private record Tried(WeekRun.Found found, long missing) {
        boolean betterThan(Tried other) {
            return missing < other.missing || missing == other.missing
                    && found.valueCents() > other.found.valueCents();
        }
    }

    WeekRun.Found run(WeekRun.Found from) {
        Tried best = tried(from.choice());
        for (int round = 0; round < ROUNDS && !best.found.complete(); round++) {
            Tried next = best;
            for (int[] menu : others(best)) {
                Tried t = tried(menu);
                next = t.betterThan(next) ? t : next;
            }
            if (next == best) {
                break;
            }
            best = next;
        }
        WeekRun.Found emptied = best.found.complete() ? best.found : emptied(best).found;
        return emptied.complete() ? emptied : best.found;
    }

    /** Nothing where something cannot be had: the last way out. */
    private Tried emptied(Tried from) {
        Tried now = from;
        for (int round = 0; round < ROUNDS && !now.found.complete(); round++) {
            Set<Integer> items = missing(now);
            int[] menu = now.found.choice().clone();
            for (int s = 0; s < menu.length; s++) {
                WeekProblem.Slot slot = problem.slots().get(s);
                menu[s] = menu[s] >= 0 && slot.mayBeEmpty() && takes(slot.candidates().get(menu[s]), items) ? -1 : menu[s];
            }
            now = tried(menu);
        }
        return now;
    }

    private Tried tried(int[] menu) {
        WeekRun.Found found = WeekRun.orders(problem, menu, seed, ORDER_ROUNDS);
        long missing = Arrays.stream(buying(found).missingMg()).flatMapToLong(Arrays::stream).sum();
        return new Tried(found, missing);
    }

    private Buying buying(WeekRun.Found found) {
        return Buying.of(problem, Workload.of(problem, found.choice()).needMg(), found.packs());
    }

    private Set<Integer> missing(Tried tried) {
        long[][] missing = buying(tried.found).missingMg();
        Set<Integer> items = new HashSet<>();
        for (int i = 0; i < missing.length; i++) {
            if (Arrays.stream(missing[i]).sum() > 0) {
                items.add(i);
            }
        }
        return items;
    }

    private List<int[]> others(Tried tried) {
        Set<Integer> items = missing(tried);
        List<int[]> menus = new ArrayList<>();
        int[] menu = tried.found.choice();
        for (int s = 0; s < menu.length; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            if (menu[s] >= 0 && takes(slot.candidates().get(menu[s]), items)) {
                replacements(slot, items, menus, menu, s);
            }
        }
        return menus;
    }

    private void replacements(WeekProblem.Slot slot, Set<Integer> items, List<int[]> menus, int[] menu, int s) {
        WeekProblem.Candidate own = slot.candidates().get(menu[s]);
        for (int k = 0; k < slot.candidates().size(); k++) {
            if (k != menu[s] && slot.candidates().get(k).dish() == own.dish() && taken(slot.candidates().get(k), items) < taken(own, items)) {
                menus.add(with(menu, s, k));
            }
        }
        java.util.stream.IntStream.range(0, slot.candidates().size()).boxed()
                .filter(k -> slot.candidates().get(k).dish() != own.dish() && !takes(slot.candidates().get(k), items) && free(menu, s, slot.candidates().get(k)))
                .sorted(Comparator.comparingLong((Integer k) -> -slot.candidates().get(k).valueCents())
                        .thenComparing(k -> k)).limit(OTHERS).forEach(k -> menus.add(with(menu, s, k)));
        if (slot.mayBeEmpty()) {
            menus.add(with(menu, s, -1));
        }
    }

    private static boolean takes(WeekProblem.Candidate dish, Set<Integer> items) {
        return dish.loose().stream().anyMatch(n -> items.contains(n.item()));
    }

    private static long taken(WeekProblem.Candidate dish, Set<Integer> items) {
        return dish.loose().stream().filter(n -> items.contains(n.item())).mapToLong(WeekProblem.LooseNeed::mg).sum();
    }

    /** The gap between two servings of a dish holds. */
    private boolean free(int[] menu, int at, WeekProblem.Candidate dish) {
        WeekProblem.Slot slot = problem.slots().get(at);
        for (int s = 0; s < menu.length; s++) {
            WeekProblem.Slot other = problem.slots().get(s);
            if (s != at && menu[s] >= 0 && slot.free() && other.free()
                    && other.candidates().get(menu[s]).dish() == dish.dish()
                    && Math.abs(other.startDay() - slot.startDay()) < problem.prices().gapDays()) {
                return false;
            }
        }
        return true;
    }

    private static int[] with(int[] menu, int s, int k) {
        int[] other = menu.clone();
        other[s] = k;
        return other;
    }
}
