package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Account;
import croftboard.need.Enumeration;
import croftboard.need.RandomWeek;
import croftboard.need.TwoTinyWeeks;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.sourcing.Sourcing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonthSolverTest {
    private final List<WeekSolver.Solved> heard = new ArrayList<>();

    private final class Ear implements WeekSolver.Listener {
        @Override
        public void doing(String what) {
            assertThat(what).isNotBlank();
        }

        @Override
        public void better(WeekSolver.Solved solved) {
            heard.add(solved);
        }
    }

    private static MonthBudget steps(long n) {
        return MonthBudget.of(Duration.ZERO, OptionalLong.of(n));
    }

    private WeekSolver.Solved solve(WeekProblem problem, MonthBudget budget) {
        heard.clear();
        return new MonthSolver(problem, budget, 1, new Ear(), () -> false).solve(Enumeration.nothing(problem));
    }

    private static void keepsEveryMust(WeekProblem problem, WeekSolver.Solved plan) {
        Workload work = Workload.of(problem, plan.choice());
        assertThat(plan.complete()).isTrue();
        assertThat(Enumeration.gapsHold(problem, plan.choice())).isTrue();
        assertThat(work.unitsOver(problem)).isZero();
        assertThat(Enumeration.mustsHold(problem, work, plan.orders().packs())).isTrue();
        assertThat(Account.of(problem, plan.choice(), plan.orders().packs()).value())
                .isEqualTo(plan.orders().valueCents());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void twoTinyWeeks_equalTheBestByEnumeration(long seed) {
        WeekProblem problem = TwoTinyWeeks.of(seed);
        long best = Enumeration.best(problem).orElseThrow();
        WeekSolver.Solved plan = solve(problem, steps(2_000));
        keepsEveryMust(problem, plan);
        assertThat(plan.orders().valueCents()).isEqualTo(best);
        assertThat(plan.bestAtAll().orElseThrow()).isGreaterThanOrEqualTo(best);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void rollingOverTwoTinyWeeks_neverAboveTheBest_andWithBothWeeksAheadTheBest(long seed) {
        WeekProblem problem = TwoTinyWeeks.of(seed);
        long best = Enumeration.best(problem).orElseThrow();
        for (int ahead = 1; ahead <= 2; ahead++) {
            WeekSolver.Solved plan = new RollingWeeks(problem, ahead, steps(2_000), steps(2_000), 1, new Ear(), () -> false)
                    .solve(Enumeration.nothing(problem));
            keepsEveryMust(problem, plan);
            assertThat(plan.orders().valueCents()).isLessThanOrEqualTo(best);
            if (ahead == 2) {
                assertThat(plan.orders().valueCents()).isEqualTo(best);
            }
        }
    }

    /**
     * Lot sizes for demands of 40, 20, 10, 30, 20 at 100 a set-up and 2 a unit carried: orders for the first three and the
     * last two, 200 for set-ups and 2 x (30 + 10 + 20) = 120 for carrying; reckoned by hand, other splits cost more.
     */
    @Test
    void lots_orderedWhereSetUpsAndCarryingCostLeast() {
        int[] demands = {40, 20, 10, 30, 20};
        long first = 10;
        WeekProblem problem = TwoTinyWeeks.lots(demands, 100, 2, first);
        WeekSolver.Solved plan = solve(problem, steps(2_000));
        long units = 0;
        for (int k = 0; k < demands.length; k++) {
            units += demands[k] * (first - 2 * k);
        }
        assertThat(plan.orders().packs()).containsExactly(70, 0, 0, 50, 0);
        assertThat(-plan.orders().valueCents() - units).isEqualTo(320);
        assertThat(plan.orders().bestForMenu().orElseThrow()).isBetween(plan.orders().valueCents(),
                plan.orders().valueCents() + 3);
    }

    @Test
    void twoWeeks_getBetter_keepEveryMust_andRepeatByStep() {
        WeekProblem problem = RandomWeek.weeks(1, 2);
        WeekSolver.Solved plan = solve(problem, steps(900));
        keepsEveryMust(problem, plan);
        for (int n = 1; n < heard.size(); n++) {
            assertThat(!heard.get(n - 1).complete() || heard.get(n).complete()).isTrue();
            assertThat(heard.get(n).orders().valueCents() > heard.get(n - 1).orders().valueCents()
                    || !heard.get(n - 1).complete()).isTrue();
        }
        assertThat(plan.bestAtAll().orElseThrow()).isGreaterThan(plan.orders().valueCents());
        WeekSolver.Solved second = solve(problem, steps(900));
        assertThat(second.choice()).isEqualTo(plan.choice());
        assertThat(second.orders().packs()).isEqualTo(plan.orders().packs());
        assertThat(second.bound()).isEqualTo(plan.bound());
    }

    @Test
    void rollingWeeks_areComplete_andRepeatByStep() {
        WeekProblem problem = RandomWeek.weeks(2, 4);
        MonthBudget quick = MonthBudget.ofStretch(Duration.ZERO, OptionalLong.of(900));
        WeekSolver.Solved plan = new RollingWeeks(problem, 2, quick, quick, 1, new Ear(), () -> false)
                .solve(Enumeration.nothing(problem));
        keepsEveryMust(problem, plan);
        WeekSolver.Solved second = new RollingWeeks(problem, 2, quick, quick, 1, new Ear(), () -> false)
                .solve(Enumeration.nothing(problem));
        assertThat(second.choice()).isEqualTo(plan.choice());
        assertThat(second.orders().packs()).isEqualTo(plan.orders().packs());
    }

    @Test
    void stoppedAtOnce_answersWithAWholePlan() {
        WeekProblem problem = RandomWeek.weeks(3, 2);
        WeekSolver.Solved plan = new MonthSolver(problem, steps(900), 1, new Ear(), () -> true)
                .solve(Enumeration.nothing(problem));
        assertThat(plan.choice()).hasSize(problem.slots().size());
        assertThat(plan.orders().valueCents()).isEqualTo(Account.of(problem, plan.choice(), plan.orders().packs()).value());
        assertThat(plan.bestAtAll()).isEmpty();
    }

    @Test
    void ordersOfOneWeek_exact_changeNoOtherWeek_andLoseNothing() {
        WeekProblem problem = TwoTinyWeeks.of(3);
        int[] menu = Enumeration.bestPlan(problem).orElseThrow().choice();
        Sourcing sourcing = new Sourcing(problem, 0.1);
        Sourcing.Orders start = sourcing.search(menu, 1, 3, () -> false);
        Sourcing.Orders second = sourcing.exactWithin(menu, start, 7, 13, 0, 100);
        assertThat(second.valueCents()).isGreaterThanOrEqualTo(start.valueCents());
        for (int o = 0; o < start.packs().length; o++) {
            if (problem.deliveries().get(problem.offers().get(o).delivery()).day() < 7) {
                assertThat(second.packs()[o]).isEqualTo(start.packs()[o]);
            }
        }
    }
}
