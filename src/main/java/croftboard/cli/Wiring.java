package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.plan.Given;
import croftboard.plan.Planner;
import croftboard.plan.WeekPlan;
import croftboard.plan.check.PlanChecker;
import croftboard.plan.check.Verdict;
import java.time.LocalDateTime;
import java.util.Optional;

/** Puts the program together: the only place where commands meet what does their work. */
final class Wiring {
    private Wiring() { }

    private static PlanCheck.Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now) {
        Verdict verdict = PlanChecker.check(book, plan, given, now);
        return new PlanCheck.Verdict(verdict.ok(), verdict.ok()
                ? "every figure and every must holds, worked out again from the book: " + verdict.verified() + "."
                : verdict.findings().size() + " things do not hold: " + String.join("; ", verdict.findings()) + ".");
    }

    static Tools tools() {
        return new Tools(BookReader::read, (book, now, request) -> new Planner(book, Optional.of(now)).plan(request),
                Wiring::check);
    }
}
