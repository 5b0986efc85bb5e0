package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weeks of real size, in steps and not in time. */
class RandomWeeksTest {
    private static final double LOCAL_WORTH = 0.2;

    /** 18,770 was measured for seed 1 by a program of other make, in doubles; the others by this one. */
    @ParameterizedTest(name = "week {0}")
    @CsvSource({"1, 1877038, 0.231", "2, 1874724, 0.209", "3, 1832257, 0.191"})
    void relaxation_isTheKnownNumber(long seed, long cents, double localWorth) {
        Relaxation r = JointRelaxation.of(RandomWeek.week(seed)).orElseThrow();
        assertThat(r.boundCents()).isBetween(cents - 5, cents + 5);
        assertThat(r.localWorth()).isBetween(localWorth - 0.001, localWorth + 0.001);
    }

    @Test
    void relaxation_pricesEveryItemThatDishesShare() {
        WeekProblem week = RandomWeek.week(1);
        Relaxation r = JointRelaxation.of(week).orElseThrow();
        for (int i = 0; i < week.items().size(); i++) {
            int item = i;
            double most = week.offers().stream().filter(o -> o.item() == item)
                    .mapToDouble(o -> o.priceCents(1) * 1000.0 / o.packMg()).max().orElseThrow();
            assertThat(java.util.Arrays.stream(r.itemCents()[i]).sum()).as("item %d", i).isPositive();
            assertThat(r.itemCents()[i][0]).as("item %d", i).isBetween(0.0, 3 * most);
        }
    }

    @Test
    void orders_forASimpleMenu_reachWhatTheyReached() {
        WeekProblem week = RandomWeek.week(5);
        int[] menu = SimpleMenu.of(week);
        Sourcing sourcing = new Sourcing(week, LOCAL_WORTH);
        Sourcing.Orders orders = sourcing.search(menu, 5, 2000, () -> false);
        assertThat(orders.complete()).isTrue();
        assertThat(orders.valueCents()).isGreaterThanOrEqualTo(1_712_000);
        Sourcing.Orders exact = sourcing.exact(menu, orders, 0, 1);
        assertThat(exact.complete()).isTrue();
        assertThat(exact.valueCents()).isGreaterThanOrEqualTo(orders.valueCents());
        assertThat(exact.bestForMenu().orElseThrow()).isBetween(exact.valueCents(), 1_716_000L);
    }

    @Test
    void orders_ofAMenuThatCannotBeBought_areSaidToBeIncomplete() {
        WeekProblem week = RandomWeek.small(3);
        int[] menu = SimpleMenu.of(week);
        Sourcing sourcing = new Sourcing(week, LOCAL_WORTH);
        Sourcing.Orders orders = sourcing.search(menu, 5, 500, () -> false);
        Sourcing.Orders exact = sourcing.exact(menu, orders, 0, 10);
        assertThat(orders.complete()).isFalse();
        assertThat(exact.packs()).isEqualTo(orders.packs());
        assertThat(exact.bestForMenu()).isEmpty();
    }

    @Test
    void exactOrders_withTheSameLimitOfNodes_areTheSame() {
        WeekProblem week = RandomWeek.small(4);
        int[] menu = SimpleMenu.of(week);
        Sourcing sourcing = new Sourcing(week, LOCAL_WORTH);
        Sourcing.Orders start = sourcing.search(menu, 5, 100, () -> false);
        Sourcing.Orders a = sourcing.exact(menu, start, 0, 5);
        Sourcing.Orders b = sourcing.exact(menu, start, 0, 5);
        assertThat(a.packs()).isEqualTo(b.packs());
        assertThat(a.bestForMenu()).isEqualTo(b.bestForMenu());
    }

    @Test
    void jointRoot_isNoLooserThanTheRelaxation() {
        WeekProblem week = RandomWeek.small(1);
        int[] nothing = croftboard.need.Enumeration.nothing(week);
        long relaxed = JointRelaxation.of(week).orElseThrow().boundCents();
        long root = JointRoot.bound(week, nothing, new int[week.offers().size()], 0, 1).orElseThrow();
        assertThat(root).isLessThanOrEqualTo(relaxed);
    }

    @Test
    void jointRoot_sameNodes_sameBound_andMoreNodesNoLooser() {
        WeekProblem week = RandomWeek.small(2);
        int[] nothing = croftboard.need.Enumeration.nothing(week);
        int[] packs = new int[week.offers().size()];
        long one = JointRoot.bound(week, nothing, packs, 0, 3).orElseThrow();
        assertThat(JointRoot.bound(week, nothing, packs, 0, 3).orElseThrow()).isEqualTo(one);
        assertThat(JointRoot.bound(week, nothing, packs, 0, 12).orElseThrow()).isLessThanOrEqualTo(one);
    }

    /** Without a limit it would go on for hours. */
    @Test
    void jointRoot_told_endsWithWhatIsProvedSoFar() {
        WeekProblem week = RandomWeek.small(1);
        int[] nothing = croftboard.need.Enumeration.nothing(week);
        long end = System.nanoTime() + 4_000_000_000L;
        JointRoot.Found found = JointRoot.look(week, nothing, new int[week.offers().size()], 0, 0,
                () -> System.nanoTime() > end);
        assertThat(found.boundCents().orElse(Long.MAX_VALUE)).isGreaterThan(0);
    }
}
