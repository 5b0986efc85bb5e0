package croftboard.plan.ask;

import croftboard.menu.MenuSearch;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekRun;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;

/**
 * What one more of each thing would be worth, by planning again: first with the menu as it is and orders near the plan's; then,
 * for those worth most, with a short search of other menus. Every menu found is judged with and without the one more, so that
 * what a search gains anyway is not taken for the thing's worth. Of a tiny week both are the best there is.
 */
final class WorthSearch {
    private static final long TRIES = 6_000;
    private static final int MEMORY = 6;
    private static final int HOUR = 60;
    private static final int STEP = 5;
    private static final int[] AMOUNTS = {2, 4, 8};
    private final WeekProblem problem;
    private final int[] menu;
    private final int[] packs;

    WorthSearch(WeekProblem problem, int[] menu, int[] packs) {
        this.problem = problem;
        this.menu = menu;
        this.packs = packs;
    }

    /**
     * @param number in the list asked about
     * @param cents for one more
     * @param minutes of an hour that bring all of it, or nearly; 60 where it is not asked by the hour
     */
    record Found(int number, long cents, int upTo, int minutes, boolean otherMenu) { }

    /** @param anyway what the searches gained without more of anything */
    record All(List<Found> found, long anyway) { }

    /** @param top so many get a search of menus and are returned, worth most first */
    All of(List<More> things, int top) {
        return WeekRun.isTiny(problem) ? tiny(things) : near(things, top);
    }

    private All tiny(List<More> things) {
        long base = best(problem);
        List<Found> all = new ArrayList<>();
        for (int n = 0; n < things.size(); n++) {
            long one = best(things.get(n).in(problem, 1)) - base;
            int upTo = 1;
            for (int k : AMOUNTS) {
                upTo = one > 0 && !(things.get(n) instanceof More.Dish) && upTo == k / 2
                        && holds(best(things.get(n).in(problem, k)) - base, k, one) ? k : upTo;
            }
            all.add(new Found(n, one, upTo, HOUR, true));
        }
        all.sort(Comparator.comparingLong((Found f) -> -f.cents).thenComparing(f -> f.number));
        return new All(all, base - Account.of(problem, menu, packs).value());
    }

    private static boolean holds(long total, int k, long one) {
        return total * 10 >= 9L * k * one;
    }

    private static long best(WeekProblem p) {
        int[] none = new int[p.slots().size()];
        Arrays.fill(none, -1);
        return WeekRun.solve(p, none, new WeekRun.Effort(1, Duration.ZERO, OptionalLong.of(1), () -> false), f -> { }).valueCents();
    }

    /** A menu with the orders known for it. */
    private record Known(int[] menu, int[] packs) { }

    private All near(List<More> things, int top) {
        Known own = new Known(menu, WeekRun.near(problem, menu, packs).packs());
        long base = value(problem, own);
        List<Found> first = IntStream.range(0, things.size()).parallel().mapToObj(n -> new Found(n,
                value(things.get(n).in(problem, 1), own) - base, 1, HOUR, false)).sorted(bestFirst()).toList();
        List<Known> pool = new ArrayList<>(List.of(own));
        List<WeekProblem> searched = new ArrayList<>(List.of(problem));
        first.stream().limit(top).forEach(f -> searched.add(things.get(f.number).in(problem, 1)));
        searched.stream().parallel().map(this::other).toList().forEach(pool::add);
        long baseOf = best(problem, pool);
        List<Found> all = first.stream().limit(top).parallel().map(f -> settled(f, things.get(f.number), pool, base, baseOf))
                .sorted(bestFirst()).toList();
        return new All(all, baseOf - Account.of(problem, menu, packs).value());
    }

    private static Comparator<Found> bestFirst() {
        return Comparator.comparingLong((Found f) -> -f.cents).thenComparing(f -> f.number);
    }

    private Known other(WeekProblem p) {
        int[] found = new MenuSearch(p, p.prices().localPrice().toDouble() / 2).search(menu, 1,
                new MenuSearch.Effort(TRIES, 0, MEMORY), () -> false).choice();
        return new Known(found, WeekRun.near(p, found, packs).packs());
    }

    private Found settled(Found first, More thing, List<Known> pool, long base, long baseOf) {
        long one = best(thing.in(problem, 1), pool) - baseOf;
        int upTo = 1;
        for (int k : AMOUNTS) {
            upTo = one > 0 && !(thing instanceof More.Dish) && upTo == k / 2
                    && holds(best(thing.in(problem, k), pool) - baseOf, k, one) ? k : upTo;
        }
        long same = value(thing.in(problem, 1), pool.get(0)) - baseOf;
        boolean sameMenu = value(thing.in(problem, 1), pool.get(0)) - base >= one;
        long cents = sameMenu ? Math.max(one, same) : one;
        return new Found(first.number, cents, upTo, upTo > 1 ? HOUR : minutes(thing, pool, baseOf, cents), !sameMenu);
    }

    /** So many minutes of the hour already bring 99 of 100 cents of it. */
    private int minutes(More thing, List<Known> pool, long baseOf, long cents) {
        if (thing instanceof More.Units u && u.byTheHour(problem) && cents > 0) {
            Known best = pool.stream().max(Comparator.comparingLong(k -> value(thing.in(problem, 1), k))).orElseThrow();
            for (int m = STEP; m < HOUR; m += STEP) {
                if ((value(u.plus(problem, m), best) - baseOf) * 100 >= cents * 99) {
                    return m;
                }
            }
        }
        return HOUR;
    }

    private static long best(WeekProblem p, List<Known> pool) {
        return pool.stream().mapToLong(k -> value(p, k)).max().orElseThrow();
    }

    /** Of the menu with its own orders or orders near them; far below all others when a must is broken. */
    private static long value(WeekProblem p, Known known) {
        if (IntStream.range(0, known.menu.length).anyMatch(s -> known.menu[s] >= p.slots().get(s).candidates().size())) {
            return Long.MIN_VALUE / 4;
        }
        WeekRun.Found near = WeekRun.near(p, known.menu, known.packs);
        boolean stands = WeekRun.holds(p, known.menu, known.packs);
        return Math.max(near.complete() ? near.valueCents() : Long.MIN_VALUE / 4,
                stands ? Account.of(p, known.menu, known.packs).value() : Long.MIN_VALUE / 4);
    }
}
