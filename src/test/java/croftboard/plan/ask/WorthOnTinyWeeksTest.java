package croftboard.plan.ask;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Natives;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What one more of a scarce thing is worth in tiny weeks, held against every menu with every order. */
class WorthOnTinyWeeksTest {
    @BeforeAll
    static void exactSolverIsThere() {
        Assumptions.assumeTrue(Natives.available());
    }

    /** Less than nothing at times: with more hands the batch rule leaves a batch on its later day, where it may cost more. */
    @Test
    void oneMore_isWorthWhatEnumerationFinds() {
        int asked = 0;
        int worth = 0;
        for (long seed = 1; seed <= 8; seed++) {
            WeekProblem p = TinyWeek.of(seed);
            Optional<Enumeration.Best> plan = Enumeration.bestPlan(p);
            if (plan.isEmpty()) {
                continue;
            }
            List<More> things = More.scarce(p, plan.get().choice(), plan.get().packs());
            WorthSearch.All all = new WorthSearch(p, plan.get().choice(), plan.get().packs()).of(things, things.size());
            assertThat(all.anyway()).isZero();
            for (WorthSearch.Found f : all.found()) {
                long best = Enumeration.best(things.get(f.number()).in(p, 1)).orElseThrow();
                assertThat(f.cents()).as("tiny week %d, %s", seed, things.get(f.number())).isEqualTo(best - plan.get().cents());
                asked++;
                worth += f.cents() > 0 ? 1 : 0;
            }
        }
        assertThat(asked).isGreaterThan(8);
        assertThat(worth).isGreaterThan(1);
    }
}
