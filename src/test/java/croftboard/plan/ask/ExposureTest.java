package croftboard.plan.ask;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ExposureTest {
    private static final Book BOOK = SamplePlan.book();
    private static final WeekPlan PLAN = MadePlan.of(BOOK, SamplePlan.WEEK);
    private static final Question QUESTION = new Question(BOOK, PLAN, Given.NOTHING, LocalDateTime.of(2027, 8, 1, 8, 0));
    private static final int RUNS = 40;

    private static ExposureRun run() {
        return new ExposureRun(QUESTION, 3, (done, of) -> { });
    }

    @Test
    void sameSeed_givesTheSame_anotherSeedAnother() {
        Exposure a = new ExposureAsked(List.of(QUESTION), 3).of(RUNS, share -> { });
        Exposure b = new ExposureAsked(List.of(QUESTION), 3).of(RUNS, share -> { });
        assertThat(b).isEqualTo(a);
        assertThat(new ExposureAsked(List.of(QUESTION), 4).of(RUNS, share -> { }).runs()).isNotEqualTo(a.runs());
    }

    @Test
    void vendorThatFails_bringsNothing_andEveryWeekIsComplete() {
        ExposureRun week = run();
        for (String vendor : BOOK.vendors().keySet()) {
            ExposureRun.Tried t = week.tried(week.yields().without(o -> o.vendor().equals(vendor)));
            assertThat(t.repaired().found().complete()).as(vendor).isTrue();
            for (int o = 0; o < t.repaired().found().packs().length; o++) {
                WeekProblem.Offer offer = week.problem().offers().get(o);
                assertThat(offer.vendor().equals(vendor) && t.repaired().found().packs()[o] > 0).isFalse();
            }
        }
    }

    @Test
    void dishesLost_areThoseThatTheRepairedMenuLacks() {
        ExposureRun week = run();
        for (int r = 0; r < RUNS; r++) {
            ExposureRun.Tried t = week.tried(week.yields().draw(9, r));
            for (int s = 0; s < week.menu().length; s++) {
                boolean lost = week.menu()[s] >= 0 && t.repaired().found().choice()[s] < 0;
                assertThat(t.repaired().dropped().contains(s)).isEqualTo(lost);
            }
        }
    }

    @Test
    void nothingFails_nothingIsLost() {
        assertThat(run().tried(Map.of()).repaired().dropped()).isEmpty();
    }

    /** The chances that docs/questions.md tells, within four standard errors of so many draws. */
    @Test
    void yields_comeAsOftenAsIsSaid() {
        Yields yields = run().yields();
        long drawn = 0;
        long whole = 0;
        long none = 0;
        for (int r = 0; r < 4_000; r++) {
            for (double share : yields.draw(1, r).values()) {
                drawn++;
                whole += share == 1 ? 1 : 0;
                none += share == 0 ? 1 : 0;
                assertThat(share == 0 || share == 1 || share >= .25 && share <= .75).isTrue();
            }
        }
        assertThat(whole / (double) drawn).isBetween(.845, .998);
        assertThat(none / (double) drawn).isBetween(.001, .042);
    }

    @Test
    void twoWeeksTogether_sumTheirRuns() {
        Exposure one = new ExposureAsked(List.of(QUESTION), 3).of(5, share -> { });
        Exposure two = new ExposureAsked(List.of(QUESTION, QUESTION), 3).of(5, share -> { });
        for (int r = 0; r < 5; r++) {
            assertThat(two.runs().get(r).margin()).isEqualTo(2 * one.runs().get(r).margin());
        }
        assertThat(two.vendors()).extracting(Exposure.Single::id).containsExactlyInAnyOrderElementsOf(
                one.vendors().stream().map(Exposure.Single::id).toList());
    }
}
