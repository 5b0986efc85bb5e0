package croftboard.plan.ask;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekRun;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Orders mended from those of a tiny week's best plan, for its own menu and for each menu that differs in one dish. */
class MendedPacksTest {
    @Test
    void ownMenu_keepsThePacksOfTheBestPlan() {
        for (long seed = 1; seed <= 40; seed++) {
            WeekProblem p = TinyWeek.of(seed);
            Optional<Enumeration.Best> plan = Enumeration.bestPlan(p);
            plan.ifPresent(best -> assertThat(new MendedPacks(p, best.choice(), best.packs()).all()).isNotEmpty()
                    .allSatisfy(f -> assertThat(f.packs()).isEqualTo(best.packs())));
        }
    }

    @Test
    void otherMenu_isBoughtWhole_orNotAnswered_andNeverWorthMoreThanTheBestPlan() {
        int mended = 0;
        for (long seed = 1; seed <= 40; seed++) {
            WeekProblem p = TinyWeek.of(seed);
            Optional<Enumeration.Best> plan = Enumeration.bestPlan(p);
            for (int s = 0; s < p.slots().size() && plan.isPresent(); s++) {
                for (int k = 0; k < p.slots().get(s).candidates().size(); k++) {
                    int[] menu = plan.get().choice().clone();
                    menu[s] = k;
                    List<WeekRun.Found> all = new MendedPacks(p, menu, plan.get().packs()).all();
                    for (WeekRun.Found f : all) {
                        assertThat(WeekRun.holds(p, menu, f.packs())).isTrue();
                        assertThat(f.valueCents()).isLessThanOrEqualTo(plan.get().cents());
                        mended++;
                    }
                }
            }
        }
        assertThat(mended).isGreaterThan(30);
    }
}
