package croftboard.plan.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Promises;
import croftboard.cli.SamplePlan;
import croftboard.cli.SampleRotation;
import croftboard.measure.WeekSpan;
import croftboard.plan.WeekPlan;
import croftboard.safety.DishStatement;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class MonthCoverageTest {
    private final Book book = SamplePlan.book();
    private final List<PlannedWeek> weeks = SampleRotation.of(book).weeks().stream().map(w -> new PlannedWeek(w.plan(), "sample")).toList();
    private final MonthCoverage month = MonthCoverage.of(book, WeekSpan.of(SamplePlan.WEEK, 3), weeks);

    @Test
    void everyOpenDayOfAMain_isCounted_andAWeekWithoutAPlanIsNot() {
        assertThat(month.course()).isEqualTo("main");
        assertThat(month.days()).hasSize(12);
        assertThat(month.open()).containsExactly(SamplePlan.WEEK.plusWeeks(2));
    }

    /** Counted again from the plans, dish by dish. */
    @Test
    void everyDiet_findsExactlyTheDishesThatItEats() {
        for (MonthCoverage.Diet diet : month.diets()) {
            TreeSet<LocalDate> days = new TreeSet<>();
            int served = 0;
            for (PlannedWeek week : weeks) {
                for (WeekPlan.Served s : week.plan().menu()) {
                    boolean eats = s.line().equals("hot-main-1") && s.recipe().isPresent() && diet.eater().eats(DishStatement.planned(book,
                            s.recipe().get(), week.plan().swaps().getOrDefault(s.recipe().get(), new java.util.TreeMap<>())))
                            == DishStatement.Known.YES;
                    if (eats) {
                        days.addAll(s.days());
                        served += s.days().size();
                    }
                }
            }
            assertThat(diet.mains().keySet()).isEqualTo(days);
            assertThat(diet.dishes().stream().mapToInt(o -> o.days().size()).sum()).isEqualTo(served);
        }
    }

    @Test
    void aDayWithoutAMain_isAReasonToSayThatSomebodyEatsPoorly() {
        MonthCoverage.Diet vegetarian = month.diets().get(1);
        assertThat(vegetarian.mains()).hasSizeLessThan(12);
        assertThat(vegetarian.poorly(month.days())).anyMatch(w -> w.startsWith("no main on "));
    }

    @Test
    void unknown_feedsNobody() {
        DishStatement open = new DishStatement(new TreeSet<>(Set.of("wheat")), new TreeSet<>(Set.of("curry powder")),
                DishStatement.Known.UNKNOWN, DishStatement.Known.YES);
        assertThat(new Eater(Optional.of(Promises.Diet.VEGAN), Set.of()).eats(open)).isEqualTo(DishStatement.Known.UNKNOWN);
        assertThat(new Eater(Optional.of(Promises.Diet.VEGETARIAN), Set.of("egg")).eats(open)).isEqualTo(DishStatement.Known.UNKNOWN);
        assertThat(new Eater(Optional.of(Promises.Diet.VEGETARIAN), Set.of("wheat")).eats(open)).isEqualTo(DishStatement.Known.NO);
        assertThat(new Eater(Optional.of(Promises.Diet.VEGETARIAN), Set.of()).eats(open)).isEqualTo(DishStatement.Known.YES);
    }
}
