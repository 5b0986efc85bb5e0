package croftboard.cli;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.paper.report.BoardFacts;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanStore;
import croftboard.plan.work.PrepWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What the posted plans of some weeks said. */
final class PostedWeeks {
    private PostedWeeks() { }

    static List<BoardFacts.Posted> of(Book book, PlanStore plans, LocalDate from, LocalDate to) {
        List<BoardFacts.Posted> posted = new ArrayList<>();
        for (IsoWeek w = IsoWeek.of(from); w.compareTo(IsoWeek.of(to)) <= 0; w = w.plusWeeks(1)) {
            IsoWeek week = w;
            plans.posted(w).ifPresent(p -> posted.add(new BoardFacts.Posted(week, p.account().sales(), minutes(book, p))));
        }
        return posted;
    }

    /** By today's recipes; 0 when the book no longer has one of them. */
    private static long minutes(Book book, WeekPlan plan) {
        boolean there = book.recipes().keySet().containsAll(plan.choices().values())
                && plan.batches().stream().allMatch(b -> book.recipes().containsKey(b.recipe()));
        return there ? new PrepWork(book, plan).days().stream().flatMap(d -> d.benches().stream())
                .filter(b -> book.kitchen().stations().contains(b.station())).mapToLong(PrepWork.Bench::used).sum() : 0;
    }
}
