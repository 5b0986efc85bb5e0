package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.util.List;

/**
 * Needs of a dish through its whole tree without the rounding of batches and on the widest days on which the rule for
 * batches could place them: never more than what a plan will really need, so bounds computed from them are valid.
 */
final class LooseNeeds {
    private final Book book;
    private final WeekIndex index;
    private final RecipeFacts.Reader facts;

    LooseNeeds(Book book, WeekIndex index, RecipeFacts.Reader facts) {
        this.book = book;
        this.index = index;
        this.facts = facts;
    }

    /**
     * Adds the needs of {@code batches} of a recipe made on some day from {@code from} to {@code to} and good until
     * {@code last}.
     *
     * @return cents of staples below the recipe itself, rounded down
     */
    long add(String recipe, Ratio batches, int from, int to, int last, List<WeekProblem.LooseNeed> into) {
        return collect(recipe, batches, from, to, last, into).floor();
    }

    private Ratio collect(String recipe, Ratio batches, int from, int to, int last,
            List<WeekProblem.LooseNeed> into) {
        RecipeFacts own = facts.of(recipe);
        for (RecipeFacts.ItemNeed n : own.needs()) {
            into.add(new WeekProblem.LooseNeed(index.item.get(n.item()), Math.max(0, from - n.ahead()),
                    Math.max(0, to - n.ahead()), n.grams().times(batches).times(1000).floor()));
        }
        Ratio staples = Ratio.ZERO;
        for (var part : own.parts().entrySet()) {
            Recipe made = book.recipe(part.getKey());
            Ratio count = part.getValue().times(batches).over(made.makes().base());
            int first = Math.max(0, Math.min(to, last - made.lifeDays() + 1));
            staples = staples.plus(facts.of(part.getKey()).stapleCents().times(count))
                    .plus(collect(part.getKey(), count, first, Math.max(first, to - made.leadDays()), last, into));
        }
        return staples;
    }
}
