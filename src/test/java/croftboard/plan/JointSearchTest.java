package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.RandomBook;
import croftboard.menu.MenuSearch;
import croftboard.menu.OpenMenu;
import croftboard.need.Account;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.OpenOrders;
import croftboard.sourcing.Sourcing;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Menu and orders changed together: the money is the account's, and what is found keeps every must. */
class JointSearchTest {
    private static final double LOCAL_WORTH = 0.1;
    private static final int CHANGES = 3_000;

    private record Start(int[] choice, Sourcing.Orders orders) {
        static Start of(WeekProblem week) {
            int[] choice = new MenuSearch(week, LOCAL_WORTH).greedy().choice();
            return new Start(choice, new Sourcing(week, LOCAL_WORTH).search(choice, 1, 300, () -> false));
        }
    }

    private static WeekProblem book(int seed) {
        return ProblemBuilder.build(RandomBook.of(seed), RandomBook.WEEK, Map.of(), Given.NOTHING, Optional.empty())
                .problem();
    }

    @ParameterizedTest(name = "random book {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void moneyAfterThousandsOfChanges_takenBackOrKept_isTheAccounts(int seed) {
        WeekProblem week = book(seed);
        if (JointSearch.suits(week)) {
            compare(week, seed);
        }
    }

    @Test
    void money_onARandomWeekOf54Slots_isTheAccounts() {
        assertThat(compare(RandomWeek.week(3), 1)).isPositive();
    }

    /** @return how many plans were compared */
    private static int compare(WeekProblem week, int seed) {
        Random g = new Random(seed);
        Start start = Start.of(week);
        OpenMenu menu = new OpenMenu(week, start.choice);
        OpenOrders orders = new OpenOrders(week, LOCAL_WORTH);
        menu.changed(i -> orders.need(i, menu.need(i)));
        orders.start(start.orders.packs());
        int compared = 0;
        for (int n = 0; n < CHANGES; n++) {
            change(week, menu, orders, g);
            if (n % 10 == 0 && orders.sound()) {
                same(week, menu, orders);
                compared++;
            }
        }
        return compared;
    }

    private static void change(WeekProblem week, OpenMenu menu, OpenOrders orders, Random g) {
        orders.begin();
        int slot = menu.movable()[g.nextInt(menu.movable().length)];
        int was = menu.choice(slot);
        switch (g.nextInt(3)) {
            case 0 -> orders.shift(g);
            case 1 -> orders.turn(g);
            default -> {
                menu.set(slot, g.nextInt(week.slots().get(slot).candidates().size()));
                double foodFree = menu.foodFree();
                menu.changed(i -> {
                    orders.need(i, menu.need(i));
                    orders.settle(i, foodFree);
                });
            }
        }
        if (g.nextInt(10) > 0) {
            menu.set(slot, was);
            menu.changed(i -> orders.need(i, menu.need(i)));
            orders.undo();
        }
    }

    private static void same(WeekProblem week, OpenMenu menu, OpenOrders orders) {
        int[] packs = orders.packs();
        Account account = Account.of(week, menu.choices(), packs);
        int dock = week.prices().receivingResource();
        boolean dockUneven = dock >= 0 && week.prices().evennessCentsPerMinute().signum() > 0;
        OpenMenu musts = new OpenMenu(week, menu.choices());
        if (!dockUneven && musts.keepsMusts() && dockHolds(week, menu, packs)) {
            double cents = menu.worth()
                    - orders.cents(menu.foodFree(), dock < 0 ? new long[0] : menu.used(dock));
            assertThat(cents).isCloseTo(account.value(), Offset.offset(4.0 + week.items().size()));
        }
    }

    private static boolean dockHolds(WeekProblem week, OpenMenu menu, int[] packs) {
        int dock = week.prices().receivingResource();
        if (dock < 0) {
            return true;
        }
        WeekProblem.Resource r = week.resources().get(dock);
        long[][] used = new long[week.resources().size()][];
        for (int k = 0; k < used.length; k++) {
            used[k] = menu.used(k);
        }
        long[] all = Account.withReceiving(week, packs, used)[dock];
        for (int t = 0; t < all.length; t++) {
            if (all[t] > r.regular()[t] + r.overtime()[t]) {
                return false;
            }
        }
        return true;
    }

    @ParameterizedTest(name = "small week {0}")
    @ValueSource(longs = {1, 2, 3})
    void whatIsFound_isComplete_worthMoreThanTheStart_andTheSameAgain(long seed) {
        WeekProblem week = RandomWeek.small(seed);
        Start start = Start.of(week);
        JointSearch.Found one = new JointSearch(week, LOCAL_WORTH, start.choice, start.orders.packs(), 7)
                .run(20_000, 0, () -> false);
        JointSearch.Found two = new JointSearch(week, LOCAL_WORTH, start.choice, start.orders.packs(), 7)
                .run(20_000, 0, () -> false);
        Sourcing.Orders orders = new Sourcing(week, LOCAL_WORTH).better(one.choice(), one.packs(), 7, 1_000);
        assertThat(new OpenMenu(week, one.choice()).keepsMusts()).isTrue();
        assertThat(orders.complete()).isTrue();
        assertThat(orders.valueCents()).isGreaterThan(start.orders.valueCents())
                .isGreaterThanOrEqualTo(Account.of(week, one.choice(), one.packs()).value());
        assertThat(two.choice()).isEqualTo(one.choice());
        assertThat(two.packs()).isEqualTo(one.packs());
    }

    @Test
    void stoppedAtOnce_answersWithTheStart() {
        WeekProblem week = RandomWeek.small(4);
        Start start = Start.of(week);
        JointSearch.Found found = new JointSearch(week, LOCAL_WORTH, start.choice, start.orders.packs(), 1)
                .run(0, 60_000, () -> true);
        assertThat(found.tries()).isLessThan(1_000);
        assertThat(new Sourcing(week, LOCAL_WORTH).better(found.choice(), found.packs(), 1, 1_000).valueCents())
                .isGreaterThanOrEqualTo(start.orders.valueCents());
    }
}
