package croftboard.plan.check;

import croftboard.plan.WeekPlan;
import java.util.List;
import java.util.Optional;

/** What was made, served or past its cut-off when a plan was changed is in the new version as it was. */
final class DoneCheck {
    private final Subject of;
    private final Report report;

    DoneCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        of.revised().ifPresent(r -> {
            r.base().menu().forEach(row -> dish(row, r));
            r.base().batches().stream().filter(b -> r.over(b.made())).forEach(b -> report.findIf(!of.plan().batches().contains(b),
                    "done: the batch of " + b.recipe() + " made on " + Say.day(b.made()) + " is not in the new version as it was"));
            of.plan().batches().stream().filter(b -> r.over(b.made()) && !r.base().batches().contains(b))
                    .forEach(b -> report.find("done: " + b.recipe() + " would be made on " + Say.day(b.made())
                            + ", which is over"));
            report.count(r.base().menu().size(), "rows of what was planned before");
        });
    }

    private void dish(WeekPlan.Served row, Revised r) {
        Optional<WeekPlan.Served> done = r.done(row.slot());
        Optional<WeekPlan.Served> now = of.plan().menu().stream().filter(n -> n.slot().equals(row.slot())).findFirst();
        if (done.isEmpty() || now.isEmpty() || r.lostFrom(row).isPresent() && !r.over(row.days().get(0))) {
            return;
        }
        report.same("done: dish on " + row.slot() + ", which is made or served", now.get().recipe(), row.recipe());
        List<WeekPlan.Production> made = row.productions().stream().filter(p -> r.over(p.made())).toList();
        for (WeekPlan.Production p : made) {
            boolean there = now.get().productions().stream().anyMatch(n -> n.made().equals(p.made())
                    && n.batches().equals(p.batches()) && n.portions() == p.portions() && n.useBy().equals(p.useBy()));
            report.findIf(!there && r.lostFrom(row).isEmpty(), "done: " + row.recipe().orElse("nothing") + " on " + row.slot()
                    + " made on " + Say.day(p.made()) + " is not in the new version as it was");
        }
    }
}
