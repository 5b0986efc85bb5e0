package croftboard.bench;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.Engine;
import croftboard.sourcing.GreedyOrders;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands for a careful cook keeps every must, and would be a plan to work from. */
class HandRuleTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 5, 18})
    void planByHand_keepsEveryMust(long seed) {
        WeekProblem week = RandomWeek.week(seed);
        Judged plan = HandRule.plan(week).orElseThrow();
        Workload work = Workload.of(week, plan.choice());
        assertThat(Enumeration.gapsHold(week, plan.choice())).isTrue();
        assertThat(work.unitsOver(week)).isZero();
        assertThat(Enumeration.mustsHold(week, work, plan.packs())).isTrue();
        assertThat(plan.choice()).doesNotContain(-1);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 5, 18})
    void greedyOrders_forTheSameMenu_keepEveryMust(long seed) {
        WeekProblem week = RandomWeek.week(seed);
        int[] menu = HandRule.plan(week).orElseThrow().choice();
        assertThat(Engine.complete(week, menu, GreedyOrders.of(week, menu))).isTrue();
    }
}
