package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What orders must respect, each on a problem whose answer is plain; by search alone and by the exact program. */
class OrderRulesTest {
    private static final int[] MENU = {0};
    private static final int ROUNDS = 300;

    private static HandWeek.Dish dish(int... needs) {
        return new HandWeek.Dish(0, 10_000, needs);
    }

    private static void bothBuy(WeekProblem problem, long value, int... packs) {
        Sourcing sourcing = new Sourcing(problem, 0);
        Sourcing.Orders search = sourcing.search(MENU, 1, ROUNDS, () -> false);
        assertThat(search.complete()).isTrue();
        assertThat(search.packs()).containsExactly(packs);
        assertThat(search.valueCents()).isEqualTo(value);
        Sourcing.Orders nothing = new Sourcing.Orders(new int[packs.length], false, 0, java.util.Optional.empty(), 0);
        Sourcing.Orders exact = sourcing.exact(MENU, nothing, 0, 0);
        assertThat(exact.packs()).containsExactly(packs);
        assertThat(exact.valueCents()).isEqualTo(value);
        assertThat(exact.bestForMenu().orElseThrow()).isBetween(value, value + 2);
    }

    @Test
    void packsAreWhole_theCheaperPackWins() {
        bothBuy(new HandWeek().item(5).delivery(0, 0, 0).offer(0, 0, 1000, 500, 9).offer(0, 0, 400, 150, 9)
                .slot(1, dish(0, 1, 700)).build(), 9_700, 0, 2);
    }

    @Test
    void priceBreak_isTakenWhenMorePacksCostLess() {
        List<WeekProblem.Tier> tiers = List.of(new WeekProblem.Tier(1, 500), new WeekProblem.Tier(3, 300));
        bothBuy(new HandWeek().item(5).delivery(0, 0, 0).offer(0, 0, 1000, tiers, 0, 9, false)
                .slot(1, dish(0, 1, 2000)).build(), 9_100, 3);
    }

    @Test
    void priceBreak_isLeftWhenMorePacksCostMore() {
        List<WeekProblem.Tier> tiers = List.of(new WeekProblem.Tier(1, 500), new WeekProblem.Tier(4, 400));
        bothBuy(new HandWeek().item(5).delivery(0, 0, 0).offer(0, 0, 1000, tiers, 0, 9, false)
                .slot(1, dish(0, 1, 2000)).build(), 9_000, 2);
    }

    @Test
    void minimum_isReachedWithPacksThatKeepRatherThanOnesThatRot() {
        bothBuy(new HandWeek().item(1).item(9, Ratio.of(4, 10), Ratio.ZERO).delivery(0, 1_200, 0)
                .offer(0, 0, 1000, 500, 9).offer(1, 0, 1000, 700, 9).slot(1, dish(0, 1, 900)).build(), 9_200, 1, 1);
    }

    @Test
    void minimum_thatWouldCostTooMuch_sendsTheOrderElsewhere() {
        bothBuy(new HandWeek().item(1).delivery(0, 5_000, 0).delivery(0, 0, 300).offer(0, 0, 1000, 500, 99)
                .offer(0, 1, 1000, 900, 9).slot(1, dish(0, 1, 900)).build(), 8_800, 0, 1);
    }

    @Test
    void delivery_thatCannotReachItsMinimum_isLeftAlone() {
        bothBuy(new HandWeek().item(1).delivery(0, 1_001, 0).delivery(0, 0, 0).offer(0, 0, 1000, 500, 2)
                .offer(0, 1, 1000, 900, 9).slot(1, dish(0, 1, 900)).build(), 9_100, 0, 1);
    }

    @Test
    void commitment_isBoughtAndUsedFirst() {
        List<WeekProblem.Tier> dear = List.of(new WeekProblem.Tier(1, 800));
        bothBuy(new HandWeek().item(5).delivery(0, 0, 0).offer(0, 0, 1000, dear, 1, 9, false).offer(0, 0, 1000, 500, 9)
                .slot(1, dish(0, 1, 1500)).build(), 8_700, 1, 1);
    }

    @Test
    void food_isDeliveredWithinItsLife() {
        bothBuy(new HandWeek().item(1).delivery(0, 0, 0).delivery(3, 0, 0).offer(0, 0, 1000, 300, 9)
                .offer(0, 1, 1000, 700, 9).slot(1, dish(0, 1, 400, 0, 4, 400)).build(), 9_000, 1, 1);
    }

    @Test
    void fee_isWorthPayingOnlyOnce() {
        bothBuy(new HandWeek().item(9).delivery(0, 0, 400).delivery(3, 0, 400).offer(0, 0, 1000, 500, 9)
                .offer(0, 1, 1000, 400, 9).slot(1, dish(0, 1, 900, 0, 4, 900)).build(), 8_600, 2, 0);
    }

    @Test
    void waste_costsHauling() {
        bothBuy(new HandWeek().item(1, Ratio.ZERO, Ratio.of(1, 10)).delivery(0, 0, 0).offer(0, 0, 1000, 400, 9)
                .offer(0, 0, 500, 430, 9).slot(1, dish(0, 1, 500)).build(), 9_570, 0, 1);
    }

    @Test
    void dock_takesNoMoreDeliveriesThanItHasMinutes() {
        HandWeek week = new HandWeek().item(9).item(9).delivery(0, 0, 0).delivery(0, 0, 0).delivery(1, 0, 0)
                .offer(0, 0, 1000, 300, 9).offer(1, 1, 1000, 300, 9).offer(1, 2, 1000, 900, 9)
                .slot(2, dish(0, 2, 900, 1, 2, 900));
        bothBuy(week.build(), 9_400, 1, 1, 0);
        bothBuy(week.dock(20, 30, 0).build(), 8_800, 1, 0, 1);
    }

    @Test
    void dock_overtimeIsPaid() {
        bothBuy(new HandWeek().item(9).item(9).delivery(0, 0, 0).delivery(0, 0, 0).offer(0, 0, 1000, 300, 9)
                .offer(1, 1, 1000, 300, 9).dock(20, 30, 15).slot(2, dish(0, 2, 900, 1, 2, 900)).build(),
                9_200, 1, 1);
    }

    @Test
    void localShare_isBoughtWhileItCostsLessThanItsPrice() {
        List<WeekProblem.Tier> dear = List.of(new WeekProblem.Tier(1, 520));
        HandWeek week = new HandWeek().item(9).delivery(0, 0, 0).offer(0, 0, 1000, 500, 9)
                .offer(0, 0, 1000, dear, 0, 9, true).slot(1, dish(0, 1, 2000));
        bothBuy(week.local(Ratio.of(1, 2), Ratio.of(1, 100)).build(), 8_995, 2, 0);
        bothBuy(week.local(Ratio.of(1, 2), Ratio.of(1, 10)).build(), 8_980, 1, 1);
    }

    @Test
    void nothingThatCanBeHad_buysAsMuchAsCanAndSaysSo() {
        WeekProblem problem = new HandWeek().item(1).item(9).delivery(0, 0, 0).offer(0, 0, 1000, 500, 1)
                .offer(1, 0, 1000, 500, 9).slot(1, dish(0, 1, 1500, 1, 1, 1500)).build();
        Sourcing sourcing = new Sourcing(problem, 0);
        Sourcing.Orders orders = sourcing.search(MENU, 1, ROUNDS, () -> false);
        assertThat(orders.complete()).isFalse();
        assertThat(orders.packs()).containsExactly(1, 2);
        Sourcing.Orders exact = sourcing.exact(MENU, orders, 0, 0);
        assertThat(exact.complete()).isFalse();
        assertThat(exact.packs()).containsExactly(1, 2);
        assertThat(exact.bestForMenu()).isEmpty();
    }

    @Test
    void search_withTheSameSeedAndRounds_isTheSame() {
        WeekProblem week = croftboard.need.RandomWeek.small(4);
        int[] menu = SimpleMenu.of(week);
        Sourcing sourcing = new Sourcing(week, 0.2);
        Sourcing.Orders a = sourcing.search(menu, 5, 800, () -> false);
        Sourcing.Orders b = new Sourcing(week, 0.2).search(menu, 5, 800, () -> false);
        assertThat(a.packs()).isEqualTo(b.packs());
        assertThat(a.rounds()).isEqualTo(800).isEqualTo(b.rounds());
    }

    @Test
    void search_toldToStop_stillAnswers() {
        WeekProblem week = croftboard.need.RandomWeek.small(4);
        int[] menu = SimpleMenu.of(week);
        Sourcing.Orders orders = new Sourcing(week, 0.2).search(menu, 5, 0, () -> true);
        assertThat(orders.rounds()).isZero();
        assertThat(orders.packs()).hasSize(week.offers().size());
        assertThat(orders.complete()).isTrue();
    }
}
