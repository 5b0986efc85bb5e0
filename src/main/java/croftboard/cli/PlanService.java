package croftboard.cli;

import croftboard.book.Book;
import croftboard.plan.PlanAnswer;
import croftboard.plan.PlanRequest;
import java.time.LocalDateTime;

/** What makes a plan. */
interface PlanService {
    /** @param now in the kitchen's zone: deliveries whose cut-off is past are gone */
    PlanAnswer plan(Book book, LocalDateTime now, PlanRequest request);
}
