package croftboard.cli;

import croftboard.book.Book;
import croftboard.plan.WeekPlan;

/** An independent look at a finished plan, which trusts nothing that made it. */
interface PlanCheck {
    Verdict check(Book book, WeekPlan plan);

    /** @param holds nothing was found wrong. @param sentence for people, ends with a full stop */
    record Verdict(boolean holds, String sentence) { }
}
