package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** What a week had to change of the dishes it was to repeat, and why. */
final class CycleSwaps {
    private CycleSwaps() { }

    /** @param was dishes to repeat, by slot. @param is dishes that stand there now */
    static void add(Book book, IsoWeek week, Given given, WeekProblem problem, Map<String, String> was, Map<String, String> is,
            List<Rotation.Swap> into) {
        for (String slot : new TreeSet<>(was.keySet())) {
            Optional<WeekProblem.Slot> there = problem.slots().stream().filter(s -> s.id().equals(slot)).findFirst();
            if (there.isPresent() && there.get().free() && !was.get(slot).equals(is.get(slot))) {
                into.add(new Rotation.Swap(week, slot, was.get(slot), Optional.ofNullable(is.get(slot)),
                        why(book, week, given, problem, there.get(), was.get(slot))));
            }
        }
    }

    /** Why a dish does not stand where it was to stand. */
    static String why(Book book, IsoWeek week, Given given, WeekProblem problem, WeekProblem.Slot slot, String recipe) {
        Recipe dish = book.recipes().get(recipe);
        if (dish == null) {
            return "it is no longer in recipes/";
        }
        if (!dish.inSeason(week, book.seasons())) {
            return "out of season";
        }
        var start = problem.firstDay().plusDays(slot.startDay());
        if (given.served().stream().anyMatch(s -> s.recipe().equals(recipe) && Math.abs(java.time.temporal.ChronoUnit.DAYS
                .between(s.start(), start)) < book.kitchen().gapDays())) {
            return "served less than " + book.kitchen().gapDays() + " days before or after";
        }
        return PricedChanges.number(slot, recipe) < 0 ? "something it needs cannot be bought for that day"
                : "too little of what it needs, or too few hands, or it costs more than it brings";
    }
}
