package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;

/** Components as numbers for one batch step. */
final class ComponentBuilder {
    private ComponentBuilder() { }

    static List<WeekProblem.Component> all(Book book, WeekIndex index, RecipeFacts.Reader facts) {
        return index.components.stream().map(id -> one(book.recipe(id), facts.of(id), book, index)).toList();
    }

    private static WeekProblem.Component one(Recipe recipe, RecipeFacts facts, Book book, WeekIndex index) {
        Ratio step = recipe.batchStep();
        List<WeekProblem.StepNeed> needs = facts.needs().stream().map(n -> new WeekProblem.StepNeed(
                index.item.get(n.item()), n.ahead(), n.grams().times(step).times(1000).ceil())).toList();
        List<WeekProblem.StepPart> parts = new ArrayList<>();
        facts.parts().forEach((part, grams) -> parts.add(new WeekProblem.StepPart(index.component.get(part),
                grams.times(step).times(1000).ceil())));
        List<WeekProblem.StepUse> uses = new ArrayList<>();
        facts.stations().forEach((s, minutes) -> use(uses, index.station(s), minutes.times(step)));
        book.kitchen().equipment().forEach(e -> use(uses, index.equipment(e.id()),
                facts.equipment().getOrDefault(e.id(), Ratio.ZERO).times(step)));
        return new WeekProblem.Component(recipe.id(), Lives.days(book, recipe), recipe.leadDays(),
                recipe.makes().base().times(step).times(1000).floor(), step, needs, parts, uses,
                facts.stapleCents().times(step));
    }

    private static void use(List<WeekProblem.StepUse> uses, int resource, Ratio perStep) {
        if (perStep.signum() > 0) {
            uses.add(new WeekProblem.StepUse(resource, perStep.num().longValueExact(), perStep.den().longValueExact()));
        }
    }
}
