package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.util.Map;
import java.util.Optional;

/** Food cost of a portion at list prices: the cheapest offers of a week, through the whole recipe. */
public final class PortionCosts {
    private final RecipeFacts.Reader facts;

    public PortionCosts(Book book, IsoWeek week) {
        Calendar calendar = new Calendar(book, week);
        WeekIndex index = new WeekIndex(book);
        facts = new RecipeFacts.Reader(book, new Market(book, calendar, index, Given.NOTHING, Optional.empty()), index, Map.of());
    }

    /** Cents, exact. */
    public Ratio of(Recipe dish) {
        return facts.portionCents(dish);
    }
}
