package croftboard.cli;

import croftboard.book.Book;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.ChangeGrammar;
import croftboard.plan.check.PlanChecker;
import croftboard.plan.check.Revised;
import java.time.LocalDateTime;
import java.util.Optional;

/** The independent check, in words. */
final class Checking implements PlanCheck {
    @Override
    public Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now) {
        return check(book, plan, given, now, Optional.empty());
    }

    @Override
    public Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now, Optional<WeekPlan> base) {
        Optional<WeekPlan.Revision> revision = plan.inputs().revision();
        if (revision.isPresent() && base.isEmpty()) {
            return new Verdict(false, "version " + revision.get().of() + ", which this plan changes, cannot be read: what was"
                    + " done by then cannot be checked.");
        }
        return sentence(PlanChecker.check(book, plan, given, now, revision.map(r -> new Revised(base.get(), r.now(),
                new ChangeGrammar(book).read(r.changes()).changes()))));
    }

    private static Verdict sentence(croftboard.plan.check.Verdict verdict) {
        return new Verdict(verdict.ok(), verdict.ok()
                ? "every figure and every must holds, worked out again from the book: " + verdict.verified() + "."
                : verdict.findings().size() + " things do not hold: " + String.join("; ", verdict.findings()) + ".");
    }
}
