package croftboard.plan.check;

import croftboard.book.Ingredient;
import croftboard.book.Promises;
import croftboard.book.Recipe;
import croftboard.plan.WeekPlan;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Substitutes: those that the recipes let the plan use, where nobody sells the ingredient this week. In a plan changed under
 * way also others that the ingredient declares, on every line of a dish of which nothing was made, and only if what must be
 * said of the dish stays the same or the manager has accepted the change.
 */
final class SwapsCheck {
    private static final String EVERY_LINE = "*";
    private final Subject of;
    private final Report report;

    SwapsCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    /** By dish: the substitutes that hold on every line of it. */
    static SortedMap<String, SortedMap<String, String>> everyLine(SortedMap<String, SortedMap<String, String>> swaps) {
        SortedMap<String, SortedMap<String, String>> all = new TreeMap<>();
        swaps.forEach((dish, own) -> own.forEach((item, use) -> {
            if (item.endsWith(EVERY_LINE)) {
                all.computeIfAbsent(dish, k -> new TreeMap<>()).put(item.substring(0, item.length() - 1), use);
            }
        }));
        return all;
    }

    void run() {
        SortedMap<String, SortedMap<String, String>> derived = new TreeMap<>();
        for (WeekPlan.Served row : of.plan().menu()) {
            of.dish(row).filter(d -> !of.making().swaps(d).isEmpty())
                    .ifPresent(d -> derived.put(d.id(), of.making().swaps(d)));
        }
        report.same("swaps", of.plan().swaps(), derived);
        of.revised().ifPresent(r -> {
            SortedMap<String, SortedMap<String, String>> before = everyLine(r.base().swaps());
            everyLine(of.plan().swaps()).forEach((dish, swaps) -> swaps.forEach((item, use) -> {
                if (!use.equals(before.getOrDefault(dish, new TreeMap<>()).get(item))) {
                    one(r, dish, item, use);
                }
            }));
        });
    }

    private void one(Revised revised, String dish, String item, String use) {
        String where = "swaps: " + use + " for " + item + " in " + dish;
        Optional<Ingredient> own = of.ingredient(item);
        report.findIf(own.isEmpty() || own.get().substitutes().stream().noneMatch(s -> s.use().equals(use)),
                where + ": the book declares no such substitute");
        report.findIf(revised.base().menu().stream().anyMatch(r -> r.recipe().equals(Optional.of(dish))
                && r.productions().stream().anyMatch(p -> revised.over(p.made()))), where + ": it was made before as it is written");
        report.findIf(of.book().recipes().values().stream().anyMatch(r -> r.ingredients().stream()
                .anyMatch(l -> l.item().equals(dish))), where + ": other dishes are made of it, and their statements would change");
        boolean accepted = of.plan().inputs().revision().map(r -> r.accepted().contains(dish)).orElse(false);
        of.recipe(dish).filter(d -> !accepted && !same(revised, d)).ifPresent(d -> report.find(where
                + ": an allergen or an unknown is added, or a diet lost, and nobody has accepted it"));
    }

    /** Against the dish as it stood in the version that was changed. */
    private boolean same(Revised revised, Recipe dish) {
        Set<Ingredient> before = new Making(of.book(), of.offered(), everyLine(revised.base().swaps())).everything(dish);
        Set<Ingredient> now = of.making().everything(dish);
        Set<String> allergens = before.stream().flatMap(i -> i.allergens().contains().stream()).collect(Collectors.toSet());
        Set<String> unknown = before.stream().filter(i -> !i.allergens().othersKnown()).map(Ingredient::name)
                .collect(Collectors.toSet());
        return now.stream().allMatch(i -> allergens.containsAll(i.allergens().contains()))
                && now.stream().allMatch(i -> i.allergens().othersKnown() || unknown.contains(i.name()))
                && List.of(Promises.Diet.values()).stream()
                        .allMatch(d -> !Contents.of(before).is(d) || Contents.of(now).is(d));
    }
}
