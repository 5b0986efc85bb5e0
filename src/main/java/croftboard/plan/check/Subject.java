package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import java.util.List;
import java.util.Optional;

/** What is checked, and what it is checked against. */
record Subject(Book book, WeekPlan plan, Given given, Days days, Offered offered, Making making, List<Slot> slots,
        Optional<Revised> revised) {


    /** The dish of a row, if the book knows it. */
    Optional<Recipe> dish(WeekPlan.Served row) {
        return row.recipe().map(book.recipes()::get).filter(Recipe::isDish);
    }

    Optional<Recipe> recipe(String id) {
        return Optional.ofNullable(book.recipes().get(id));
    }

    Optional<Ingredient> ingredient(String id) {
        return Optional.ofNullable(book.ingredients().get(id));
    }

    /** The slot of a row, if the week has it. */
    Optional<Slot> slot(WeekPlan.Served row) {
        return slots.stream().filter(s -> s.id().equals(row.slot())).findFirst();
    }
}
