package croftboard.cli;

import croftboard.book.Book;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import java.time.LocalDateTime;
import java.util.Optional;

/** An independent look at a finished plan, which trusts nothing that made it. */
interface PlanCheck {
    /**
     * @param given what posted plans of other weeks had decided
     * @param now deliveries whose cut-off is before it could not be ordered; empty: not looked at
     */
    Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now);

    /**
     * A plan that may have been changed under way.
     *
     * @param base the version that was changed; empty: planned anew
     */
    default Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now, Optional<WeekPlan> base) {
        return check(book, plan, given, now);
    }

    /** A moment at which the same deliveries could be ordered as when the plan was made. */
    static Optional<LocalDateTime> asOf(WeekPlan plan) {
        return plan.inputs().gone().map(g -> g.plusNanos(1));
    }

    /** @param holds nothing was found wrong. @param sentence for people, ends with a full stop */
    record Verdict(boolean holds, String sentence) { }
}
