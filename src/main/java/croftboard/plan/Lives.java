package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Recipe;

/**
 * How long a recipe really lasts: its own life or, if shorter, what a component made just in time for it leaves. A mixed
 * dish carries the earliest date of its parts, so a batch must not be planned to serve beyond it.
 */
final class Lives {
    private Lives() { }

    /** The day of making is day 1; below 1 when a component is past its date before it is ready. */
    static int days(Book book, Recipe recipe) {
        int days = recipe.lifeDays();
        for (Recipe.Line line : recipe.ingredients()) {
            Recipe part = book.recipes().get(line.item());
            if (part != null) {
                days = Math.min(days, days(book, part) - part.leadDays());
            }
        }
        return days;
    }
}
