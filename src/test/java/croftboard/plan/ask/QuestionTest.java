package croftboard.plan.ask;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.ChangedWeek;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class QuestionTest {
    private static final Book BOOK = SamplePlan.book();
    private static final WeekPlan PLAN = MadePlan.of(BOOK, SamplePlan.WEEK);

    /** A question does not offer the plan's dish in fewer portions as if it were another dish; the plan stands in its places. */
    @Test
    void weekAskedAbout_holdsEachDishOnce_andThePlanAsItIs() {
        ChangedWeek week = new Question(BOOK, PLAN, Given.NOTHING, LocalDateTime.of(2027, 8, 1, 8, 0)).asItIs();
        for (WeekProblem problem : List.of(week.built().problem(), week.priced())) {
            for (int s = 0; s < problem.slots().size(); s++) {
                WeekProblem.Slot slot = problem.slots().get(s);
                assertThat(slot.candidates()).as(slot.id()).extracting(WeekProblem.Candidate::dish).doesNotHaveDuplicates();
                int k = week.start()[s];
                Optional<String> stands = k < 0 ? Optional.empty() : Optional.of(slot.candidates().get(k).recipe());
                assertThat(stands.filter(d -> !d.equals(ChangedWeek.HOUSE))).isEqualTo(Optional.ofNullable(PLAN.choices().get(slot.id())));
            }
        }
    }
}
