package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.measure.Ratio;
import croftboard.menu.MenuSearch;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.ProblemBuilder;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * The least disturbing way out of changed facts. At once: the plan's own menu with new orders, and only where that cannot be
 * bought, other dishes. Then settled: the whole open rest of the week searched again, each dish that differs at the price of a
 * change, and order lines taken back that gain less than disturbing a vendor costs. Of ways that are worth nearly the same the
 * least disturbing is taken.
 */
public final class Repair {
    private static final int FIRST_ROUNDS = 2_000;
    private static final int FIRST_TRIES = 40_000;
    private static final int FIRST_MEMORY = 12;
    private static final int BACK_ROUNDS = 400;
    /** People rather work from the plan they know than gain so little; common practice, no source. */
    private static final long MARGIN_PROMILLE = 5;
    private final Book book;
    private final WeekPlan plan;
    private final ChangedWeek week;
    private final int[] before;
    private final long lineCents;
    private final WeekPlan.Revision revision;

    /**
     * A way out, settled.
     *
     * @param choice dish of each slot, for a search that goes on from it
     * @param atMostBetter no other menu of the open rest, each change at its price, is worth more than so much more, cents;
     *     empty: nothing proved
     * @param worth value less the price of every change, cents
     */
    public record Settled(WeekPlan plan, int[] choice, Optional<Long> atMostBetter, long worth) { }

    /** @param week without faults. @param revision what is written into the new version */
    public Repair(Book book, WeekPlan plan, ChangedWeek week, WeekPlan.Revision revision) {
        if (!week.faults().isEmpty()) {
            throw new IllegalArgumentException(week.faults().toString());
        }
        this.book = book;
        this.plan = plan;
        this.week = week;
        this.revision = revision;
        this.before = PlanPacks.of(week.built().problem(), plan);
        this.lineCents = ChangePrices.orderLine(book.kitchen().promises().change().value());
    }

    /** Complete whenever a search of a moment finds a way. */
    public WeekPlan atOnce(long seed) {
        return named(calmed(quick(seed)));
    }

    private WeekRun.Found quick(long seed) {
        if (EveryWay.suits(week.priced())) {
            Optional<WeekRun.Found> best = new EveryWay(week.priced(), before, lineCents).best();
            if (best.isPresent()) {
                return best.get();
            }
        }
        WeekRun.Found own = WeekRun.orders(week.priced(), week.start(), seed, FIRST_ROUNDS);
        if (own.complete()) {
            return own;
        }
        WeekProblem p = week.priced();
        WeekRun.Found mended = new Mend(p, seed).run(own);
        if (mended.complete()) {
            return mended;
        }
        WeekRun.Found other = searched(seed);
        return other.complete() ? other : mended; // what cannot be done at all disturbs no more than it must
    }

    private WeekRun.Found searched(long seed) {
        WeekProblem p = week.priced();
        int[] menu = new MenuSearch(p, p.prices().localPrice().toDouble() / 2).search(week.start(), seed,
                new MenuSearch.Effort(FIRST_TRIES, 0, FIRST_MEMORY), () -> false).choice();
        WeekRun.Found found = WeekRun.orders(p, menu, seed, FIRST_ROUNDS);
        return found.complete() ? found : new Mend(p, seed).run(found);
    }

    /** Where dishes had to go, a search from the menu looked for at large may end better than one from the mended menu. */
    private WeekRun.Found beginning(WeekRun.Found first, long seed) {
        if (java.util.Arrays.equals(first.choice(), week.start()) || EveryWay.suits(week.priced())) {
            return first;
        }
        WeekRun.Found other = calmed(searched(seed));
        return other.complete() && (!first.complete() || calmWorth(other) > calmWorth(first)) ? other : first;
    }

    /** @param better told each better plan on the way */
    public WeekPlan settled(WeekRun.Effort effort, Consumer<WeekPlan> better) {
        return settle(effort, better).plan();
    }

    /** @param better told each better plan on the way */
    public Settled settle(WeekRun.Effort effort, Consumer<WeekPlan> better) {
        WeekRun.Found first = calmed(quick(effort.seed()));
        WeekRun.Found raw = WeekRun.solve(week.priced(), beginning(first, effort.seed()).choice(), effort, f -> better.accept(named(calmed(f))));
        WeekRun.Found found = first.complete() && calmWorth(first) >= calmWorth(calmed(raw)) - margin(first) ? first
                : backToTheMenu(calmed(raw), effort.seed());
        boolean wins = found.complete() && (!first.complete() || calmWorth(found) > calmWorth(first));
        WeekRun.Found best = wins ? found : first;
        Optional<Long> gap = best.complete() ? raw.bestAtAll().map(b -> Math.max(0, b - pricedWorth(best)))
                : Optional.empty();
        return new Settled(named(best), best.choice(), gap, calmWorth(best));
    }

    /**
     * Takes back dishes that gain little: first those that lose least by it, as long as all of them together lose no more than
     * the margin.
     */
    private WeekRun.Found backToTheMenu(WeekRun.Found from, long seed) {
        long floor = calmWorth(from) - margin(from);
        record Way(int slot, long worth) { }
        List<Way> ways = new ArrayList<>();
        for (int s = 0; from.complete() && s < week.start().length; s++) {
            if (from.choice()[s] != week.start()[s] && week.start()[s] >= 0) {
                WeekRun.Found back = back(from, s, seed);
                ways.add(new Way(s, back.complete() ? calmWorth(back) : Long.MIN_VALUE));
            }
        }
        ways.sort(java.util.Comparator.comparingLong((Way w) -> -w.worth()).thenComparingInt(Way::slot));
        WeekRun.Found best = from;
        for (Way way : ways) {
            WeekRun.Found back = back(best, way.slot(), seed);
            best = back.complete() && calmWorth(back) >= floor ? back : best;
        }
        return best;
    }

    private WeekRun.Found back(WeekRun.Found from, int slot, long seed) {
        int[] menu = from.choice().clone();
        menu[slot] = week.start()[slot];
        return calmed(WeekRun.orders(week.priced(), menu, seed, BACK_ROUNDS));
    }

    private static long margin(WeekRun.Found found) {
        return Math.abs(found.valueCents()) * MARGIN_PROMILLE / 1000;
    }

    /** The rest of the week planned anew from now on, as if nobody worked from the plan: no change has a price. */
    public WeekPlan anew(int[] start, WeekRun.Effort effort) {
        WeekRun.Found found = WeekRun.solve(week.built().problem(), start, effort, f -> { });
        WeekRun.Found own = WeekRun.orders(week.built().problem(), start, effort.seed(), FIRST_ROUNDS);
        return named(own.complete() && (!found.complete() || own.valueCents() > found.valueCents()) ? own : found);
    }

    WeekRun.Found calmed(WeekRun.Found found) {
        if (!found.complete()) {
            return found;
        }
        int[] packs = new StayPut(week.built().problem(), found.choice(), before, lineCents).calm(found.packs());
        return new WeekRun.Found(found.choice(), packs, true, found.valueCents(), found.bestForMenu(), found.bestAtAll(),
                found.how());
    }

    /** Value less the price of every dish and order line that differs from the plan's. */
    long calmWorth(WeekRun.Found found) {
        int lines = 0;
        for (int o = 0; o < before.length; o++) {
            lines += found.packs()[o] == before[o] ? 0 : 1;
        }
        return pricedWorth(found) - lineCents * lines;
    }

    private long pricedWorth(WeekRun.Found found) {
        return Account.of(week.priced(), found.choice(), found.packs(), Workload.of(week.priced(), found.choice())).value();
    }

    WeekPlan named(WeekRun.Found found) {
        WeekPlan.Inputs was = plan.inputs();
        Map<String, Map<String, String>> swaps = new TreeMap<>(week.built().swaps());
        WeekPlan.Inputs inputs = new WeekPlan.Inputs(was.seed(), was.tries(), was.rounds(), was.nodes(), was.kept(),
                was.from(), was.gone(), Optional.of(revisionOf(found.choice(), swaps)));
        ProblemBuilder.Built built = new ProblemBuilder.Built(week.built().problem(), List.of(), swaps, week.built().gone());
        return WeekRun.plan(book, plan.week(), built, found.choice(), found.packs(), week.standing(), inputs,
                new WeekPlan.Proof(Optional.empty(), Optional.empty(), found.how()));
    }

    private WeekPlan.Revision revisionOf(int[] choice, Map<String, Map<String, String>> swaps) {
        TreeMap<String, Ratio> fewer = new TreeMap<>();
        List<String> accepted = new ArrayList<>(plan.inputs().revision().map(WeekPlan.Revision::accepted).orElse(List.of()));
        for (int s = 0; s < choice.length; s++) {
            Variants.Variant v = week.variants().getOrDefault(s, Map.of()).get(choice[s]);
            if (v != null) {
                WeekProblem.Slot slot = week.built().problem().slots().get(s);
                String recipe = slot.candidates().get(choice[s]).recipe();
                v.fewer().ifPresent(share -> fewer.put(slot.id(), share));
                if (!v.swaps().isEmpty()) {
                    Map<String, String> all = new TreeMap<>(swaps.getOrDefault(recipe, Map.of()));
                    all.putAll(Variants.everyLine(v.swaps()));
                    swaps.put(recipe, all);
                }
                if (v.newStatement() && !accepted.contains(recipe)) {
                    accepted.add(recipe);
                }
            }
        }
        return new WeekPlan.Revision(revision.of(), revision.now(), revision.changes(), fewer, List.copyOf(accepted));
    }
}
