package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What packs beyond the announced ones would bring to a plan that people work from. The rest of the week is searched once with
 * all of them on offer; then, for several numbers of packs, the orders are searched for the plan's own menu and for the one
 * found. Between those numbers the worth is interpolated.
 */
public final class Surplus {
    private static final int ALL_UP_TO = 12;
    private static final int ROUNDS = 1_500;
    private final Book book;
    private final WeekPlan plan;
    private final ChangedWeek week;
    private final Repair repair;
    private final Change.More more;

    /**
     * So many packs taken.
     *
     * @param gain what the week is worth more than without any, all paid and each change at its price, cents
     * @param lastBrings what the last of them brings before it is paid, cents; between two numbers that were tried, the same
     *     for each
     * @param tried false: interpolated
     */
    public record Step(int packs, long gain, long lastBrings, boolean tried) { }

    /**
     * The answer.
     *
     * @param best packs to take: the fewest of those with the greatest gain
     * @param with the plan with so many
     */
    public record Answer(List<Step> steps, int best, WeekPlan with) { }

    /** @throws IllegalArgumentException for changes that cannot be so: ask {@link #faults} first */
    public Surplus(Book book, WeekPlan plan, int version, Given given, List<Change> earlier, Change.More more, LocalDateTime now) {
        this.book = book;
        this.plan = plan;
        this.more = more;
        List<Change> all = with(earlier, more);
        this.week = ChangedWeek.of(book, plan, given, all, now);
        this.repair = new Repair(book, plan, week, new WeekPlan.Revision(version, now, all.stream().map(Change::sentence).toList()));
    }

    public static List<String> faults(Book book, WeekPlan plan, Given given, List<Change> earlier, Change.More more,
            LocalDateTime now) {
        return ChangedWeek.of(book, plan, given, with(earlier, more), now).faults();
    }

    private static List<Change> with(List<Change> earlier, Change more) {
        List<Change> all = new ArrayList<>(earlier);
        all.add(more);
        return all;
    }

    public Answer answer(WeekRun.Effort effort) {
        int[] found = repair.settle(effort, p -> { }).choice();
        List<Integer> counts = counts(more.packs());
        long[] worth = new long[counts.size()];
        WeekRun.Found best = null;
        int bestAt = 0;
        for (int i = 0; i < worth.length; i++) {
            WeekRun.Found at = better(counts.get(i), found, effort.seed());
            worth[i] = Math.max(worth(at), i == 0 ? Long.MIN_VALUE : worth[i - 1]);
            if (best == null || worth(at) > worth(best)) {
                best = at;
                bestAt = i;
            }
        }
        return new Answer(steps(counts, worth), taken(best, counts.get(bestAt)), repair.named(best));
    }

    /** Packs of the offer that the found orders really take. */
    private int taken(WeekRun.Found best, int atMost) {
        return Math.min(atMost, best.packs()[offer()]);
    }

    private int offer() {
        return week.priced().offers().size() - 1;
    }

    private static List<Integer> counts(int most) {
        TreeSet<Integer> all = new TreeSet<>(List.of(0, most));
        for (int k = 1; k < most; k = k < ALL_UP_TO ? k + 1 : Math.max(k + 1, k * 3 / 2)) {
            all.add(k);
        }
        return new ArrayList<>(all);
    }

    private WeekRun.Found better(int packs, int[] found, long seed) {
        WeekProblem p = Problems.withSupply(week.priced(), limited(packs), week.priced().deliveries());
        WeekRun.Found own = repair.calmed(WeekRun.orders(p, week.start(), seed, ROUNDS));
        WeekRun.Found other = repair.calmed(WeekRun.orders(p, found, seed, ROUNDS));
        return !own.complete() || other.complete() && worth(other) > worth(own) ? other : own;
    }

    private List<WeekProblem.Offer> limited(int packs) {
        List<WeekProblem.Offer> offers = new ArrayList<>(week.priced().offers());
        WeekProblem.Offer o = offers.get(offer());
        offers.set(offer(), new WeekProblem.Offer(o.vendor(), o.item(), o.delivery(), o.pack(), o.packMg(), o.tiers(), 0, packs,
                o.locality(), o.whyLocal(), o.onList()));
        return offers;
    }

    private long worth(WeekRun.Found found) {
        return found.complete() ? repair.calmWorth(found) : Long.MIN_VALUE / 2;
    }

    private static List<Step> steps(List<Integer> counts, long[] worth) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < worth.length; i++) {
            int before = i == 0 ? 0 : counts.get(i - 1);
            long gain = worth[i] - worth[0];
            long was = i == 0 ? 0 : worth[i - 1] - worth[0];
            for (int k = i == 0 ? 0 : before + 1; k <= counts.get(i); k++) {
                long at = i == 0 ? 0 : was + (gain - was) * (k - before) / (counts.get(i) - before);
                long last = i == 0 ? 0 : (gain - was) / (counts.get(i) - before);
                steps.add(new Step(k, at, last, k == counts.get(i)));
            }
        }
        return steps;
    }

    /** Every order line and dish of the plan that so many packs would replace. */
    public Consequences replaces(Answer answer, LocalDateTime now) {
        return Consequences.of(book, plan, answer.with(), List.of(), now);
    }
}
