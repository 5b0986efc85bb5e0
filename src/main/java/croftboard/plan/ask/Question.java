package croftboard.plan.ask;

import croftboard.book.Book;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import croftboard.plan.change.ChangeGrammar;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.WholeDishes;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan about which something is asked.
 *
 * @param given what other weeks have decided, as when the plan was made
 * @param now in the kitchen's zone: what is past by then stays as it is
 */
public record Question(Book book, WeekPlan plan, Given given, LocalDateTime now) {

    /** The week under what it was already changed for, and more. */
    ChangedWeek under(List<Change> more) {
        List<Change> all = new ArrayList<>(new ChangeGrammar(book).read(plan.inputs().revision()
                .map(WeekPlan.Revision::changes).orElse(List.of())).changes());
        all.addAll(more);
        return WholeDishes.of(ChangedWeek.of(book, plan, given, all, now));
    }

    /** The week as it is. @throws Unanswerable when the plan's dishes can no longer be read out of the book */
    ChangedWeek asItIs() {
        ChangedWeek week = under(List.of());
        if (!week.faults().isEmpty()) {
            throw new Unanswerable(week.faults());
        }
        return week;
    }
}
