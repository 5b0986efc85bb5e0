package croftboard.need;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Ratio;
import croftboard.need.Account.Broken;
import croftboard.need.Account.Promise;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every line of a plan's value: fires with the exact amount, is silent at its limit. */
class AccountTest {
    private static final long KG = 1_000_000;
    private final HandWeek week = new HandWeek();

    /** The first dish of every slot. */
    private Account account(int... packs) {
        WeekProblem problem = week.build();
        return Account.of(problem, new int[problem.slots().size()], packs);
    }

    private Account empty(int... packs) {
        WeekProblem problem = week.build();
        int[] choice = new int[problem.slots().size()];
        Arrays.fill(choice, -1);
        return Account.of(problem, choice, packs);
    }

    private static List<Broken> of(Account account, Promise promise) {
        return account.broken().stream().filter(b -> b.promise() == promise).toList();
    }

    private void dishOn(int line, int day, HandWeek.Dish dish) {
        week.slot(line, new int[] {day}, dish.on());
    }

    @Test
    void value_isMoneyInLessMoneyOut_byHand() {
        int kale = week.item(9, Ratio.of(3, 10_000), Ratio.of(1, 10_000));
        int herb = week.item(1, Ratio.of(3, 10_000), Ratio.of(1, 10_000));
        int hot = week.station(30, 60, 2000);
        int monday = week.delivery(0, 250);
        week.offer(kale, monday, KG, 900);
        week.offer(herb, monday, KG, 400);
        week.events(5000);
        dishOn(0, 0, new HandWeek.Dish(0).money(20_000, 700, 150).need(kale, 0, 400_000)
                .need(herb, 0, 900_000).use(hot, 0, 45));
        Account a = account(1, 1);
        assertThat(a.sales()).isEqualTo(20_000);
        assertThat(a.eventSales()).isEqualTo(5000);
        assertThat(a.left()).isEqualTo(700);
        assertThat(a.staples()).isEqualTo(150);
        assertThat(a.purchases()).isEqualTo(1300);
        assertThat(a.kept()).isEqualTo(180);          // 600 000 mg of kale x 0.0003
        assertThat(a.waste()).isEqualTo(10);          // 100 000 mg of herb x 0.0001
        assertThat(a.fees()).isEqualTo(250);
        assertThat(a.overtime()).isEqualTo(500);      // 15 min of $20.00 an hour
        assertThat(a.broken()).isEmpty();
        assertThat(a.foodCost()).isEqualTo(1300 - 180 + 150);
        assertThat(a.value()).isEqualTo(20_000 + 5000 + 700 - 150 - 1300 + 180 - 10 - 250 - 500);
    }

    @Test
    void emptySlot_costsItsPrice_filledNothing() {
        dishOn(0, 2, new HandWeek.Dish(0).money(100, 0, 0));
        assertThat(empty().broken()).containsExactly(new Broken(Promise.EMPTY_SLOT, 0, 2, 1, 15_000));
        assertThat(empty().value()).isEqualTo(-15_000);
        assertThat(account().broken()).isEmpty();
    }

    @Test
    void coverage_countsEachMissingDishOfEachDay_silentAtTheNumber() {
        week.openOn(0, 1).covering(2, 3000);
        dishOn(0, 0, new HandWeek.Dish(0).covers(1));
        dishOn(1, 0, new HandWeek.Dish(1).covers(1));
        dishOn(0, 1, new HandWeek.Dish(2).covers(1));
        dishOn(1, 1, new HandWeek.Dish(3).covers(0));
        assertThat(account().broken()).containsExactly(new Broken(Promise.COVERAGE, 0, 1, 1, 3000));
        assertThat(of(empty(), Promise.COVERAGE)).containsExactly(new Broken(Promise.COVERAGE, 0, 0, 2, 6000),
                new Broken(Promise.COVERAGE, 0, 1, 2, 6000));
    }

    @Test
    void coverage_aRunCountsOnEachOfItsDays() {
        week.openOn(0, 1, 2).covering(1, 3000);
        week.slot(0, new int[] {0, 1}, new HandWeek.Dish(0).covers(1).on());
        assertThat(account().broken()).containsExactly(new Broken(Promise.COVERAGE, 0, 2, 1, 3000));
    }

    @Test
    void coverage_readsTheBitOfItsOwnRule() {
        week.openOn(0).covering(1, 3000).covering(1, 4000);
        dishOn(0, 0, new HandWeek.Dish(0).covers(0b10));
        assertThat(account().broken()).containsExactly(new Broken(Promise.COVERAGE, 0, 0, 1, 3000));
    }

    @Test
    void sameDayVariety_countsDishesAboveTheMost() {
        week.openOn(0).varying(0, false, 2, 1200);
        dishOn(0, 0, new HandWeek.Dish(0).traits(7, 0));
        dishOn(1, 0, new HandWeek.Dish(1).traits(7, 1));
        assertThat(account().broken()).isEmpty();
        dishOn(2, 0, new HandWeek.Dish(2).traits(7, 2));
        dishOn(3, 0, new HandWeek.Dish(3).traits(7, 3));
        assertThat(account().broken()).containsExactly(new Broken(Promise.VARIETY, 0, 0, 2, 2400));
    }

    @Test
    void sameDayVariety_leavesStandingDishesOut() {
        week.openOn(0).varying(0, false, 1, 1200);
        dishOn(0, 0, new HandWeek.Dish(0).traits(7, 0));
        week.fixedSlot(1, new int[] {0}, new HandWeek.Dish(1).traits(7, 0).on());
        assertThat(account().broken()).isEmpty();
    }

    @Test
    void nextDayVariety_looksAtTheSameLineOnly() {
        week.varying(1, true, 1, 800);
        dishOn(0, 0, new HandWeek.Dish(0).traits(0, 5));
        dishOn(1, 1, new HandWeek.Dish(1).traits(0, 5));
        dishOn(0, 1, new HandWeek.Dish(2).traits(0, 6));
        assertThat(account().broken()).isEmpty();
        dishOn(1, 2, new HandWeek.Dish(3).traits(0, 5));
        assertThat(account().broken()).containsExactly(new Broken(Promise.VARIETY, 0, 2, 1, 800));
    }

    @Test
    void nextDayVariety_meetsTheFollowingRun_notTheOneAfter() {
        week.varying(0, true, 1, 800);
        week.slot(0, new int[] {0, 1, 2}, new HandWeek.Dish(0).traits(5, 0).on());
        week.slot(0, new int[] {3, 4}, new HandWeek.Dish(1).traits(6, 0).on());
        week.slot(0, new int[] {5}, new HandWeek.Dish(2).traits(5, 0).on());
        assertThat(account().broken()).isEmpty();
        assertThat(Account.nextOnLine(week.build(), 0)).isEqualTo(1);
        assertThat(Account.nextOnLine(week.build(), 2)).isEqualTo(-1);
    }

    @Test
    void localShare_chargesTheMoneyShort_silentAtTheTarget() {
        int kale = week.item(3);
        int v = week.delivery(0, 0);
        week.localShare(Ratio.of(45, 100), Ratio.of(30, 100));
        week.offer(kale, v, KG, WeekProblem.Locality.LOCAL, new WeekProblem.Tier(1, 450));
        week.offer(kale, v, KG, WeekProblem.Locality.NOT_LOCAL, new WeekProblem.Tier(1, 550));
        assertThat(account(1, 1).broken()).isEmpty();
        Account less = account(1, 3);                  // 450 of 2100; 945 wanted, 495 short, 30 cents a dollar
        assertThat(less.broken()).containsExactly(new Broken(Promise.LOCAL_SHARE, 0, -1, 495, 149));
        assertThat(less.localPurchases()).isEqualTo(450);
    }

    @Test
    void localShare_doesNotCountUnclassifiedFood() {
        int kale = week.item(3);
        week.localShare(Ratio.of(1, 2), Ratio.ONE);
        week.offer(kale, week.delivery(0, 0), KG, WeekProblem.Locality.UNCLASSIFIED, new WeekProblem.Tier(1, 101));
        Account a = account(1);
        assertThat(a.broken()).containsExactly(new Broken(Promise.LOCAL_SHARE, 0, -1, 51, 51));     // 50.5, half up
        assertThat(a.unclassified()).isEqualTo(101);
        assertThat(a.localPurchases()).isZero();
    }

    @Test
    void foodCost_chargesTheMoneyOver_silentAtTheShare() {
        int kale = week.item(3);
        week.offer(kale, week.delivery(0, 0), KG, 330);
        week.foodCost(Ratio.of(33, 100), Ratio.of(20, 100));
        dishOn(0, 0, new HandWeek.Dish(0).money(900, 500, 0));
        week.events(100);                              // counts as sales; what is left over does not
        assertThat(account(1).broken()).isEmpty();
        assertThat(account(2).broken()).containsExactly(new Broken(Promise.FOOD_COST, 0, -1, 330, 66));
    }

    @Test
    void foodCost_isPurchasesLessWhatKeeps_plusStaples() {
        int kale = week.item(9, Ratio.of(1, 10_000), Ratio.ZERO);
        week.offer(kale, week.delivery(0, 0), KG, 400);
        week.foodCost(Ratio.of(33, 100), Ratio.ONE);
        dishOn(0, 0, new HandWeek.Dish(0).money(1000, 0, 31));
        assertThat(account(1).broken()).containsExactly(new Broken(Promise.FOOD_COST, 0, -1, 1, 1));       // 400-100+31
    }

    @Test
    void evenness_chargesTheBusiestDayAboveTheMean() {
        int hot = week.station(100, 0, 0);
        week.evenness(Ratio.of(5));
        dishOn(0, 0, new HandWeek.Dish(0).use(hot, 0, 70));
        assertThat(account().broken()).containsExactly(new Broken(Promise.EVENNESS, hot, -1, 60, 300));     // mean 10
    }

    @Test
    void evenness_equalDays_isSilent_andSoIsEquipment() {
        int hot = week.station(100, 0, 0);
        int oven = week.equipment(100, false);
        week.evenness(Ratio.of(5));
        HandWeek.Dish dish = new HandWeek.Dish(0).use(oven, 3, 50);
        for (int day = 0; day < HandWeek.DAYS; day++) {
            dish.use(hot, day, 20);
        }
        dishOn(0, 0, dish);
        assertThat(account().broken()).isEmpty();
    }

    @Test
    void evenness_partMinutes_areRoundedOnce() {
        int hot = week.station(100, 0, 0);
        week.evenness(Ratio.of(5));
        dishOn(0, 0, new HandWeek.Dish(0).use(hot, 0, 10).use(hot, 1, 5));
        assertThat(account().broken()).containsExactly(new Broken(Promise.EVENNESS, hot, -1, 8, 39));       // 7 6/7 min
    }

    @Test
    void evenness_countsOnlyDaysOnWhichTheStationHasHands() {
        WeekProblem.Resource station = new WeekProblem.Resource("hot", "hot", true, new int[] {0, 1, 2},
                new long[] {60, 0, 60}, new long[3], 0, false);
        assertThat(Account.peakAboveMean(station, new long[] {40, 90, 20})).isEqualTo(Ratio.of(10));
    }

    @Test
    void overtime_startsAfterTheRegularMinutes_halfACentUp() {
        int hot = week.station(60, 60, 2830);
        dishOn(0, 0, new HandWeek.Dish(0).use(hot, 0, 60));
        assertThat(account().overtime()).isZero();
        dishOn(1, 0, new HandWeek.Dish(1).use(hot, 0, 3));
        assertThat(account().overtime()).isEqualTo(142);       // 3 x 47.17 = 141.5
    }

    @Test
    void fee_isPaidOnceADelivery_noneWithoutAnOrder() {
        int kale = week.item(3);
        int monday = week.delivery(0, 800);
        int tuesday = week.delivery(1, 500);
        week.offer(kale, monday, KG, 100);
        week.offer(kale, monday, KG, 100);
        week.offer(kale, tuesday, KG, 100);
        assertThat(account(1, 2, 0).fees()).isEqualTo(800);
        assertThat(account(0, 0, 0).fees()).isZero();
        assertThat(account(1, 0, 1).fees()).isEqualTo(1300);
    }

    @Test
    void priceBreak_countsForAllPacksOfTheOffer() {
        int kale = week.item(3);
        week.offer(kale, week.delivery(0, 0), KG, WeekProblem.Locality.LOCAL, new WeekProblem.Tier(1, 2400),
                new WeekProblem.Tier(4, 2150));
        assertThat(account(3).purchases()).isEqualTo(7200);
        assertThat(account(4).purchases()).isEqualTo(8600);
    }

    @Test
    void receiving_addsItsMinutesToEachDeliveryThatComes() {
        int kale = week.item(3);
        int dock = week.station(20, 60, 6000);
        week.receiving(dock, 12);
        week.offer(kale, week.delivery(2, 0), KG, 100);
        week.offer(kale, week.delivery(2, 0), KG, 100);
        assertThat(account(1, 0).overtime()).isZero();
        assertThat(account(1, 1).overtime()).isEqualTo(400);        // 24 min on day 2, 4 over
        long[][] used = {new long[HandWeek.DAYS]};
        assertThat(Account.withReceiving(week.build(), new int[] {1, 1}, used)[dock][2]).isEqualTo(24);
        assertThat(used[dock][2]).as("left as it was").isZero();
    }

    @Test
    void keptSurplus_isRoundedDown_wasteToTheNearestCent() {
        int kale = week.item(9, Ratio.of(1, 1000), Ratio.ZERO);
        int herb = week.item(1, Ratio.ZERO, Ratio.of(1, 1000));
        int v = week.delivery(0, 0);
        week.offer(kale, v, 1999, 1);
        week.offer(herb, v, 1500, 1);
        Account a = account(1, 1);
        assertThat(a.kept()).isEqualTo(1);
        assertThat(a.waste()).isEqualTo(2);
    }
}
