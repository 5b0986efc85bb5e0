package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No bound lies below the best of all menus with all orders. */
class BoundsOnTinyWeeksTest {
    private static final int EACH = 50;

    @ParameterizedTest(name = "weeks from {0}")
    @ValueSource(longs = {1, 51, 101, 151, 201, 251, 301, 351})
    void relaxation_isNeverBelowTheBestPlan(long from) {
        int compared = 0;
        for (long seed = from; seed < from + EACH; seed++) {
            WeekProblem problem = TinyWeek.of(seed);
            var best = Enumeration.best(problem);
            if (best.isPresent()) {
                long bound = JointRelaxation.of(problem).orElseThrow().boundCents();
                assertThat(bound).as("tiny week %d", seed).isGreaterThanOrEqualTo(best.getAsLong());
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(EACH / 2);
    }
}
