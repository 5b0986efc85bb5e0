package croftboard.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.cli.SamplePlan;
import croftboard.plan.WeekPlan;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which orders come, from what was recorded of them. */
class OrderLifeTest {
    private static final OrderLife NOTHING = new OrderLife(List.of());
    private final WeekPlan plan = SamplePlan.complete(SamplePlan.book());
    private final WeekPlan.Order first = plan.orders().get(0);
    private final LocalDateTime after = first.cutOff().plusMinutes(1);

    private OrderLife.Step sent(WeekPlan.Order order, long total) {
        return new OrderLife.Step(order.vendor(), order.delivery(), OrderLife.State.SENT, 1, order.cutOff().minusHours(1), total,
                Optional.empty());
    }

    private WeekPlan changed(LocalDateTime at, String... sentences) {
        WeekPlan.Inputs i = plan.inputs();
        return new WeekPlan(plan.week(), plan.fingerprint(), new WeekPlan.Inputs(i.seed(), i.tries(), i.rounds(), i.nodes(), i.kept(), i.from(), i.gone(),
                Optional.of(new WeekPlan.Revision(1, at, List.of(sentences), new java.util.TreeMap<>(), List.of()))), plan.menu(),
                plan.batches(), plan.orders(), plan.needs(), plan.flows(), plan.surplus(), plan.account(),
                plan.promises(), plan.share(), plan.proof(), plan.missing(), plan.swaps());
    }

    @Test
    void draft_pastItsCutOff_isNotSent_notAMinuteEarlier() {
        assertThat(NOTHING.doubts(plan, false, after).notSent()).containsExactly(first);
        assertThat(NOTHING.doubts(plan, false, first.cutOff()).notSent()).isEmpty();
        assertThat(NOTHING.doubts(plan, false, first.cutOff().plusYears(1)).notSent()).isEqualTo(plan.orders());
    }

    @Test
    void posted_whereNothingOfTheWeekIsRecorded_isInDoubt_notLost() {
        assertThat(NOTHING.doubts(plan, true, after)).isEqualTo(new OrderLife.Doubts(List.of(), List.of(first), List.of()));
    }

    @Test
    void posted_whereOrdersAreRecorded_theOneThatIsNot_bringsNothing() {
        WeekPlan.Order other = plan.orders().get(plan.orders().size() - 1);
        assertThat(other).isNotEqualTo(first);
        assertThat(new OrderLife(List.of(sent(other, other.total()))).doubts(plan, true, after).notSent()).containsExactly(first);
        assertThat(new OrderLife(List.of(sent(first, first.total()))).doubts(plan, true, after)).isEqualTo(OrderLife.Doubts.NONE);
    }

    @Test
    void delivered_isNoDoubtAnyMore_inAPostedPlan() {
        LocalDateTime then = first.delivery().plusDays(1).atTime(7, 0);
        assertThat(NOTHING.doubts(plan, true, then).notRecorded()).doesNotContain(first);
    }

    @Test
    void changedAfterItWasSent_isToBeSentAgain_untilItIs() {
        OrderLife life = new OrderLife(List.of(sent(first, first.total() + 100)));
        assertThat(life.doubts(plan, true, after).changed()).containsExactly(first);
        assertThat(new OrderLife(List.of(sent(first, first.total() + 100), sent(first, first.total()))).doubts(plan, true, after)
                .changed()).isEmpty();
        assertThat(life.doubts(changed(after, "closed thu"), true, after.plusMinutes(1)).changed())
                .as("what came short after the cut-off is not told to the vendor").isEmpty();
    }

    @Test
    void draftOfAChange_ordersPastTheirCutOffThen_areThePostedPlans() {
        assertThat(NOTHING.doubts(changed(after, "closed thu"), false, after.plusMinutes(1)).notSent()).isEmpty();
    }

    @Test
    void late_isSentWhenItsFirstDayWasSent() {
        Map<Integer, String> days = Map.of(1, "mon", 2, "tue", 3, "wed", 4, "thu", 5, "fri", 6, "sat", 7, "sun");
        String until = days.get(first.delivery().getDayOfWeek().getValue());
        String was = days.get(first.delivery().minusDays(1).getDayOfWeek().getValue());
        OrderLife.Step step = new OrderLife.Step(first.vendor(), first.delivery().minusDays(1), OrderLife.State.SENT, 1,
                first.cutOff().minusHours(1), first.total(), Optional.empty());
        WeekPlan late = changed(after, first.vendor() + " late " + was + " until " + until);
        assertThat(new OrderLife(List.of(step)).doubts(late, true, after).notSent()).isEmpty();
        assertThat(new OrderLife(List.of(step)).doubts(plan, true, after).notSent()).containsExactly(first);
    }
}
