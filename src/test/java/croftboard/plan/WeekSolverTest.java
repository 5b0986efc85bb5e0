package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Account;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeekSolverTest {
    private final List<WeekSolver.Solved> heard = new ArrayList<>();

    private WeekSolver.Solved solve(WeekProblem week, boolean stopped) {
        int[] nothing = new int[week.slots().size()];
        Arrays.fill(nothing, -1);
        heard.clear();
        Budget budget = Budget.of(Duration.ZERO, OptionalLong.of(600));
        return new WeekSolver(week, budget, 1, new WeekSolver.Listener() {
            @Override
            public void doing(String what) {
                assertThat(what).isNotBlank();
            }

            @Override
            public void better(WeekSolver.Solved solved) {
                heard.add(solved);
            }
        }, () -> stopped).solve(nothing);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatIsHeard_getsBetter_andTheLastIsTheAnswer(long seed) {
        WeekProblem week = RandomWeek.small(seed);
        WeekSolver.Solved answer = solve(week, false);
        for (int n = 1; n < heard.size(); n++) {
            WeekSolver.Solved before = heard.get(n - 1);
            WeekSolver.Solved now = heard.get(n);
            boolean worthMore = now.orders().valueCents() > before.orders().valueCents();
            assertThat(now.complete() == before.complete() ? worthMore : now.complete()).isTrue();
        }
        long last = heard.get(heard.size() - 1).orders().valueCents();
        assertThat(answer.orders().valueCents()).isGreaterThanOrEqualTo(last)
                .isEqualTo(Account.of(week, answer.choice(), answer.orders().packs()).value());
        answer.bestAtAll().ifPresent(b -> assertThat(b).isGreaterThanOrEqualTo(answer.orders().valueCents()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void sameWeekAndSteps_sameChoicesAndPacks(long seed) {
        WeekSolver.Solved one = solve(RandomWeek.small(seed), false);
        WeekSolver.Solved two = solve(RandomWeek.small(seed), false);
        assertThat(two.choice()).isEqualTo(one.choice());
        assertThat(two.orders().packs()).isEqualTo(one.orders().packs());
        assertThat(two.bound()).isEqualTo(one.bound());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void stopped_answersWithTheFirstMenu_andNoProof(long seed) {
        WeekSolver.Solved answer = solve(RandomWeek.small(seed), true);
        assertThat(heard).hasSize(1);
        assertThat(answer.choice()).isEqualTo(heard.get(0).choice());
        assertThat(answer.bestAtAll()).isEmpty();
    }
}
