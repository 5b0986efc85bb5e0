package croftboard.need;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EnumerationTest {
    @Test
    void tinyWeeks_areMostlyPlannableAndUseWhatTheyHold() {
        int plannable = 0;
        int bought = 0;
        int filled = 0;
        for (long seed = 1; seed <= 60; seed++) {
            WeekProblem problem = TinyWeek.of(seed);
            var best = Enumeration.bestPlan(problem);
            if (best.isPresent()) {
                plannable++;
                bought += java.util.Arrays.stream(best.get().packs()).sum() > 0 ? 1 : 0;
                filled += (int) java.util.Arrays.stream(best.get().choice()).filter(c -> c >= 0).count();
                assertThat(Account.of(problem, best.get().choice(), best.get().packs()).value())
                        .isEqualTo(best.get().cents());
            }
        }
        assertThat(plannable).isGreaterThan(45);
        assertThat(bought).isGreaterThan(35);
        assertThat(filled).isGreaterThan(80);
    }
}
