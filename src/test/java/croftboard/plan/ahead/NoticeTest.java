package croftboard.plan.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.cli.SampleRotation;
import croftboard.measure.IsoWeek;
import croftboard.plan.Rotation;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoticeTest {
    private final Book book = SamplePlan.book();
    private final Rotation rotation = SampleRotation.of(book);
    private final List<Notice> notices = Notice.all(book, rotation);

    /** Nothing is told that is not ordered, and nothing that is ordered is left out: packs and money, vendor by vendor. */
    @Test
    void notices_holdTheRotationsOrders_packByPack() {
        for (Notice n : notices) {
            long packs = rotation.weeks().stream().flatMap(w -> w.plan().orders().stream()).filter(o -> o.vendor().equals(n.vendor()))
                    .flatMap(o -> o.lines().stream()).mapToLong(l -> l.packs()).sum();
            long cents = rotation.weeks().stream().flatMap(w -> w.plan().orders().stream()).filter(o -> o.vendor().equals(n.vendor()))
                    .mapToLong(o -> o.total()).sum();
            assertThat(n.packs()).isEqualTo((int) packs);
            assertThat(n.cents()).isEqualTo(cents);
        }
        assertThat(notices.stream().map(Notice::vendor)).containsExactly("hollow-brook", "mill-run-depot", "stone-creamery");
    }

    @Test
    void weeks_areThoseOfTheDeliveries() {
        Notice depot = notices.get(1);
        assertThat(depot.rows().stream().map(Notice.Row::week).distinct()).containsExactlyInAnyOrder(new IsoWeek(2027, 32), SamplePlan.WEEK);
    }

    @Test
    void range_holdsThePacks_andFirmIsPartOfThem() {
        for (Notice n : notices) {
            for (Notice.Row r : n.rows()) {
                assertThat(r.low()).isBetween(0, r.firm());
                assertThat(r.firm()).isLessThanOrEqualTo(r.packs());
                assertThat(r.high()).isGreaterThanOrEqualTo(r.packs());
                assertThat(r.firm() + r.hoped()).isEqualTo(r.packs());
            }
        }
    }

    /** The field's spread: a hoped crop spreads wider than a sure one; both together lie between. */
    @Test
    void yieldSpread_growsWithDoubt() {
        double sure = Spread.fieldSpread(new int[] {10, 0, 0});
        double likely = Spread.fieldSpread(new int[] {0, 10, 0});
        assertThat(sure).isLessThan(likely);
        assertThat(Spread.fieldSpread(new int[] {5, 5, 0})).isLessThan(likely);
        assertThat(Spread.low(new int[] {10, 0, 0}, 1.28)).isBetween(8.0, 10.0);
        assertThat(Spread.fieldSpread(new int[3])).isZero();
    }
}
