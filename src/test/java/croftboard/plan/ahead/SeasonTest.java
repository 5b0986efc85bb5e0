package croftboard.plan.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.cli.SampleRotation;
import croftboard.measure.WeekSpan;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeasonTest {
    private final Book book = SamplePlan.book();
    private final List<PlannedWeek> weeks = SampleRotation.of(book).weeks().stream().map(w -> new PlannedWeek(w.plan(), "sample")).toList();
    private final Season season = SeasonReading.of(book, WeekSpan.of(SamplePlan.WEEK, 3), weeks);

    /** Every milligram wanted is somebody's, nobody's twice, and no grower brings more than it counts on having. */
    @Test
    void demand_isSplit_toTheMilligram_withinWhatGrowersHave() {
        SeasonDemand demand = new SeasonDemand(book, new Expectation(book));
        assertThat(season.demands()).isNotEmpty();
        for (Season.Demand d : season.demands()) {
            assertThat(d.elsewhere()).isNotNegative();
            assertThat(d.growers().keySet().stream().mapToLong(d::of).sum() + d.elsewhere()).isEqualTo(d.all());
            assertThat(d.all()).isEqualTo(weeks.stream().mapToLong(w -> CropUse.wanted(w.plan()).getOrDefault(d.item(), 0L)).sum());
            d.growers().forEach((v, by) -> by.forEach((week, mg) -> assertThat(mg).isLessThanOrEqualTo(
                    demand.has(book.vendor(v), d.item(), week))));
        }
    }

    @Test
    void growersWhoNameTheCrop_comeFirst() {
        assertThat(new SeasonDemand(book, new Expectation(book)).inLine("carrot").get(0).id()).isEqualTo("hollow-brook");
    }

    @Test
    void weekWithoutAPlan_isSaid() {
        assertThat(season.open()).containsExactly(SamplePlan.WEEK.plusWeeks(2));
    }

    @Test
    void frozenForm_isOnlyWhatTheBookSaysIsOne() {
        var peas = book.ingredient("pea-frozen");
        assertThat(SeasonGaps.isFrozenOf(peas, book.ingredient("carrot"))).isFalse();
        assertThat(SeasonGaps.isFrozenOf(peas, peas)).isFalse();
    }
}
