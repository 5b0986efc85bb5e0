package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import croftboard.plan.Altered;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** A production of a dish that is lost whole: what it was made of is gone all the same. */
record LostProduction(WeekPlan.Served row, WeekPlan.Production production) {

    /** Whether what is left of its slot still counts it: it was sold from before it was lost. */
    boolean standsIn(WeekProblem p) {
        return p.slots().stream().filter(s -> s.id().equals(row.slot())).flatMap(s -> s.candidates().stream())
                .filter(c -> row.recipe().equals(Optional.of(c.recipe())))
                .anyMatch(c -> c.productions().stream().anyMatch(x -> x.day() == day(p, production.made())));
    }

    /** A moment at which the same deliveries could be ordered as when the plan was made. */
    static Optional<LocalDateTime> asOf(WeekPlan plan) {
        return plan.inputs().gone().map(g -> g.plusNanos(1));
    }

    private static int day(WeekProblem p, LocalDate date) {
        return Math.toIntExact(ChronoUnit.DAYS.between(p.firstDay(), date));
    }

    /** What it took: of a run that is made more than once, what falls on the days since the making before. */
    WeekProblem.Candidate asMade(Book book, WeekPlan plan, Given given) {
        SortedMap<LocalDate, Ratio> made = new TreeMap<>();
        row.productions().forEach(p -> made.put(p.made(), p.batches()));
        WeekProblem p = ProblemBuilder.build(book, plan.week(), Map.of(row.slot(), row.recipe().orElseThrow()), given,
                asOf(plan), new Altered(Set.of(), Map.of(row.slot(), made), Map.of(), EveryLine.of(plan))).problem();
        WeekProblem.Candidate whole = p.slots().stream().filter(s -> s.id().equals(row.slot()))
                .flatMap(s -> s.candidates().stream()).findFirst().orElseThrow();
        int day = day(p, production.made());
        int before = whole.productions().stream().mapToInt(WeekProblem.Production::day).filter(d -> d < day).max().orElse(-1);
        List<WeekProblem.Need> needs = whole.needs().stream().filter(n -> n.day() > before && n.day() <= day).toList();
        List<WeekProblem.Use> uses = whole.uses().stream().filter(u -> u.day() > before && u.day() <= day).toList();
        List<WeekProblem.Demand> demands = whole.demands().stream().filter(d -> d.useDay() == day).toList();
        List<WeekProblem.LooseNeed> loose = needs.stream()
                .map(n -> new WeekProblem.LooseNeed(n.item(), n.day(), n.day(), n.mg())).toList();
        long staples = whole.productions().size() == 1 ? whole.stapleCents()
                : Ratio.of(whole.stapleCents()).times(production.portions()).over(whole.portions()).round();
        return new WeekProblem.Candidate(whole.dish(), whole.recipe(), 0, 0, 0, staples, needs, uses, demands, loose, 0, 0, 0,
                0, 0, List.of());
    }
}
