package croftboard.need;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Ratio;
import org.junit.jupiter.api.Test;

/** The one rule by which a menu becomes batches. Steps yield 1000 mg here unless said otherwise. */
class WorkloadTest {
    private static final int STEP = 1000;
    private final HandWeek week = new HandWeek();

    private void dish(int component, int useDay, int lastDay, long mg) {
        week.slot(0, new int[] {lastDay}, new HandWeek.Dish(0).demand(component, useDay, lastDay, mg).on());
    }

    private Workload work() {
        WeekProblem problem = week.build();
        return Workload.of(problem, new int[problem.slots().size()]);
    }

    private static Workload.Batch batch(int component, int day, int lastDay, int steps) {
        return new Workload.Batch(component, day, lastDay, steps);
    }

    @Test
    void batch_isMadeOnTheDayItIsUsed() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        dish(sauce, 4, 4, STEP);
        assertThat(work().batches()).containsExactly(batch(sauce, 4, 4, 1));
    }

    @Test
    void lead_movesTheBatchADayEarlier() {
        int beans = week.component(3, 1, STEP, new HandWeek.Made());
        dish(beans, 4, 4, STEP);
        assertThat(work().batches()).containsExactly(batch(beans, 3, 4, 1));
    }

    @Test
    void dayWithoutPrep_movesTheBatchToThePrepDayBefore() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        week.noPrepOn(4).noPrepOn(3);
        dish(sauce, 4, 4, STEP);
        assertThat(work().batches()).containsExactly(batch(sauce, 2, 4, 1));
    }

    @Test
    void steps_areRoundedUp_exactlyOnTheStepTheyAreNot() {
        int sauce = week.component(1, 0, STEP, new HandWeek.Made());
        dish(sauce, 1, 1, 3 * STEP);
        dish(sauce, 3, 3, 3 * STEP + 1);
        assertThat(work().batches()).containsExactly(batch(sauce, 1, 1, 3), batch(sauce, 3, 3, 4));
    }

    @Test
    void oneBatch_servesEveryDishThatItsLifeCovers() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        dish(sauce, 1, 1, 400);
        dish(sauce, 3, 3, 700);      // day 3 is the third and last day of what is made on day 1
        assertThat(work().batches()).containsExactly(batch(sauce, 1, 3, 2));
    }

    @Test
    void demandADayPastTheLife_getsABatchOfItsOwn() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        dish(sauce, 1, 1, 400);
        dish(sauce, 4, 4, 700);
        assertThat(work().batches()).containsExactly(batch(sauce, 1, 1, 1), batch(sauce, 4, 4, 1));
    }

    @Test
    void dishThatIsServedLonger_asksForTheLifeToItsLastDay() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        dish(sauce, 1, 3, 400);
        assertThat(work().missed()).isEmpty();
        dish(sauce, 1, 4, 400);
        assertThat(work().missed()).containsExactly(new WeekProblem.Demand(sauce, 1, 4, 400));
    }

    @Test
    void lead_thatLeavesNoLife_isMissed() {
        int beans = week.component(1, 1, STEP, new HandWeek.Made());
        dish(beans, 4, 4, 400);
        assertThat(work().missed()).containsExactly(new WeekProblem.Demand(beans, 4, 4, 400));
        assertThat(work().batches()).isEmpty();
    }

    @Test
    void demandBeforeAnyPrepDay_isMissed() {
        int beans = week.component(3, 1, STEP, new HandWeek.Made());
        dish(beans, 0, 0, 400);
        assertThat(work().missed()).hasSize(1);
    }

    @Test
    void stock_servesFirst_onlyTheRestIsMade() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        week.componentStock(sauce, 0, 6, 500);
        dish(sauce, 2, 2, STEP + 500);
        assertThat(work().batches()).containsExactly(batch(sauce, 2, 2, 1));
    }

    @Test
    void stock_thatEndsBeforeTheLastDay_servesNothing() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        week.componentStock(sauce, 0, 3, 5000);
        dish(sauce, 3, 4, STEP);
        assertThat(work().batches()).containsExactly(batch(sauce, 3, 4, 1));
    }

    @Test
    void stock_thatCoversAll_makesNoBatch() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        week.componentStock(sauce, 0, 6, STEP);
        dish(sauce, 2, 2, STEP);
        assertThat(work().batches()).isEmpty();
        assertThat(work().missed()).isEmpty();
    }

    @Test
    void stationOverItsMinutes_movesTheBatchOnePrepDayEarlier() {
        int hot = week.station(60, 0, 0);
        int sauce = week.component(3, 0, STEP, new HandWeek.Made().use(hot, 30, 1));
        week.slot(0, new int[] {4}, new HandWeek.Dish(0).use(hot, 4, 31).demand(sauce, 4, 4, STEP).on());
        assertThat(work().batches()).containsExactly(batch(sauce, 3, 4, 1));
    }

    @Test
    void stationExactlyAtItsMinutes_movesNothing() {
        int hot = week.station(60, 0, 0);
        int sauce = week.component(3, 0, STEP, new HandWeek.Made().use(hot, 30, 1));
        week.slot(0, new int[] {4}, new HandWeek.Dish(0).use(hot, 4, 30).demand(sauce, 4, 4, STEP).on());
        assertThat(work().batches()).containsExactly(batch(sauce, 4, 4, 1));
    }

    @Test
    void stationOverOnBothDays_leavesTheBatchWhereItWas() {
        int hot = week.station(60, 0, 0);
        int sauce = week.component(3, 0, STEP, new HandWeek.Made().use(hot, 30, 1));
        week.slot(0, new int[] {4}, new HandWeek.Dish(0).use(hot, 4, 31).use(hot, 3, 31)
                .demand(sauce, 4, 4, STEP).on());
        assertThat(work().batches()).containsExactly(batch(sauce, 4, 4, 1));
    }

    @Test
    void lifeThatWouldEndTooSoon_keepsTheBatchOnTheFullDay() {
        int hot = week.station(60, 0, 0);
        int sauce = week.component(1, 0, STEP, new HandWeek.Made().use(hot, 30, 1));
        week.slot(0, new int[] {4}, new HandWeek.Dish(0).use(hot, 4, 31).demand(sauce, 4, 4, STEP).on());
        assertThat(work().batches()).containsExactly(batch(sauce, 4, 4, 1));
    }

    @Test
    void equipmentOverItsUnits_movesNothing() {
        int oven = week.equipment(4, false);
        int sauce = week.component(3, 0, STEP, new HandWeek.Made().use(oven, 3, 1));
        week.slot(0, new int[] {4}, new HandWeek.Dish(0).use(oven, 4, 3).demand(sauce, 4, 4, STEP).on());
        assertThat(work().batches()).containsExactly(batch(sauce, 4, 4, 1));
        assertThat(work().unitsOver(week.build())).isEqualTo(2);
    }

    @Test
    void parts_areDemandedForTheBatchesTheyGoInto() {
        int outer = week.component(3, 0, STEP, new HandWeek.Made().part(1, 300));
        int inner = week.component(4, 1, STEP, new HandWeek.Made());
        dish(outer, 4, 5, 2 * STEP);
        assertThat(work().batches()).containsExactly(batch(outer, 4, 5, 2), batch(inner, 3, 5, 1));
    }

    @Test
    void needs_fallOnTheBatchDay_orSoManyDaysAhead() {
        int beans = week.item(7);
        int salt = week.item(7);
        int soup = week.component(3, 0, STEP, new HandWeek.Made().need(beans, 1, 70).need(salt, 0, 3));
        dish(soup, 4, 4, 2 * STEP);
        assertThat(work().needMg()[beans]).containsExactly(0, 0, 0, 140, 0, 0, 0);
        assertThat(work().needMg()[salt]).containsExactly(0, 0, 0, 0, 6, 0, 0);
    }

    @Test
    void minutes_areRoundedUpOnceABatch_notOnceAStep() {
        int hot = week.station(100, 0, 0);
        int sauce = week.component(1, 0, STEP, new HandWeek.Made().use(hot, 5, 4));      // 1 1/4 min a step
        dish(sauce, 2, 2, 3 * STEP);                                                     // 3.75 -> 4, not 3 x 2
        assertThat(work().used()[hot][2]).isEqualTo(4);
    }

    @Test
    void heldEquipment_isTakenToTheLastDayOfService_otherOnItsDayOnly() {
        int shelf = week.equipment(10, true);
        int oven = week.equipment(10, false);
        int sauce = week.component(4, 0, STEP, new HandWeek.Made().use(shelf, 2, 1).use(oven, 1, 1));
        dish(sauce, 2, 4, STEP);
        assertThat(work().used()[shelf]).containsExactly(0, 0, 2, 2, 2, 0, 0);
        assertThat(work().used()[oven]).containsExactly(0, 0, 1, 0, 0, 0, 0);
    }

    @Test
    void staples_areRoundedHalfUpOnceABatch() {
        int sauce = week.component(1, 0, STEP, new HandWeek.Made().staples(Ratio.of(5, 2)));
        dish(sauce, 1, 1, STEP);             // 2.5 -> 3
        dish(sauce, 3, 3, 3 * STEP);         // 7.5 -> 8
        assertThat(work().stapleCents()).isEqualTo(11);
    }

    @Test
    void directNeedsAndUses_areThoseOfTheDish() {
        int kale = week.item(3);
        int cold = week.station(60, 0, 0);
        week.slot(0, new int[] {1}, new HandWeek.Dish(0).need(kale, 1, 70).use(cold, 1, 12).on());
        week.slot(1, new int[] {1}, new HandWeek.Dish(1).need(kale, 1, 30).use(cold, 1, 5).on());
        assertThat(work().needMg()[kale][1]).isEqualTo(100);
        assertThat(work().used()[cold][1]).isEqualTo(17);
    }

    @Test
    void emptySlots_makeNoWork() {
        int sauce = week.component(3, 0, STEP, new HandWeek.Made());
        dish(sauce, 1, 1, STEP);
        Workload none = Workload.none(week.build());
        assertThat(none.batches()).isEmpty();
        assertThat(none.unitsOver(week.build())).isZero();
    }

    @Test
    void unitsOver_countsWhatOvertimeDoesNotCover() {
        int hot = week.station(60, 30, 2800);
        week.slot(0, new int[] {1}, new HandWeek.Dish(0).use(hot, 1, 90).on());
        assertThat(work().unitsOver(week.build())).isZero();
        week.slot(1, new int[] {1}, new HandWeek.Dish(1).use(hot, 1, 7).on());
        assertThat(work().unitsOver(week.build())).isEqualTo(7);
    }

    @Test
    void batchesOf_areInTheOrderOfDays() {
        int outer = week.component(1, 0, STEP, new HandWeek.Made().part(1, STEP));
        int inner = week.component(1, 0, STEP, new HandWeek.Made());
        dish(outer, 5, 5, STEP);
        dish(inner, 2, 2, STEP);
        assertThat(work().batchesOf(inner)).containsExactly(batch(inner, 2, 2, 1), batch(inner, 5, 5, 1));
    }
}
