package croftboard.plan;

import croftboard.book.Book;
import croftboard.need.WeekProblem;
import java.util.List;
import java.util.Map;

/** Checks what a manager asked to keep: every slot and dish named must exist. */
final class KeptDishes {
    private KeptDishes() { }

    static void check(Map<String, String> kept, List<WeekProblem.Slot> slots, Book book, List<String> faults) {
        kept.forEach((slot, dish) -> {
            if (slots.stream().noneMatch(s -> s.id().equals(slot))) {
                faults.add("--keep " + slot + "=" + dish + ": this week has no slot " + slot + " -> one of "
                        + String.join(", ", slots.stream().map(WeekProblem.Slot::id).toList()));
            }
            if (!book.recipes().containsKey(dish) || !book.recipe(dish).isDish()) {
                faults.add("--keep " + slot + "=" + dish + ": no dish " + dish + " in recipes/ -> use an id as in the book");
            } else if (slots.stream().anyMatch(s -> s.id().equals(slot) && s.candidates().isEmpty())) {
                faults.add("--keep " + slot + "=" + dish + ": no prep day leaves it ready in time and good on those days "
                        + "-> another dish or another slot");
            }
        });
    }
}
