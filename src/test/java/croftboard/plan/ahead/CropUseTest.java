package croftboard.plan.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.cli.SampleRotation;
import croftboard.plan.Rotation;
import croftboard.plan.WeekPlan;
import java.util.List;
import org.junit.jupiter.api.Test;

class CropUseTest {
    private final Book book = SamplePlan.book();
    private final List<WeekPlan> plans = SampleRotation.of(book).weeks().stream().map(Rotation.Week::plan).toList();
    private final CropUse use = CropUse.of(book, plans);

    @Test
    void wanted_isTheNeedsOfTheWeek() {
        CropUse.Crop carrot = use.crops().get(0);
        assertThat(carrot.item()).isEqualTo("carrot");
        assertThat(carrot.by().get(SamplePlan.WEEK).wanted()).isEqualTo(30_000_000);
        assertThat(carrot.by().get(SamplePlan.WEEK.plusWeeks(1)).wanted()).isEqualTo(15_000_000);
        assertThat(carrot.by().get(SamplePlan.WEEK).bought()).isEqualTo(4 * 11_339_809L);
    }

    /** The list of that week says what there is; a week without one has what the calendar expects. */
    @Test
    void expected_isTheListsWhereThereIsOne_elseTheCalendars() {
        Expectation farms = new Expectation(book);
        var vendor = book.vendor("hollow-brook");
        var carrot = vendor.offers().stream().filter(o -> o.item().equals("carrot") && o.pack().equals("25 lb sack")).findFirst().orElseThrow();
        int listed = book.lists().get(SamplePlan.WEEK).stream().filter(r -> r.vendor().equals("hollow-brook") && r.item().equals("carrot")
                && r.pack().equals("25 lb sack")).filter(r -> croftboard.measure.IsoWeek.of(r.delivery()).equals(SamplePlan.WEEK))
                .mapToInt(r -> r.packs()).sum();
        assertThat(farms.packs(vendor, carrot, SamplePlan.WEEK)[0]).isEqualTo(listed);
        int[] calendar = farms.packs(vendor, carrot, SamplePlan.WEEK.plusWeeks(1));
        int each = carrot.weeks().stream().filter(e -> e.weeks().holds(SamplePlan.WEEK.plusWeeks(1))).mapToInt(e -> e.packs()).sum();
        assertThat(calendar[0] + calendar[1] + calendar[2])
                .isEqualTo(each * farms.deliveries(vendor, carrot, SamplePlan.WEEK.plusWeeks(1)).size());
    }
}
