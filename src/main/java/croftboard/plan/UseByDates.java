package croftboard.plan;

import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Use-by days of batches and productions: their own life, or the earliest date of a component in them. Which batch of a
 * component goes into what follows the rule that placed the batches: the batch that was made for it.
 */
final class UseByDates {
    private final WeekProblem problem;
    private final int[] choice;
    private final Workload work;
    private final int[] ofBatch;

    UseByDates(WeekProblem problem, int[] choice, Workload work) {
        this.problem = problem;
        this.choice = choice;
        this.work = work;
        ofBatch = new int[work.batches().size()];
        for (int b = ofBatch.length - 1; b >= 0; b--) {
            Workload.Batch batch = work.batches().get(b);
            WeekProblem.Component made = problem.components().get(batch.component());
            int own = batch.day() + made.lifeDays() - 1;
            for (WeekProblem.StepPart part : made.parts()) {
                own = Math.min(own, partDay(part.component(), batch.day(), batch.lastDay()));
            }
            ofBatch[b] = own;
        }
    }

    int ofBatch(int batch) {
        return ofBatch[batch];
    }

    int ofProduction(int slot, int production) {
        WeekProblem.Candidate dish = problem.slots().get(slot).candidates().get(choice[slot]);
        WeekProblem.Production made = dish.productions().get(production);
        int day = made.lastDay();
        int parts = Integer.MAX_VALUE;
        for (WeekProblem.Demand d : dish.demands()) {
            if (d.useDay() == made.day() && d.lastDay() == day) {
                parts = Math.min(parts, partDay(d.component(), d.useDay(), day));
            }
        }
        return Math.min(made.useByDay(), parts);
    }

    /** The use-by day of what serves a demand: of stock or batches that are ready and live long enough, the soonest. */
    private int partDay(int component, int useDay, int lastDay) {
        int lead = problem.components().get(component).leadDays();
        List<Integer> days = new ArrayList<>();
        for (int b = 0; b < work.batches().size(); b++) {
            Workload.Batch x = work.batches().get(b);
            if (x.component() == component && x.day() + lead <= useDay && ofBatchOrOwn(b) >= lastDay) {
                days.add(ofBatchOrOwn(b));
            }
        }
        for (WeekProblem.ComponentStock lot : problem.componentStock()) {
            if (lot.component() == component && lot.from() <= useDay && lot.until() >= lastDay) {
                days.add(lot.until());
            }
        }
        return days.stream().min(Comparator.naturalOrder()).orElse(lastDay);
    }

    private int ofBatchOrOwn(int b) {
        Workload.Batch x = work.batches().get(b);
        return ofBatch[b] != 0 ? ofBatch[b] : x.day() + problem.components().get(x.component()).lifeDays() - 1;
    }
}
