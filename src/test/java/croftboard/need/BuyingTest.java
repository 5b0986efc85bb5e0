package croftboard.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class BuyingTest {
    private static final long KG = 1_000_000;
    private final HandWeek week = new HandWeek();

    private static long[][] need(WeekProblem problem, int item, int day, long mg) {
        return and(new long[problem.items().size()][problem.days()], item, day, mg);
    }

    private static long[][] and(long[][] need, int item, int day, long mg) {
        need[item][day] += mg;
        return need;
    }

    @Test
    void delivery_isUsableFromItsDayToItsLife_notADayLonger() {
        int kale = week.item(3);
        week.offer(kale, week.delivery(1, 0), KG, 500);
        WeekProblem problem = week.build();
        int[] one = {1};
        assertThat(Buying.of(problem, need(problem, kale, 0, KG), one).complete()).as("the day before").isFalse();
        assertThat(Buying.of(problem, need(problem, kale, 1, KG), one).complete()).as("on the day").isTrue();
        assertThat(Buying.of(problem, need(problem, kale, 4, KG), one).complete()).as("last day of life").isTrue();
        Buying late = Buying.of(problem, need(problem, kale, 5, KG), one);
        assertThat(late.missingMg()[kale][5]).isEqualTo(KG);
        assertThat(late.wastedMg()[kale]).isEqualTo(KG);
    }

    @Test
    void lifeOfZeroDays_servesItsOwnDayOnly() {
        int basil = week.item(0);
        week.offer(basil, week.delivery(2, 0), KG, 500);
        WeekProblem problem = week.build();
        assertThat(Buying.of(problem, need(problem, basil, 2, KG), new int[] {1}).complete()).isTrue();
        assertThat(Buying.of(problem, need(problem, basil, 3, 1), new int[] {1}).missingMg()[basil][3]).isEqualTo(1);
    }

    @Test
    void oldestGoodDelivery_isUsedFirst() {
        int kale = week.item(3);
        week.offer(kale, week.delivery(0, 0), KG, 500);
        week.offer(kale, week.delivery(2, 0), KG, 500);
        WeekProblem problem = week.build();
        Buying b = Buying.of(problem, and(need(problem, kale, 3, KG), kale, 5, KG), new int[] {1, 1});
        assertThat(b.flows()).containsExactly(new Buying.Flow(kale, 0, -1, 3, KG), new Buying.Flow(kale, 2, -1, 5, KG));
        assertThat(b.complete()).isTrue();
    }

    @Test
    void need_isSplitOverDeliveries_andTheMissingRestIsExact() {
        int kale = week.item(6);
        week.offer(kale, week.delivery(0, 0), 300, 500);
        week.offer(kale, week.delivery(1, 0), 200, 500);
        WeekProblem problem = week.build();
        Buying b = Buying.of(problem, need(problem, kale, 1, 501), new int[] {1, 1});
        assertThat(b.flows()).containsExactly(new Buying.Flow(kale, 0, -1, 1, 300),
                new Buying.Flow(kale, 1, -1, 1, 200));
        assertThat(b.missingMg()[kale][1]).isEqualTo(1);
    }

    @Test
    void stock_goesBeforeWhatIsBought_soonestExpiryFirst() {
        int kale = week.item(6);
        week.offer(kale, week.delivery(0, 0), KG, 500);
        week.stock(kale, 0, 6, 100).stock(kale, 0, 2, 100);
        WeekProblem problem = week.build();
        Buying b = Buying.of(problem, need(problem, kale, 2, 250), new int[] {1});
        assertThat(b.flows()).containsExactly(new Buying.Flow(kale, -1, 1, 2, 100),
                new Buying.Flow(kale, -1, 0, 2, 100),
                new Buying.Flow(kale, 0, -1, 2, 50));
    }

    @Test
    void stock_outsideItsDays_servesNothing() {
        int kale = week.item(6);
        week.stock(kale, 2, 3, 100);
        WeekProblem problem = week.build();
        for (int day = 0; day < HandWeek.DAYS; day++) {
            boolean complete = Buying.of(problem, need(problem, kale, day, 100), new int[0]).complete();
            assertThat(complete).as("day %d", day).isEqualTo(day == 2 || day == 3);
        }
    }

    @Test
    void stockThatNobodyUses_isNeitherKeptNorWasted() {
        int kale = week.item(6);
        week.stock(kale, 0, 3, 100);
        WeekProblem problem = week.build();
        Buying b = Buying.of(problem, need(problem, kale, 1, 40), new int[0]);
        assertThat(b.keptMg()[kale]).isZero();
        assertThat(b.wastedMg()[kale]).isZero();
    }

    @Test
    void surplus_keepsWhenItOutlivesTheWeek_elseItIsWaste() {
        int kale = week.item(4);
        week.offer(kale, week.delivery(2, 0), 100, 500);      // last good day 6: the week's last
        week.offer(kale, week.delivery(3, 0), 100, 500);      // last good day 7: the day after
        Buying b = Buying.of(week.build(), new long[1][HandWeek.DAYS], new int[] {2, 3});
        assertThat(b.wastedMg()[kale]).isEqualTo(200);
        assertThat(b.keptMg()[kale]).isEqualTo(300);
    }

    @Test
    void twoOffersOfOneDay_areOneLot() {
        int kale = week.item(6);
        week.offer(kale, week.delivery(1, 0), 100, 500);
        week.offer(kale, week.delivery(1, 0), 50, 300);
        WeekProblem problem = week.build();
        Buying b = Buying.of(problem, need(problem, kale, 1, 150), new int[] {1, 1});
        assertThat(b.flows()).containsExactly(new Buying.Flow(kale, 1, -1, 1, 150));
    }

    @Test
    void needs_areNotChangedByCountingThem() {
        int kale = week.item(6);
        week.stock(kale, 0, 6, 100);
        WeekProblem problem = week.build();
        long[][] needs = need(problem, kale, 2, 70);
        assertThat(Buying.afterStock(problem, needs)[kale][2]).isZero();
        assertThat(Arrays.stream(needs[kale]).sum()).isEqualTo(70);
    }
}
