package croftboard.plan.check;

import croftboard.book.LocalCheck;
import croftboard.book.LocalRules;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import java.util.Optional;

/** What is local, line by line by the definition in force; local + not local + unclassified = all food money. */
final class ShareCheck {
    private final Subject of;
    private final Report report;

    ShareCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        long[] cents = new long[WeekProblem.Locality.values().length];
        for (WeekPlan.Order order : of.plan().orders()) {
            for (WeekPlan.OrderLine line : order.lines()) {
                cents[line.locality().ordinal()] += line.cost();
                of.offered().find(order.vendor(), order.delivery(), line.item(), line.pack())
                        .ifPresent(pack -> line(line, pack));
            }
        }
        WeekPlan.Share share = of.plan().share();
        report.sameCents("share: local", share.local(), cents[WeekProblem.Locality.LOCAL.ordinal()]);
        report.sameCents("share: not local", share.notLocal(), cents[WeekProblem.Locality.NOT_LOCAL.ordinal()]);
        report.sameCents("share: unclassified", share.unclassified(),
                cents[WeekProblem.Locality.UNCLASSIFIED.ordinal()]);
        report.sameCents("share: all of it", share.total(),
                of.plan().orders().stream().mapToLong(WeekPlan.Order::total).sum());
        report.same("share: target", share.target(), target(of));
        report.same("share: definition", share.definition(), of.book().kitchen().local()
                .map(l -> l.definition().say()).orElse("no definition of local in force"));
    }

    static Ratio target(Subject of) {
        return of.book().kitchen().local().isPresent() ? of.book().seasons().targetFor(of.plan().week()) : Ratio.ZERO;
    }

    private void line(WeekPlan.OrderLine line, Offered.Pack pack) {
        String what = "share: " + line.pack() + " of " + line.item() + " from " + pack.vendor().id();
        Optional<LocalRules> rules = of.book().kitchen().local();
        if (rules.isEmpty()) {
            report.same(what, line.locality(), WeekProblem.Locality.UNCLASSIFIED);
            return;
        }
        LocalCheck.Verdict verdict = new LocalCheck(of.book().vendors(), of.book().kitchen().place(),
                rules.get().definition()).of(pack.vendor(), pack.offer());
        report.same(what, line.locality().name(), verdict.answer().name());
        report.same(what + ", why", line.whyLocal(), verdict.why());
    }
}
