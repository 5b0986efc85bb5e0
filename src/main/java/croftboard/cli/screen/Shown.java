package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.plan.WeekPlan;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A plan with what its screens need beside it.
 *
 * @param version empty while the plan has none
 * @param posted people work from it
 * @param now local time of the kitchen, for cut-offs that are past
 * @param verdict what the independent check of the plan says, one sentence
 * @param notSent orders past their cut-off that were never sent: nothing comes of them
 */
public record Shown(Book book, WeekPlan plan, Optional<Integer> version, boolean posted, LocalDateTime now,
        String verdict, List<WeekPlan.Order> notSent) {
    public Shown(Book book, WeekPlan plan, Optional<Integer> version, boolean posted, LocalDateTime now, String verdict) {
        this(book, plan, version, posted, now, verdict, List.of());
    }

    Names names() {
        return new Names(book);
    }
}
