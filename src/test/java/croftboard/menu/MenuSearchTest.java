package croftboard.menu;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.RandomBook;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.config.solver.EnvironmentMode;

class MenuSearchTest {
    private static final MenuSearch.Effort SHORT = new MenuSearch.Effort(20_000, 0, 20);

    private static WeekProblem book(long seed) {
        return ProblemBuilder.build(RandomBook.of(seed), RandomBook.WEEK, Map.of(), Given.NOTHING, Optional.empty())
                .problem();
    }

    @Test
    void search_sameSeedAndTries_sameMenu() {
        WeekProblem week = RandomWeek.week(1);
        MenuSearch search = new MenuSearch(week, 0.1);
        int[] start = search.greedy().choice();
        MenuSearch.Found a = search.search(start, 7, SHORT, () -> false);
        MenuSearch.Found b = search.search(start, 7, SHORT, () -> false);
        assertThat(a.choice()).isEqualTo(b.choice());
        assertThat(a.worthCents()).isEqualTo(b.worthCents());
    }

    @Test
    void search_improvesOnTheGreedyStart() {
        MenuSearch search = new MenuSearch(RandomWeek.week(2), 0.1);
        MenuSearch.Found greedy = search.greedy();
        MenuSearch.Found found = search.search(greedy.choice(), 1, SHORT, () -> false);
        assertThat(found.worthCents()).isGreaterThan(greedy.worthCents() + 50_000);
        assertThat(found.keepsMusts()).isTrue();
    }

    @Test
    void search_underFullAssertion_findsNoDriftInTheRules() {
        for (long seed = 1; seed <= 3; seed++) {
            MenuSearch search = new MenuSearch(book(seed), 0.1);
            MenuSearch.Found found = search.search(search.greedy().choice(), seed, new MenuSearch.Effort(1_500, 0, 10),
                    () -> false, EnvironmentMode.FULL_ASSERT);
            assertThat(found.choice()).hasSize(book(seed).slots().size());
        }
    }

    @Test
    void search_toldToStop_answersWithAMenu() {
        MenuSearch search = new MenuSearch(RandomWeek.week(3), 0.1);
        MenuSearch.Found found = search.search(search.greedy().choice(), 1, new MenuSearch.Effort(0, 60_000, 20),
                () -> true);
        assertThat(found.choice()).hasSize(54);
    }
}
