package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.RandomWeek;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProvingTest {
    private final List<WeekSolver.Solved> heard = new ArrayList<>();

    private WeekSolver.Solved prove(WeekProblem week, Duration time, BooleanSupplier stop) {
        int[] nothing = new int[week.slots().size()];
        Arrays.fill(nothing, -1);
        return new Proving(week, time, 1, new WeekSolver.Listener() {
            @Override
            public void doing(String what) {
                assertThat(what).isNotBlank();
            }

            @Override
            public void better(WeekSolver.Solved solved) {
                heard.add(solved);
            }
        }, stop).solve(nothing);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void tinyWeek_getsItsBest_andABoundNotBelowIt(long seed) {
        WeekProblem week = TinyWeek.of(seed);
        WeekSolver.Solved answer = prove(week, Duration.ofSeconds(4), () -> false);
        var best = Enumeration.best(week);
        assertThat(answer.complete()).isEqualTo(best.isPresent());
        if (best.isPresent()) {
            assertThat(answer.orders().valueCents()).isEqualTo(best.getAsLong());
            assertThat(answer.bestAtAll().orElseThrow()).isGreaterThanOrEqualTo(best.getAsLong());
        }
    }

    @Test
    void stopped_givesTheBestSoFar() {
        WeekSolver.Solved answer = prove(RandomWeek.small(1), Duration.ofMinutes(5), () -> !heard.isEmpty());
        assertThat(answer.choice()).isEqualTo(heard.get(heard.size() - 1).choice());
    }

    @ParameterizedTest
    @CsvSource({"1000000, 1001000, true", "1000000, 1001001, false", "-1000, -999, true", "0, 0, true", "0, 1, false"})
    void proved_isWithinOneInAThousand(long value, long bound, boolean proved) {
        assertThat(Proving.proved(value, bound)).isEqualTo(proved);
    }
}
