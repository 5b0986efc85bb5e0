package croftboard.plan.ask;

import croftboard.menu.MenuSearch;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekRun;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** The best week close to a menu and its packs that a short search finds; of a tiny week the best there is. */
final class Nearby {
    private static final int ROUNDS = 1_000;
    private static final int NODES = 20;
    private static final int MEMORY = 8;
    private final WeekProblem problem;
    private final int[] packs;
    private final long seed;

    /** @param packs known packs, of other prices or limits perhaps */
    Nearby(WeekProblem problem, int[] packs, long seed) {
        this.problem = problem;
        this.packs = packs;
        this.seed = seed;
    }

    /** Complete before worth more. */
    static WeekRun.Found better(WeekRun.Found a, WeekRun.Found b) {
        boolean second = b.complete() && !a.complete() || a.complete() == b.complete() && b.valueCents() > a.valueCents();
        return second ? b : a;
    }

    /** Orders for one menu, near the known ones or far from them. */
    WeekRun.Found orders(int[] menu) {
        return better(WeekRun.near(problem, menu, packs), WeekRun.orders(problem, menu, seed, ROUNDS));
    }

    /** Orders for one menu to the last pack, as far as a moment goes. */
    WeekRun.Found exact(WeekRun.Found found) {
        return better(found, WeekRun.exact(problem, found, NODES));
    }

    /** @param menu to start from, -1 where something is to be found. @param tries menus looked at */
    WeekRun.Found best(int[] menu, long tries) {
        if (WeekRun.isTiny(problem)) {
            return WeekRun.solve(problem, menu, new WeekRun.Effort(seed, Duration.ZERO, OptionalLong.of(1), () -> false),
                    f -> { });
        }
        return others(menu, tries).stream().reduce(orders(menu), Nearby::better);
    }

    /** Weeks with other menus, each with orders near the known ones and with orders from a search. */
    private List<WeekRun.Found> others(int[] menu, long tries) {
        MenuSearch search = new MenuSearch(problem, problem.prices().localPrice().toDouble() / 2);
        int[] filled = search.greedy(menu).choice();
        int[] found = search.search(filled, seed, new MenuSearch.Effort(tries, 0, MEMORY), () -> false).choice();
        List<WeekRun.Found> all = new ArrayList<>();
        for (int[] m : List.of(filled, found)) {
            all.add(WeekRun.near(problem, m, packs));
            all.add(WeekRun.orders(problem, m, seed, ROUNDS));
        }
        return all;
    }

    /** Everything that a short search meets near a menu, for one who weighs what had to move; of a tiny week the best alone. */
    List<WeekRun.Found> all(int[] menu, long tries) {
        if (WeekRun.isTiny(problem)) {
            return List.of(best(menu, tries));
        }
        List<WeekRun.Found> all = new ArrayList<>(List.of(WeekRun.near(problem, menu, packs),
                WeekRun.orders(problem, menu, seed, ROUNDS)));
        all.addAll(others(menu, tries));
        return all;
    }
}
