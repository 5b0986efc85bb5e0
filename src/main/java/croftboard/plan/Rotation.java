package croftboard.plan;

import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import croftboard.need.Account;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Several weeks planned as one, as pure data. Each week is a whole plan of its own, as {@code plan} makes it; what earlier
 * weeks hand on to it (food left over, dishes within the gap) stands beside it, so that each can be checked alone.
 *
 * @param fingerprint of the book it was made from
 * @param weeks one for each week of the span, in order
 * @param account of all weeks as one: what one week leaves and another uses is neither sold nor bought twice, surplus is
 *     worth its share only at the end, and the promises of local share and food cost are reckoned over all weeks. All other
 *     lines are the sums of the weeks'
 * @param share of the food money of all weeks
 * @param proof about all weeks as one; empty where nothing was proved
 * @param newDishes dishes that no earlier plan has served, in order of their first week
 * @param swaps what the calendar forced out of a cycle; empty when it is none
 */
public record Rotation(WeekSpan span, String fingerprint, Inputs inputs, List<Week> weeks, Account account,
        WeekPlan.Share share, WeekPlan.Proof proof, RotationVariety variety, List<NewDish> newDishes, List<Swap> swaps) {

    /** Format of the rotation's file; a newer one is refused, an older one is read. */
    public static final int FORMAT = 1;

    /**
     * What it was made with, enough to make it again.
     *
     * @param steps menus that each search looked at; 0: limited by the clock
     * @param cycle so many weeks are repeated; empty: no cycle
     * @param newAMonth most new dishes in a calendar month; empty: no limit, or nothing is known to be old
     */
    public record Inputs(long seed, long steps, Optional<Integer> cycle, Optional<Integer> newAMonth) { }

    /** @param given what posted plans and the rotation's own earlier weeks have decided for it */
    public record Week(WeekPlan plan, Given given) {
        public IsoWeek week() {
            return plan.week();
        }
    }

    public record NewDish(IsoWeek first, String recipe) { }

    /** @param was the cycle's dish. @param is empty: nothing. @param why in words */
    public record Swap(IsoWeek week, String slot, String was, Optional<String> is, String why) { }

    /** The two days of the member that the screens speak of, where the kitchen is open on both. */
    public static final Set<DayOfWeek> MEMBER_DAYS = Set.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY);

    public boolean complete() {
        return weeks.stream().allMatch(w -> w.plan().complete());
    }

    /** The one number: cents. */
    public long value() {
        return account.value();
    }

    public Optional<Week> week(IsoWeek week) {
        return weeks.stream().filter(w -> w.week().equals(week)).findFirst();
    }

    /** Promises kept, and promises there are, in one week: each day of a daily promise counts as one. */
    public static int kept(WeekPlan plan) {
        return (int) plan.promises().stream().filter(WeekPlan.Promise::kept).count();
    }
}
