package croftboard.plan.check;

import croftboard.plan.WeekPlan;
import java.util.SortedMap;
import java.util.TreeMap;

/** Substitutes: only those that the recipes let the plan use and only where nobody sells the ingredient this week. */
final class SwapsCheck {
    private final Subject of;
    private final Report report;

    SwapsCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        SortedMap<String, SortedMap<String, String>> derived = new TreeMap<>();
        for (WeekPlan.Served row : of.plan().menu()) {
            of.dish(row).filter(d -> !of.making().swaps(d).isEmpty())
                    .ifPresent(d -> derived.put(d.id(), of.making().swaps(d)));
        }
        report.same("swaps", of.plan().swaps(), derived);
    }
}
