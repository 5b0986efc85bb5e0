package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.TwoTinyWeeks;
import croftboard.need.WeekProblem;
import croftboard.plan.Engine;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/**
 * Lot sizes as two weeks of one item. Wagner and Whitin, "Dynamic version of the economic lot size model", Management
 * Science 5 (1958): the cheapest lots cover whole runs of periods. The first figures (demands 40 20 10 30 20, set-up 100,
 * holding 2 a unit and period: lots of 70 and 50, cost 320) are those of the teaching sheet named by the project, where the
 * 40 units that the first lot holds at its end are counted; reckoned again here by the recurrence of the paper. That
 * perishable lots cover no more periods than they live is common to the literature (a life of m periods); the figures of the
 * second test are our own, worked out by the same recurrence with that limit.
 */
class LotSizesOutsideTest {
    private static final int[] DEMANDS = {40, 20, 10, 30, 20};
    private static final int SET_UP = 100;
    private static final int HOLDING = 2;
    private static final long FIRST = 10;

    /** Cheapest set-ups and holding, a lot serving so many periods at most. */
    private static long recurrence(int most) {
        long[] best = new long[DEMANDS.length + 1];
        for (int end = 1; end <= DEMANDS.length; end++) {
            best[end] = Long.MAX_VALUE;
            for (int from = Math.max(0, end - most); from < end; from++) {
                long cost = best[from] + SET_UP;
                for (int t = from; t < end; t++) {
                    cost += (long) HOLDING * (t - from) * DEMANDS[t];
                }
                best[end] = Math.min(best[end], cost);
            }
        }
        return best[DEMANDS.length];
    }

    private static long units() {
        long units = 0;
        for (int k = 0; k < DEMANDS.length; k++) {
            units += DEMANDS[k] * (FIRST - HOLDING * k);
        }
        return units;
    }

    @Test
    void wagnerWhitin_lotsOf70And50_cost320() {
        WeekProblem problem = TwoTinyWeeks.lots(DEMANDS, SET_UP, HOLDING, FIRST);
        Engine.Answer plan = Engine.month(problem, Duration.ofSeconds(2), 1);
        assertThat(recurrence(DEMANDS.length)).isEqualTo(320);
        assertThat(-plan.valueCents() - units()).isEqualTo(320);
        assertThat(plan.packs()).containsExactly(70, 0, 0, 50, 0);
        assertThat(plan.bestForMenu().orElseThrow()).isBetween(plan.valueCents(), plan.valueCents() + 3);
    }

    /** Days 0, 3, 5, 8, 11: food that lives 3 days serves two of these at most, as they lie two or three days apart. */
    @Test
    void perishableLots_coverNoMoreThanTheyLive() {
        WeekProblem problem = TwoTinyWeeks.lots(DEMANDS, SET_UP, HOLDING, FIRST, 3);
        Engine.Answer plan = Engine.month(problem, Duration.ofSeconds(2), 1);
        assertThat(-plan.valueCents() - units()).isEqualTo(recurrence(2));
        assertThat(recurrence(2)).isGreaterThan(recurrence(DEMANDS.length));
    }
}
