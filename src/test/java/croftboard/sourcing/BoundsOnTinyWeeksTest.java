package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No bound lies below the best of all menus with all orders. The long run asks more weeks:
 * {@code -Dslow -Dtest=BoundsOnTinyWeeksTest -Dcroftboard.bounds=1000 -Dcroftboard.bounds.seed=5000}.
 */
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

    /** To its end, and broken off at the root, from nothing and from the best plan. */
    private static int compareRoots(long from, int many) {
        int compared = 0;
        for (long seed = from; seed < from + many; seed++) {
            WeekProblem problem = TinyWeek.of(seed);
            var best = Enumeration.bestPlan(problem);
            if (best.isPresent()) {
                int[] packs = new int[problem.offers().size()];
                for (long nodes = 0; nodes <= 1; nodes++) {
                    OptionalLong fromNothing = JointRoot.bound(problem, Enumeration.nothing(problem), packs, 0, nodes);
                    OptionalLong fromBest = JointRoot.bound(problem, best.get().choice(), best.get().packs(), 0, nodes);
                    for (OptionalLong bound : List.of(fromNothing, fromBest)) {
                        assertThat(bound.orElse(Long.MAX_VALUE)).as("tiny week %d", seed)
                                .isGreaterThanOrEqualTo(best.get().cents());
                        compared += bound.isPresent() ? 1 : 0;
                    }
                }
            }
        }
        return compared;
    }

    @ParameterizedTest(name = "weeks from {0}")
    @ValueSource(longs = {1001, 1051})
    void root_isNeverBelowTheBestPlan(long from) {
        assertThat(compareRoots(from, EACH)).isGreaterThan(EACH);
    }

    @Test
    @Tag("slow")
    void root_isNeverBelowTheBestPlan_manyWeeks() {
        int many = Integer.getInteger("croftboard.bounds", 1_000);
        assertThat(compareRoots(Long.getLong("croftboard.bounds.seed", 2_000), many)).isGreaterThan(many);
    }
}
