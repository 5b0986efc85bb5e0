package croftboard.plan.ask;

import croftboard.book.Book;
import croftboard.book.Promises;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.ChangedWeek;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What clashes in a week of a book, with what is kept in its plan and what else is to be kept. */
public final class ClashAsked {
    private final Book book;
    private final IsoWeek week;
    private final Optional<WeekPlan> plan;
    private final Given given;
    private final LocalDateTime now;

    /** @param plan empty: the week has none yet */
    public ClashAsked(Book book, IsoWeek week, Optional<WeekPlan> plan, Given given, LocalDateTime now) {
        this.book = book;
        this.week = week;
        this.plan = plan;
        this.given = given;
        this.now = now;
    }

    /**
     * @param impossible no plan of the week keeps its musts
     * @param clashes of the musts, else of promises that cannot be kept
     * @param cheaper promises broken in the plan that could be kept: breaking them costs less
     */
    public record Answer(boolean impossible, List<Clash> clashes, List<WeekPlan.Promise> cheaper) { }

    private record Week(WeekProblem problem, int[] start) { }

    /**
     * @param keep dish by slot, beside what the plan keeps
     * @throws Unanswerable when a slot or dish does not exist
     */
    public Answer of(Map<String, String> keep) {
        SortedMap<String, String> kept = new TreeMap<>(plan.map(p -> p.inputs().kept()).orElse(new TreeMap<>()));
        kept.putAll(keep);
        Week asked = week(kept);
        Map<Integer, WeekProblem.Slot> opened = Relaxed.opened(asked.problem, week(new TreeMap<>()).problem);
        List<Clash> clashes = new ClashSearch(asked.problem, opened, promised(asked.problem), asked.start).all();
        boolean impossible = clashes.stream().anyMatch(c -> c.of().isEmpty());
        List<WeekPlan.Promise> broken = plan.map(WeekPlan::promises).orElse(List.of()).stream()
                .filter(p -> !p.kept() && p.id().startsWith("coverage ")).filter(p -> clashes.stream().noneMatch(c -> c.of()
                        .equals(Optional.of(new Clash.Promise(p.say(), p.day().orElseThrow()))))).toList();
        return new Answer(impossible, clashes, impossible ? List.of() : broken);
    }

    private Week week(SortedMap<String, String> kept) {
        if (plan.isEmpty()) {
            ProblemBuilder.Built built = ProblemBuilder.build(book, week, kept, given, Optional.of(now));
            refuse(built.keptFaults());
            int[] none = new int[built.problem().slots().size()];
            Arrays.fill(none, -1);
            return new Week(built.problem(), none);
        }
        WeekPlan p = plan.get();
        WeekPlan.Inputs i = p.inputs();
        WeekPlan with = new WeekPlan(p.week(), p.fingerprint(), new WeekPlan.Inputs(i.seed(), i.tries(), i.rounds(), i.nodes(), kept,
                i.from(), i.gone(), i.revision()), p.menu(), p.batches(), p.orders(), p.needs(), p.flows(), p.surplus(), p.account(),
                p.promises(), p.share(), p.proof(), p.missing(), p.swaps());
        ChangedWeek changed = new Question(book, with, given, now).under(List.of());
        refuse(changed.built().keptFaults());
        refuse(changed.faults());
        return new Week(changed.built().problem(), changed.start());
    }

    private static void refuse(List<String> faults) {
        if (!faults.isEmpty()) {
            throw new Unanswerable(faults);
        }
    }

    private List<ClashSearch.Promised> promised(WeekProblem p) {
        List<ClashSearch.Promised> all = new ArrayList<>();
        List<Promises.Coverage> coverage = book.kitchen().promises().coverage();
        for (int k = 0; k < coverage.size(); k++) {
            for (int day : p.openDays()) {
                all.add(new ClashSearch.Promised(new Fact.Kept(k, day), coverage.get(k).say()));
            }
        }
        return all;
    }
}
