package croftboard.plan;

import croftboard.book.Recipe;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;

/** A dish with a stated worth and equipment units and nothing else (docs/book.md, "Worth only"). */
final class WorthOnlyCandidate {
    private WorthOnlyCandidate() { }

    static WeekProblem.Candidate of(Recipe dish, int[] days, WeekIndex index) {
        Recipe.WorthOnly worth = dish.worthOnly().orElseThrow();
        List<WeekProblem.Use> uses = new ArrayList<>();
        worth.uses().forEach((equipment, units) -> uses.add(
                new WeekProblem.Use(index.equipment(equipment), days[0], Math.toIntExact(units.ceil()))));
        return new WeekProblem.Candidate(index.dish.get(dish.id()), dish.id(), 0, worth.worth().value(), 0, 0,
                List.of(), uses, List.of(), List.of(), 0, 0, 0, 0, 0, List.of());
    }
}
