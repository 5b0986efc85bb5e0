package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Ratio;
import croftboard.need.Enumeration;
import croftboard.need.WeekProblem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Three small cases with which a bound is easily got wrong; the best of each was found by trying everything. */
class BoundCasesTest {
    private static HandWeek.Dish a(int day, long value, int grams) {
        return new HandWeek.Dish(0, value, 0, day, grams);
    }

    private static long bestOf(WeekProblem problem) {
        long best = Enumeration.best(problem).orElseThrow();
        Enumeration.Best plan = Enumeration.bestPlan(problem).orElseThrow();
        assertThat(JointRelaxation.of(problem).orElseThrow().boundCents()).isGreaterThanOrEqualTo(best);
        assertThat(JointRoot.bound(problem, plan.choice(), plan.packs(), 0, 0).orElseThrow())
                .isBetween(best, best + 2);
        return best;
    }

    /** Needs and packs on a coarse grid of grams, rounded the wrong way, would give 1300 here. */
    @Test
    void roundingOfGrams_loweringTheBound_isImpossible() {
        HandWeek week = new HandWeek().item(3).delivery(0, 0, 0).offer(0, 0, 1000, 600, 5);
        for (int day = 0; day < 3; day++) {
            week.slot(day, a(day, 1000, 600), new HandWeek.Dish(1, 750, 0, day, 400));
        }
        assertThat(bestOf(week.build())).isEqualTo(1_800);
    }

    private static WeekProblem aging(int life, long minimum, long fee, Ratio target) {
        List<WeekProblem.Tier> five = List.of(new WeekProblem.Tier(1, 500));
        HandWeek week = new HandWeek().item(life).delivery(0, minimum, fee).delivery(2, minimum, fee).delivery(0, 0, 0)
                .delivery(2, 0, 0).offer(0, 0, 1000, five, 0, 3, true).offer(0, 1, 1000, five, 0, 3, true)
                .offer(0, 2, 500, 350, 3).offer(0, 3, 500, 350, 3).local(target, Ratio.of(1, 2));
        return week.slot(0, a(0, 900, 700)).slot(1, a(1, 900, 700), new HandWeek.Dish(1, 500, 0, 1, 200))
                .slot(2, a(2, 900, 700)).slot(3, new HandWeek.Dish(1, 500, 0, 3, 300)).build();
    }

    @Test
    void ageMinimumAndFee_eachLowerTheBest() {
        assertThat(bestOf(aging(1, 1000, 200, Ratio.ZERO))).isEqualTo(1_450);
        assertThat(bestOf(aging(9, 1000, 200, Ratio.ZERO))).isEqualTo(1_650);
        assertThat(bestOf(aging(1, 0, 0, Ratio.ZERO))).isEqualTo(1_850);
        assertThat(bestOf(aging(1, 1000, 200, Ratio.of(1, 2)))).isEqualTo(1_300);
    }

    /** Divisible packs: four dishes share 1600 g, which cost 400 for 600 g: 1600 - 1066.67. */
    @Test
    void twoItemsAtOnce_theRelaxationIsLooseByExactlyTheWholePacks() {
        HandWeek week = new HandWeek().item(5).item(5).delivery(0, 0, 0).offer(0, 0, 600, 400, 4).offer(1, 0, 600, 400, 4);
        for (int day = 0; day < 2; day++) {
            week.slot(day, new HandWeek.Dish(0, 800, 0, day, 500, 1, day, 300),
                    new HandWeek.Dish(1, 800, 0, day, 300, 1, day, 500));
        }
        WeekProblem problem = week.build();
        assertThat(bestOf(problem)).isEqualTo(400);
        assertThat(JointRelaxation.of(problem).orElseThrow().boundCents()).isBetween(534L, 535L);
    }
}
