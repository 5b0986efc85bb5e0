package croftboard.plan.check;

import croftboard.book.Recipe;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Use-by dates: a batch carries its own life's last day or, if earlier, the earliest date of a component that may be in
 * it; never more than seven days, the day of making included, for food that needs cold or heat (Food Code 3-501.17).
 */
final class UseByCheck {
    private static final int DAYS_AT_MOST = 7;
    private final Subject of;
    private final Counted counted;
    private final Report report;
    private int dates;

    UseByCheck(Subject of, Counted counted, Report report) {
        this.of = of;
        this.counted = counted;
        this.report = report;
    }

    void run() {
        for (WeekPlan.Served row : of.plan().menu()) {
            of.dish(row).ifPresent(d -> row.productions().forEach(p -> date(d, p.made(), p.lastServed(), p.useBy(),
                    "use-by: " + d.id() + " on " + row.slot() + ", made " + Say.day(p.made()),
                    of.revised().flatMap(r -> r.made(row.slot(), p.made())).isPresent())));
        }
        for (WeekPlan.Batch b : of.plan().batches()) {
            of.recipe(b.recipe()).ifPresent(r -> date(r, b.made(), b.lastServed(), b.useBy(), "use-by: " + r.id()
                    + " of " + Say.day(b.made()), of.revised().map(x -> x.over(b.made())).orElse(false)));
        }
        report.count(dates, "use-by dates");
    }

    private void date(Recipe recipe, LocalDate made, LocalDate lastServed, LocalDate useBy, String where,
            boolean done) {
        dates++;
        report.findIf(useBy.isBefore(lastServed), where + ": served until " + Say.day(lastServed)
                + ", but to be used by " + Say.day(useBy));
        report.findIf(lastServed.isBefore(made), where + ": served until " + Say.day(lastServed) + ", before it is made");
        boolean ambient = recipe.hold() == Recipe.Hold.AMBIENT;
        report.findIf(!ambient && useBy.isAfter(made.plusDays(DAYS_AT_MOST - 1L)), where + ": " + Say.day(useBy)
                + " is more than seven days, the day of making included");
        LocalDate derived = made.plusDays(of.making().lasts(recipe) - 1L);
        for (String part : of.making().components(recipe).keySet()) {
            LocalDate partDate = earliest(part, made, lastServed).orElse(lastServed);
            derived = partDate.isBefore(derived) ? partDate : derived;
        }
        report.findIf(!done && !useBy.equals(derived), where + ": the plan says " + Say.day(useBy)
                + ", its own life and its parts give " + Say.day(derived));
    }

    /** The soonest date among batches and stock of a component that are ready and last long enough. */
    private Optional<LocalDate> earliest(String component, LocalDate useDay, LocalDate lastDay) {
        Recipe recipe = of.book().recipe(component);
        BatchesCheck.Demand demand = new BatchesCheck.Demand(useDay, lastDay, 0);
        var batches = of.plan().batches().stream().filter(b -> b.recipe().equals(component))
                .filter(b -> BatchesCheck.serves(b, recipe, demand)).map(WeekPlan.Batch::useBy);
        var stock = counted.components(component).stream().filter(l -> BatchesCheck.serves(l, demand))
                .map(Counted.Lot::until);
        return java.util.stream.Stream.concat(batches, stock).min(LocalDate::compareTo);
    }
}
