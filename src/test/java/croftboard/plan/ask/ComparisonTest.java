package croftboard.plan.ask;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SampleAnswers;
import croftboard.cli.SamplePlan;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private static final Book BOOK = SamplePlan.book();

    @Test
    void aPlanBesideItself_differsInNothing() {
        assertThat(Comparison.of(SamplePlan.complete(BOOK), SamplePlan.complete(BOOK)).nothing()).isTrue();
    }

    @Test
    void everyKindOfDifference_isTold_andNothingThatIsEqual() {
        Comparison c = Comparison.of(SamplePlan.complete(BOOK), SampleAnswers.other(BOOK));
        assertThat(c.orders()).extracting(Comparison.OrderDiffers::act).containsExactly(Comparison.Act.SEND_AGAIN,
                Comparison.Act.CANCEL, Comparison.Act.SEND);
        assertThat(c.orders().get(0).lines()).containsExactly(new Comparison.LineDiffers("lentil-brown", "25 lb bag", 2, 3));
        assertThat(c.dishes()).containsExactly(new Comparison.DishDiffers("tue/hot-main-1", Optional.of("penne-bake"), 46,
                Optional.of("lentil-bake"), 44));
        assertThat(c.prep()).extracting(Comparison.PrepDiffers::recipe).containsExactly("lentil-bake", "penne-bake");
        assertThat(c.promises()).extracting(Comparison.PromiseDiffers::day)
                .containsExactly(Optional.of(LocalDate.of(2027, 8, 16)));
        assertThat(c.money()).extracting(Comparison.MoneyDiffers::line).containsExactly("sales",
                "what left portions still bring", "orders", "staples used", "price of broken promises", "value of the plan");
    }

    /** Lines of the account are all that a plan is worth, so their differences sum to the difference of the values. */
    @Test
    void moneyThatDiffers_sumsToTheDifferenceOfTheValues() {
        for (long extra = 1; extra < 6; extra++) {
            WeekPlan a = MadePlan.of(BOOK, SamplePlan.WEEK);
            WeekPlan b = MadePlan.of(BOOK, SamplePlan.WEEK, croftboard.plan.Given.NOTHING, Optional.empty(),
                    java.util.Map.of(), extra);
            Comparison c = Comparison.of(a, b);
            long lines = c.money().stream().filter(m -> !m.line().startsWith("value"))
                    .mapToLong(m -> m.after() - m.before()).sum();
            assertThat(lines).isEqualTo(b.value() - a.value());
        }
    }

    @Test
    void turnedRound_sendsWhatWasCancelled() {
        Comparison there = Comparison.of(SamplePlan.complete(BOOK), SampleAnswers.other(BOOK));
        Comparison back = Comparison.of(SampleAnswers.other(BOOK), SamplePlan.complete(BOOK));
        assertThat(back.orders()).extracting(Comparison.OrderDiffers::act).containsExactly(Comparison.Act.SEND_AGAIN,
                Comparison.Act.SEND, Comparison.Act.CANCEL);
        assertThat(back.dishes()).hasSameSizeAs(there.dishes());
    }
}
