package croftboard.plan.change;

import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Component batches that are made, as a problem sees them: a slot with one choice that holds what they were made of and the
 * hands they took, and stock of what they yielded.
 */
final class MadeSlot {
    private final WeekProblem problem;
    private final List<WeekProblem.Need> needs = new ArrayList<>();
    private final List<WeekProblem.Use> uses = new ArrayList<>();
    private final List<WeekProblem.Demand> demands = new ArrayList<>();
    private final List<WeekProblem.LooseNeed> loose = new ArrayList<>();
    private final List<WeekProblem.ComponentStock> stock = new ArrayList<>();
    private final List<WeekProblem.ItemStock> looseStock = new ArrayList<>();
    private long staples;

    /** @param spoiled of the batches: they took what they took, and serve nothing */
    MadeSlot(WeekProblem problem, List<WeekPlan.Batch> batches, Set<WeekPlan.Batch> spoiled) {
        this.problem = problem;
        batches.forEach(b -> add(b, spoiled.contains(b)));
    }

    private int day(java.time.LocalDate date) {
        return Math.toIntExact(ChronoUnit.DAYS.between(problem.firstDay(), date));
    }

    private void add(WeekPlan.Batch batch, boolean spoiled) {
        int number = component(batch.recipe());
        WeekProblem.Component made = problem.components().get(number);
        int day = day(batch.made());
        int last = day(batch.lastServed());
        int steps = Math.toIntExact(batch.batches().over(made.step()).round());
        staples += batch.staples();
        for (WeekProblem.StepNeed n : made.perStep()) {
            needs.add(new WeekProblem.Need(n.item(), Math.max(0, day - n.aheadDays()), n.mg() * steps));
            loose.add(new WeekProblem.LooseNeed(n.item(), Math.max(0, day - n.aheadDays()), day, n.mg() * steps));
        }
        for (WeekProblem.StepUse u : made.uses()) {
            int until = problem.resources().get(u.resource()).held() ? last : day;
            for (int d = day; d <= until; d++) {
                uses.add(new WeekProblem.Use(u.resource(), d, u.units(steps)));
            }
        }
        made.parts().forEach(p -> demands.add(new WeekProblem.Demand(p.component(), day, last, p.mg() * steps)));
        if (spoiled) {
            return;
        }
        stock.add(new WeekProblem.ComponentStock(number, day + made.leadDays(), day(batch.useBy()), batch.mg()));
        explode(number, batch.mg());
    }

    /** For bounds: what is in a batch, as items that may be used on every day; rounded up, which only frees. */
    private void explode(int component, long mg) {
        WeekProblem.Component c = problem.components().get(component);
        long steps = (mg + c.stepMg() - 1) / c.stepMg();
        c.perStep().forEach(n -> looseStock.add(new WeekProblem.ItemStock(n.item(), 0, problem.days() - 1, n.mg() * steps)));
        c.parts().forEach(p -> explode(p.component(), p.mg() * steps));
    }

    List<WeekProblem.ItemStock> looseStock() {
        return looseStock;
    }

    /** What a production that is lost whole has taken. */
    void lose(WeekProblem.Candidate lost) {
        needs.addAll(lost.needs());
        uses.addAll(lost.uses());
        demands.addAll(lost.demands());
        loose.addAll(lost.loose());
        staples += lost.stapleCents();
    }

    /** Food of the house that is lost: taken on that day and never seen again. */
    void lose(WeekProblem.Need lost) {
        needs.add(lost);
        loose.add(new WeekProblem.LooseNeed(lost.item(), lost.day(), lost.day(), lost.mg()));
    }

    private int component(String recipe) {
        for (int c = 0; c < problem.components().size(); c++) {
            if (problem.components().get(c).recipe().equals(recipe)) {
                return c;
            }
        }
        throw new IllegalStateException("no component [" + recipe + "] any more, of which a batch is made");
    }

    /** Stock of what was made. */
    List<WeekProblem.ComponentStock> stock() {
        return stock.stream().sorted(java.util.Comparator.comparingInt(WeekProblem.ComponentStock::component)
                .thenComparingInt(WeekProblem.ComponentStock::until)).toList();
    }

    WeekProblem.Slot slot() {
        int dish = 1 + problem.slots().stream().flatMap(s -> s.candidates().stream())
                .mapToInt(WeekProblem.Candidate::dish).max().orElse(-1);
        int line = 1 + problem.slots().stream().mapToInt(WeekProblem.Slot::line).max().orElse(-1);
        WeekProblem.Candidate made = new WeekProblem.Candidate(dish, ChangedWeek.HOUSE, 0, 0, 0, staples, needs, uses,
                demands, loose, 0, 0, 0, 0, 0, List.of());
        return new WeekProblem.Slot(ChangedWeek.HOUSE, line, new int[] {problem.openDays().length == 0 ? 0
                : problem.openDays()[0]}, false, 0, false, List.of(made));
    }
}
