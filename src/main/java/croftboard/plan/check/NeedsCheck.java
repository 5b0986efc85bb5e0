package croftboard.plan.check;

import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Needs of every item and day, from the plan's own productions and batches through the recipes. Rounding may only add: the
 * plan's milligrams are at least the exact need, and above it by less than one for each making that adds to it.
 */
final class NeedsCheck {
    private record Key(String item, LocalDate day) { }

    private static final class Exact {
        private Ratio mg = Ratio.ZERO;
        private long makings;
    }

    private final Subject of;
    private final Report report;
    private final Map<Key, Exact> exact = new TreeMap<>(java.util.Comparator.comparing(Key::item)
            .thenComparing(Key::day));

    NeedsCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        for (WeekPlan.Served row : of.plan().menu()) {
            of.dish(row).ifPresent(dish -> row.productions().forEach(p -> add(dish, p.batches(), p.made(), 1)));
        }
        for (WeekPlan.Batch b : of.plan().batches()) {
            of.recipe(b.recipe()).ifPresent(r -> add(r, b.batches(), b.made(), b.batches().over(r.batchStep()).ceil()));
        }
        LostMakings.of(of).forEach(l -> add(l.dish(), l.production().batches(), l.production().made(), 1));
        of.revised().ifPresent(this::lost);
        compare();
        report.count(of.plan().needs().size(), "needs");
    }

    /** Food of the house that is lost is taken on that day. */
    private void lost(Revised revised) {
        revised.changes().forEach(c -> {
            if (c instanceof Change.Lost lost) {
                Exact e = exact.computeIfAbsent(new Key(lost.item(), lost.day().map(d -> lastSuch(revised, d))
                        .orElse(revised.now().toLocalDate())), k -> new Exact());
                e.mg = e.mg.plus(Weights.held(of.book().ingredient(lost.item()), lost.amount()).times(1000));
                e.makings++;
            }
        });
    }

    private static LocalDate lastSuch(Revised revised, java.time.DayOfWeek day) {
        return revised.now().toLocalDate().with(java.time.temporal.TemporalAdjusters.previousOrSame(day));
    }

    private void add(Recipe recipe, Ratio batches, LocalDate made, long makings) {
        for (Making.Taken t : of.making().ingredients(recipe)) {
            LocalDate day = made.minusDays(t.ahead());
            LocalDate within = day.isBefore(of.days().first()) ? of.days().first() : day;
            if (t.byNeed()) {
                Exact e = exact.computeIfAbsent(new Key(t.ingredient().id(), within), k -> new Exact());
                e.mg = e.mg.plus(t.grams().times(batches).times(1000));
                e.makings += makings;
            }
        }
    }

    private void compare() {
        Set<Key> seen = new HashSet<>();
        for (WeekPlan.Need need : of.plan().needs()) {
            Key key = new Key(need.item(), need.day());
            String what = "needs: " + need.item() + " on " + Say.day(need.day());
            report.findIf(!seen.add(key), what + " stands there twice");
            Exact e = exact.get(key);
            if (e == null) {
                report.find(what + ": the plan says " + Say.mass(need.mg()) + ", but nothing that is made takes it");
                continue;
            }
            Ratio above = Ratio.of(need.mg()).minus(e.mg);
            report.findIf(above.signum() < 0 || above.compareTo(Ratio.of(e.makings)) >= 0, what + ": the plan says "
                    + Say.mass(need.mg()) + ", the recipes take " + Say.mass(e.mg.ceil()));
        }
        exact.forEach((key, e) -> report.findIf(e.mg.signum() > 0 && !seen.contains(key), "needs: " + key.item() + " on "
                + Say.day(key.day()) + " is left out; the recipes take " + Say.mass(e.mg.ceil())));
    }
}
