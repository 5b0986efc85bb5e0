package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.RandomWeek;
import croftboard.need.TinyWeek;
import croftboard.need.TwoTinyWeeks;
import croftboard.need.WeekProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonthRelaxationTest {
    /** The account rounds to the cent, and a solver works with tolerances: a millionth of the value. */
    private static final long CENTS = 10;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void oneWeek_sameBoundAsWithCovers(long seed) {
        WeekProblem week = RandomWeek.small(seed);
        long covers = JointRelaxation.of(week).orElseThrow().boundCents();
        assertThat(MonthRelaxation.of(week, 0).orElseThrow().boundCents()).isBetween(covers - CENTS, covers + CENTS);
    }

    @Test
    void tinyWeeks_neverBelowTheBestByEnumeration() {
        for (long seed = 1; seed <= 60; seed++) {
            WeekProblem problem = TinyWeek.of(seed);
            long s = seed;
            Enumeration.best(problem).ifPresent(best -> assertThat(
                    MonthRelaxation.of(problem, 0).orElseThrow().boundCents()).as("tiny week %d", s)
                    .isGreaterThanOrEqualTo(best));
        }
    }

    @Test
    void twoTinyWeeks_neverBelowTheBestByEnumeration() {
        for (long seed = 1; seed <= 10; seed++) {
            WeekProblem problem = TwoTinyWeeks.of(seed);
            assertThat(MonthRelaxation.of(problem, 0).orElseThrow().boundCents()).as("two tiny weeks %d", seed)
                    .isGreaterThanOrEqualTo(Enumeration.best(problem).orElseThrow());
        }
    }
}
