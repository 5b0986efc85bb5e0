package croftboard.plan.ask;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekRun;
import croftboard.plan.change.Problems;
import croftboard.sourcing.Natives;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Why not: a dish forced into a tiny week, held against every menu with every order at the price of a change. */
class ForcedOnTinyWeeksTest {
    private static final long CHANGE = 137;

    @BeforeAll
    static void exactSolverIsThere() {
        Assumptions.assumeTrue(Natives.available());
    }

    /** Every dish but the plan's costs the price of a change, as in a changed week. */
    private static WeekProblem priced(WeekProblem p, int[] plan) {
        List<WeekProblem.Slot> slots = new ArrayList<>();
        for (int s = 0; s < plan.length; s++) {
            WeekProblem.Slot slot = p.slots().get(s);
            List<WeekProblem.Candidate> all = new ArrayList<>();
            for (int k = 0; k < slot.candidates().size(); k++) {
                all.add(k == plan[s] ? slot.candidates().get(k) : Problems.worthLess(slot.candidates().get(k), CHANGE));
            }
            slots.add(new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(), slot.emptyCents()
                    + (plan[s] < 0 ? 0 : CHANGE), slot.mayBeEmpty(), all));
        }
        return Problems.withSlots(p, slots);
    }

    @Test
    void everyOtherDish_forced_isWorthWhatEnumerationFinds() {
        int asked = 0;
        for (long seed = 1; seed <= 25; seed++) {
            WeekProblem p = TinyWeek.of(seed);
            Optional<Enumeration.Best> plan = Enumeration.bestPlan(p);
            if (plan.isEmpty()) {
                continue;
            }
            WeekProblem priced = priced(p, plan.get().choice());
            for (int s = 0; s < p.slots().size(); s++) {
                for (int k = 0; k < p.slots().get(s).candidates().size(); k++) {
                    if (k != plan.get().choice()[s]) {
                        WeekProblem forced = Forced.dish(priced, s, k);
                        Optional<Enumeration.Best> best = Enumeration.bestPlan(forced);
                        WeekRun.Found found = Forced.best(forced, s, plan.get().choice(), plan.get().packs());
                        assertThat(found.complete()).as("seed %d slot %d dish %d", seed, s, k).isEqualTo(best.isPresent());
                        best.ifPresent(b -> assertThat(found.valueCents()).isEqualTo(b.cents()));
                        asked++;
                    }
                }
            }
        }
        assertThat(asked).isGreaterThan(30);
    }
}
