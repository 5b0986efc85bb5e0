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

/**
 * Takes dishes off a menu whose food cannot be had, or that ask for more hands or equipment than there are, one at a time, for
 * the best that can be had and done: the same dish in another way, another dish, or none.
 */
final class Mend {
    private static final int ROUNDS = 12;
    private static final int OTHERS = 3;
    private static final int PART = 1_000;
    private static final int ORDER_ROUNDS = 200;
    private static final int FILLS = 10;
    private static final int LAST_ROUNDS = 2_000;
    private final WeekProblem problem;
    private final long seed;

    Mend(WeekProblem problem, long seed) {
        this.problem = problem;
        this.seed = seed;
    }

    /** @param over units of hands and equipment beyond what there is, and parts that cannot be ready. @param missing food, mg */
    private record Tried(WeekRun.Found found, long over, long missing) {
        boolean betterThan(Tried other) {
            return over < other.over || over == other.over && (missing < other.missing || missing == other.missing
                    && found.valueCents() > other.found.valueCents());
        }
    }

    WeekRun.Found run(WeekRun.Found from) {
        Tried best = tried(WeekRun.orders(problem, from.choice(), seed, ORDER_ROUNDS));
        for (int round = 0; round < ROUNDS && !best.found.complete(); round++) {
            Tried next = best;
            for (int[] menu : others(best)) {
                Tried t = tried(WeekRun.near(problem, menu, best.found.packs()));
                next = t.betterThan(next) ? t : next;
            }
            if (next == best) {
                break;
            }
            Tried searched = tried(WeekRun.orders(problem, next.found.choice(), seed, ORDER_ROUNDS));
            best = searched.betterThan(next) ? searched : next;
        }
        WeekRun.Found emptied = best.found.complete() ? best.found : emptied(best).found;
        return emptied.complete() ? filled(ordered(emptied), from.choice()) : ordered(best.found);
    }

    /** What was taken off in haste is filled with what is worth most there, one slot after the other. */
    private WeekRun.Found filled(WeekRun.Found from, int[] before) {
        WeekRun.Found best = from;
        for (int s = 0; s < before.length; s++) {
            if (best.choice()[s] == before[s]) {
                continue;
            }
            WeekProblem.Slot slot = problem.slots().get(s);
            int[] menu = best.choice();
            int at = s;
            List<int[]> menus = java.util.stream.IntStream.range(0, slot.candidates().size()).boxed()
                    .filter(k -> k != menu[at] && free(menu, at, slot.candidates().get(k)))
                    .sorted(Comparator.comparingLong((Integer k) -> -slot.candidates().get(k).valueCents()).thenComparing(k -> k))
                    .limit(FILLS).map(k -> with(menu, at, k)).filter(m -> over(m) == 0).toList();
            for (int[] other : menus) {
                WeekRun.Found found = WeekRun.near(problem, other, best.packs());
                best = found.complete() && found.valueCents() > best.valueCents() ? found : best;
            }
        }
        return best == from ? from : ordered(best);
    }

    /** With orders searched as long as for any other first answer. */
    private WeekRun.Found ordered(WeekRun.Found menu) {
        WeekRun.Found found = WeekRun.orders(problem, menu.choice(), seed, LAST_ROUNDS);
        return tried(found).betterThan(tried(menu)) ? found : menu;
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
            now = tried(WeekRun.orders(problem, menu, seed, ORDER_ROUNDS));
        }
        return now;
    }

    private Tried tried(WeekRun.Found found) {
        long missing = Arrays.stream(buying(found).missingMg()).flatMapToLong(Arrays::stream).sum();
        return new Tried(found, over(found.choice()), missing);
    }

    private long over(int[] menu) {
        Workload work = Workload.of(problem, menu);
        return work.unitsOver(problem) + PART * work.missed().size();
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

    /** Dishes without which less is over: for each the few best of the others that leave least over. */
    private List<int[]> lighter(Tried tried) {
        List<int[]> menus = new ArrayList<>();
        int[] menu = tried.found.choice();
        record Way(int[] menu, long over, long value) { }
        for (int s = 0; s < menu.length; s++) {
            if (menu[s] < 0 || problem.slots().get(s).candidates().size() < 2 && !problem.slots().get(s).mayBeEmpty()
                    || over(with(menu, s, -1)) >= tried.over) {
                continue;
            }
            WeekProblem.Slot slot = problem.slots().get(s);
            List<Way> ways = new ArrayList<>();
            for (int k = slot.mayBeEmpty() ? -1 : 0; k < slot.candidates().size(); k++) {
                if (k != menu[s] && (k < 0 || free(menu, s, slot.candidates().get(k)))) {
                    int[] other = with(menu, s, k);
                    long over = over(other);
                    if (over < tried.over) {
                        ways.add(new Way(other, over, k < 0 ? -slot.emptyCents() : slot.candidates().get(k).valueCents()));
                    }
                }
            }
            ways.stream().sorted(Comparator.comparingLong(Way::over).thenComparing(Comparator.comparingLong(Way::value).reversed()))
                    .limit(OTHERS).forEach(w -> menus.add(w.menu));
            ways.stream().max(Comparator.comparingLong(Way::value)).ifPresent(w -> menus.add(w.menu));
        }
        return menus;
    }

    private List<int[]> others(Tried tried) {
        if (tried.over > 0) {
            return lighter(tried);
        }
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
