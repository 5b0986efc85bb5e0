package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.measure.IsoWeek;
import croftboard.need.ChoiceWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.check.PlanChecker;
import croftboard.sourcing.ChoiceOptimum;
import croftboard.sourcing.Natives;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Weeks in which nothing is bought: the best there is where that can be known, near the bound where it cannot. */
class PlainChoiceTest {
    @BeforeEach
    void solverAtHand() {
        Assumptions.assumeTrue(Natives.available());
    }

    private static WeekSolver.Solved solve(WeekProblem week, long steps) {
        int[] nothing = new int[week.slots().size()];
        Arrays.fill(nothing, -1);
        return new WeekSolver(week, Budget.of(Duration.ZERO, OptionalLong.of(steps)), 1, new WeekSolver.Listener() {
            @Override
            public void doing(String what) {
                assertThat(what).isNotBlank();
            }

            @Override
            public void better(WeekSolver.Solved solved) {
                assertThat(solved.complete()).isTrue();
            }
        }, () -> false).solve(nothing);
    }

    @ParameterizedTest
    @CsvSource({"UNIFORM,5,5,5,1", "CORRELATED,5,5,5,2", "SIMILAR,5,5,5,3", "UNIFORM,10,5,5,4", "CORRELATED,10,5,5,5",
        "SIMILAR,10,5,5,6", "UNIFORM,15,10,10,1", "CORRELATED,12,4,10,7", "SIMILAR,20,3,4,8"})
    void smallWeek_isTheBestThereIs_andProved(ChoiceWeek.Kind kind, int lines, int dishes, int ovens, long seed) {
        ChoiceWeek week = ChoiceWeek.of(kind, lines, dishes, false, ovens, seed);
        WeekSolver.Solved solved = solve(week.problem(), 5_000);
        assertThat(solved.complete()).isTrue();
        assertThat(solved.orders().valueCents()).isEqualTo(100 * ChoiceOptimum.of(week));
        assertThat(solved.bestAtAll()).contains(solved.orders().valueCents());
        assertThat(solved.orders().bestForMenu()).contains(solved.orders().valueCents());
    }

    /** Within a fifth of a percent of the bound after sixteen tries; late acceptance ended 17 % below it. */
    @ParameterizedTest
    @CsvSource({"CORRELATED,100,10,false", "CORRELATED,250,10,false", "SIMILAR,50,20,true", "UNIFORM,250,10,false"})
    void largeWeek_comesNearTheBound_bySteps(ChoiceWeek.Kind kind, int lines, int dishes, boolean uneven) {
        WeekSolver.Solved solved = solve(ChoiceWeek.of(kind, lines, dishes, uneven, 10, 1).problem(), 5_000);
        assertThat(solved.complete()).isTrue();
        assertThat(solved.bestAtAll()).hasValueSatisfying(bound -> assertThat((bound - solved.orders().valueCents()) / (double) bound)
                .isBetween(0.0, 0.002));
    }

    @ParameterizedTest
    @EnumSource(ChoiceWeek.Kind.class)
    void sameSteps_sameMenu(ChoiceWeek.Kind kind) {
        WeekProblem week = ChoiceWeek.of(kind, 60, 8, true, 7, 3).problem();
        WeekSolver.Solved one = solve(week, 3_000);
        WeekSolver.Solved two = solve(week, 3_000);
        assertThat(two.choice()).isEqualTo(one.choice());
        assertThat(two.bound()).isEqualTo(one.bound());
    }

    /** Equipment by the day: each day is a choice of its own, Sunday too. */
    @Test
    void equipmentByTheDay_isThereOnEveryOpenDay_andDaysAddUp() throws Exception {
        ChoiceWeek day = ChoiceWeek.of(ChoiceWeek.Kind.CORRELATED, 8, 4, false, 3, 2);
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("kitchen/kitchen.yaml", day.kitchen().replace("[mon]", "[mon, sat, sun]").replace("per_week", "per_day")
                .getBytes(StandardCharsets.UTF_8));
        files.put("recipes/dishes.yaml", day.recipes().getBytes(StandardCharsets.UTF_8));
        Book book = BookReader.readFiles(files).orElseThrow();
        WeekPlan plan = new Planner(book, Optional.empty()).plan(new PlanRequest(new IsoWeek(2027, 33), 1, Duration.ZERO,
                OptionalLong.of(3_000), new TreeMap<>(), Optional.empty(), Given.NOTHING, Quiet.NONE,
                () -> false)).fold(PlanAnswer.Planned::plan, refused -> {
                    throw new IllegalStateException(refused.faults().toString());
                });
        assertThat(plan.value()).isEqualTo(3 * 100 * ChoiceOptimum.of(day));
        assertThat(plan.proof().bestAtAll()).contains(plan.value());
        assertThat(PlanChecker.check(book, plan, Given.NOTHING, Optional.empty()).findings()).isEmpty();
    }

    private static final class Quiet implements PlanRequest.Progress {
        private static final Quiet NONE = new Quiet();

        @Override
        public void doing(String what) {
            // nobody looks
        }

        @Override
        public void better(WeekPlan plan) {
            // nobody looks
        }
    }
}
