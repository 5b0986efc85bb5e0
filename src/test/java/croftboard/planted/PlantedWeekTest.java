package croftboard.planted;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import croftboard.menu.MenuSearch;
import croftboard.need.Account;
import croftboard.need.Enumeration;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.sourcing.JointRelaxation;
import croftboard.sourcing.Natives;
import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The planted plan keeps every must, is worth what it was planted for, and nothing passes it. */
class PlantedWeekTest {
    /** The safe side of a bound, in cents: a millionth, a cent, and what the account rounds of the local share. */
    private static long slack(long cents) {
        return 3 + cents / 1_000_000;
    }

    private static void holds(PlantedWeek w) {
        Account account = Account.of(w.problem(), w.menu(), w.packs());
        assertThat(account.value()).isEqualTo(w.cents());
        assertThat(w.bestCents()).isCloseTo(w.cents(), within(1.0));
        Workload work = Workload.of(w.problem(), w.menu());
        assertThat(work.unitsOver(w.problem())).isZero();
        assertThat(Enumeration.gapsHold(w.problem(), w.menu())).isTrue();
        assertThat(Enumeration.mustsHold(w.problem(), work, w.packs())).isTrue();
        assertThat(account.kept()).isZero();
        assertThat(account.broken()).allMatch(b -> b.promise() == Account.Promise.LOCAL_SHARE);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void plantedPlan_isWorthExactlyWhatWasPlanted(long seed) {
        holds(PlantedWeek.week(seed, seed > 3));
        holds(PlantedWeek.weeks(seed, 4, seed > 3));
        holds(PlantedWeek.tiny(seed));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void boundOverAllMenus_touchesThePlantedPlan(long seed) {
        assumeTrue(Natives.available());
        PlantedWeek week = PlantedWeek.week(seed, seed > 3);
        long bound = JointRelaxation.of(week.problem()).orElseThrow().boundCents();
        assertThat(bound).isBetween(week.cents(), week.cents() + slack(week.cents()));
    }

    @Test
    @Tag("slow")
    void boundOverAllMenus_touchesTheTwoPlantedWeeks() {
        assumeTrue(Natives.available());
        PlantedWeek two = PlantedWeek.weeks(1, 2, false);
        long bound = JointRelaxation.of(two.problem()).orElseThrow().boundCents();
        assertThat(bound).isBetween(two.cents(), two.cents() + slack(two.cents()));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void everyMenuWithEveryOrder_findsNothingBetter(long seed) {
        PlantedWeek tiny = PlantedWeek.tiny(seed);
        assertThat(Enumeration.best(tiny.problem())).hasValue(tiny.cents());
    }

    /** In a third of the slots at least, and taking dish after dish what looks best does not end there. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void otherDishes_lookBetterByThemselves(long seed) {
        PlantedWeek week = PlantedWeek.week(seed, seed > 3);
        double[] list = cheapest(week.problem());
        int lured = 0;
        for (int s = 0; s < week.menu().length; s++) {
            WeekProblem.Slot slot = week.problem().slots().get(s);
            double planted = alone(slot.candidates().get(week.menu()[s]), list);
            lured += slot.candidates().stream().anyMatch(c -> alone(c, list) > planted + 100) ? 1 : 0;
        }
        assertThat(lured).isGreaterThan(week.menu().length / 3);
        int[] greedy = new MenuSearch(week.problem(), .1).greedy().choice();
        long same = java.util.stream.IntStream.range(0, greedy.length).filter(s -> greedy[s] == week.menu()[s]).count();
        assertThat(same).isLessThan(greedy.length / 2);
    }

    private static double[] cheapest(WeekProblem problem) {
        double[] cents = new double[problem.items().size()];
        Arrays.fill(cents, Double.MAX_VALUE);
        problem.offers().forEach(o -> cents[o.item()] =
                Math.min(cents[o.item()], o.priceCents(1) / (double) o.packMg()));
        return cents;
    }

    /** What the dish brings less its food at the cheapest price of the list. */
    private static double alone(WeekProblem.Candidate c, double[] cents) {
        return c.valueCents() - c.needs().stream().mapToDouble(n -> n.mg() * cents[n.item()]).sum();
    }
}
