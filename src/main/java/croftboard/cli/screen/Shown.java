package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.OrderLife;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A plan with what its screens need beside it.
 *
 * @param version empty while the plan has none
 * @param posted people work from it
 * @param now local time of the kitchen, for cut-offs that are past
 * @param verdict what the independent check of the plan says, one sentence
 * @param doubts orders that may not come as the plan says
 */
public record Shown(Book book, WeekPlan plan, Optional<Integer> version, boolean posted, LocalDateTime now,
        String verdict, OrderLife.Doubts doubts) {
    public Shown(Book book, WeekPlan plan, Optional<Integer> version, boolean posted, LocalDateTime now, String verdict) {
        this(book, plan, version, posted, now, verdict, OrderLife.Doubts.NONE);
    }

    Names names() {
        return new Names(book);
    }
}
