package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Food that was in the house and is not any more: never more than there was. */
final class LostFood {
    private final Book book;
    private final WeekPlan plan;
    private final Past past;
    private final WeekProblem problem;

    LostFood(Book book, WeekPlan plan, Past past, WeekProblem problem) {
        this.book = book;
        this.plan = plan;
        this.past = past;
        this.problem = problem;
    }

    /**
     * What is lost as a need of its day; empty with a fault when there is not so much.
     *
     * @param earlier the plan has been changed for it before: it is in its needs already
     */
    Optional<WeekProblem.Need> need(Change.Lost lost, boolean earlier, List<String> faults) {
        Optional<Integer> item = number(lost.item());
        if (item.isEmpty() || book.ingredient(lost.item()).isStaple()) {
            faults.add("\"" + lost.sentence() + "\": it is not bought by need, no order hangs on it -> count it in "
                    + "kitchen/on-hand.csv");
            return Optional.empty();
        }
        long mg = new RecipeTree(book).purchasedGrams(book.ingredient(lost.item()), lost.amount()).times(1000).ceil();
        long there = inTheHouse(lost.item(), item.get());
        if (mg > there && !earlier) {
            faults.add("\"" + lost.sentence() + "\": there should be no more than "
                    + CookAmounts.mass(Ratio.of(there, 1000)) + " in the house -> at most that");
            return Optional.empty();
        }
        int day = Math.toIntExact(ChronoUnit.DAYS.between(problem.firstDay(), when(lost)));
        return Optional.of(new WeekProblem.Need(item.get(), Math.max(0, Math.min(problem.days() - 1, day)), mg));
    }

    /** The last such day up to today. */
    private LocalDate when(Change.Lost lost) {
        LocalDate today = past.now().toLocalDate();
        return lost.day().map(d -> today.minusDays(Math.floorMod(today.getDayOfWeek().getValue() - d.getValue(), 7)))
                .orElse(today);
    }

    private Optional<Integer> number(String id) {
        for (int i = 0; i < problem.items().size(); i++) {
            if (problem.items().get(i).id().equals(id)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** Delivered so far and in stock, less what past days have used: milligrams. */
    private long inTheHouse(String id, int item) {
        long mg = problem.stock().stream().filter(s -> s.item() == item).mapToLong(WeekProblem.ItemStock::mg).sum();
        for (WeekPlan.Order order : plan.orders()) {
            if (!order.delivery().isAfter(past.now().toLocalDate())) {
                mg += order.lines().stream().filter(l -> l.item().equals(id)).mapToLong(l -> l.packs() * l.packMg()).sum();
            }
        }
        return mg - plan.flows().stream().filter(f -> f.item().equals(id) && past.day(f.day()))
                .mapToLong(WeekPlan.Flow::mg).sum();
    }
}
