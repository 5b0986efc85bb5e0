package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.linearsolver.MPSolver;
import croftboard.book.RandomBook;
import croftboard.menu.MenuSearch;
import croftboard.need.Enumeration;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Every complete plan is a point of the joint program and worth no less there than in the account: stronger than holding
 * only the best plan under the bound.
 */
class PlansInTheJointProgramTest {
    private static final double LOCAL_WORTH = 0.2;

    @Test
    void completePlansOfTinyWeeks_areWorthNoLessInTheProgram() {
        assertThat(Natives.available()).isTrue();
        int held = 0;
        for (long seed = 1; seed <= 300; seed++) {
            WeekProblem problem = TinyWeek.of(seed);
            held += hold(problem, TinyMenus.of(problem, 3), seed);
        }
        assertThat(held).isGreaterThan(300);
    }

    @Test
    void completePlansOfRandomBooks_areWorthNoLessInTheProgram() {
        assertThat(Natives.available()).isTrue();
        int held = 0;
        for (int seed = 1; seed <= 40; seed++) {
            WeekProblem problem = ProblemBuilder.build(RandomBook.of(seed), RandomBook.WEEK, Map.of(), Given.NOTHING,
                    Optional.empty()).problem();
            MenuSearch search = new MenuSearch(problem, LOCAL_WORTH);
            List<int[]> menus = new ArrayList<>(List.of(search.greedy().choice()));
            for (long tries : new long[] {50, 400}) {
                menus.add(search.search(menus.get(0), seed, new MenuSearch.Effort(tries, 0, 20), () -> false).choice());
            }
            held += hold(problem, menus, seed);
        }
        assertThat(held).isGreaterThan(60);
    }

    private static int hold(WeekProblem problem, List<int[]> menus, long seed) {
        int held = 0;
        for (int[] menu : menus) {
            Sourcing.Orders orders = new Sourcing(problem, LOCAL_WORTH).search(menu, seed, 50, () -> false);
            Workload work = Workload.of(problem, menu);
            if (orders.complete() && work.missed().isEmpty() && work.unitsOver(problem) == 0
                    && Enumeration.gapsHold(problem, menu)) {
                double there = worth(problem, menu, orders.packs());
                assertThat(SafeSide.anyMenu(problem, there)).as("%s %d", problem.name(), seed)
                        .isGreaterThanOrEqualTo(orders.valueCents());
                held++;
            }
        }
        return held;
    }

    private static double worth(WeekProblem problem, int[] menu, int[] packs) {
        JointProgram joint = new JointProgram(problem);
        int[][] dish = joint.menu.dish();
        for (int s = 0; s < dish.length; s++) {
            for (int k = 0; k < dish[s].length; k++) {
                fix(joint.program, dish[s][k], menu[s] == k ? 1 : 0);
            }
        }
        for (int o = 0; o < packs.length; o++) {
            fix(joint.program, joint.buying.packs[o], packs[o]);
        }
        Program.Loaded loaded = joint.program.load("SCIP", false);
        try {
            assertThat(loaded.solver().solve()).as(problem.name()).isEqualTo(MPSolver.ResultStatus.OPTIMAL);
            return loaded.solver().objective().value();
        } finally {
            loaded.solver().delete();
        }
    }

    private static void fix(Program program, int column, double at) {
        Program.Column c = program.columns.get(column);
        assertThat(at).isBetween(c.least(), c.most());
        program.columns.set(column, new Program.Column(at, at, c.cents(), c.whole()));
    }
}
