package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.TinyBook;
import croftboard.need.Enumeration;
import croftboard.need.WeekProblem;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Tiny books: the plan is the best there is, and no bound lies below it. */
class TinyPlanTest {
    private static final int BOOKS = Integer.getInteger("croftboard.tiny", 150);

    static PlanRequest request(long steps) {
        PlanRequest.Progress silent = new PlanRequest.Progress() {
            @Override
            public void doing(String what) { }

            @Override
            public void better(WeekPlan plan) { }
        };
        return new PlanRequest(RandomBook.WEEK, 1, Duration.ofSeconds(1), OptionalLong.of(steps), new TreeMap<>(),
                Optional.empty(), Given.NOTHING, silent, () -> false);
    }

    @Test
    void plan_ofTinyBooks_equalsTheBestByEnumeration() {
        int compared = 0;
        for (int seed = 1; seed <= BOOKS; seed++) {
            Book book = TinyBook.of(seed);
            WeekProblem week = ProblemBuilder.build(book, RandomBook.WEEK, Map.of(), Given.NOTHING, Optional.empty())
                    .problem();
            OptionalLong best = Enumeration.best(week);
            WeekPlan plan = new Planner(book, Optional.empty()).plan(request(1_000))
                    .fold(PlanAnswer.Planned::plan, r -> null);
            assertThat(plan.complete()).as("book %d", seed).isEqualTo(best.isPresent());
            if (best.isPresent()) {
                compared++;
                assertThat(plan.value()).as("book %d", seed).isEqualTo(best.getAsLong());
                assertThat(plan.proof().bestAtAll()).as("bound of book %d", seed)
                        .hasValueSatisfying(b -> assertThat(b).isGreaterThanOrEqualTo(best.getAsLong()));
                assertThat(plan.proof().bestForMenu()).as("bound of the menu of book %d", seed)
                        .hasValueSatisfying(b -> assertThat(b).isGreaterThanOrEqualTo(best.getAsLong()));
            }
        }
        assertThat(compared).isGreaterThan(BOOKS / 2);
    }
}
