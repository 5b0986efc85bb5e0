package croftboard.ledger.share;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.Credit;
import croftboard.ledger.Origin;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.share.GrowerSeason.Row;
import croftboard.measure.IsoWeek;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class GrowerSeasonTest {
    private static final IsoWeek W33 = new IsoWeek(2027, 33);
    private final LedgerBuilder ledger = new LedgerBuilder();

    private long line(String day, String item, int ordered, int came, int rejected, long cents, Optional<String> insteadOf) {
        return ledger.add(new Receipt(ledger.next(), LocalDate.parse(day), "hollow", Optional.of("2027-W33/hollow/0816"),
                Receipt.Kind.FOOD, item, Optional.of(item), Optional.of("box"), Optional.of(Quantity.of(ordered)), Quantity.of(came),
                Quantity.of(rejected), came * 1_000L, 100, cents, insteadOf, OptionalInt.empty(), Origin.UNKNOWN, ""));
    }

    private GrowerSeason season() {
        return GrowerSeason.of(ledger.done(), "hollow", LocalDate.of(2027, 1, 1), LocalDate.of(2027, 12, 31));
    }

    private static Quantity q(long n) {
        return Quantity.of(n);
    }

    @Test
    void lines_addUpByCropAndWeek() {
        line("2027-08-16", "kale", 4, 3, 0, 300, Optional.empty());
        long second = line("2027-08-19", "kale", 4, 2, 1, 200, Optional.empty());
        line("2027-08-23", "kale", 2, 2, 0, 200, Optional.empty());
        ledger.credit("2027-08-25", Credit.Step.RECEIVED, 50, Optional.of(second));
        ledger.credit("2027-08-25", Credit.Step.RECEIVED, 7, Optional.empty());
        ledger.credit("2027-08-25", Credit.Step.ASKED, 900, Optional.of(second));
        ledger.other("2027-08-16", Receipt.Kind.FEE, 500);
        GrowerSeason season = season();
        assertThat(season.rows()).containsExactly(
                new Row("kale", "box", W33, q(8), q(5), q(0), q(2), q(1), 5_000, 500, 50),
                new Row("kale", "box", W33.plusWeeks(1), q(2), q(2), q(0), q(0), q(0), 2_000, 200, 0));
        assertThat(season.crops()).containsExactly(new Row("kale", "box", W33, q(10), q(7), q(0), q(2), q(1), 7_000, 700, 50));
        assertThat(season.paid()).isEqualTo(700 - 50 - 7);
        assertThat(season.besides()).isEqualTo(500);
    }

    @Test
    void whatCameInstead_leavesTheOrderWithTheCropThatWasOrdered() {
        line("2027-08-16", "chard", 4, 4, 0, 360, Optional.of("kale"));
        assertThat(season().rows()).containsExactly(
                new Row("chard", "box", W33, q(0), q(4), q(0), q(0), q(0), 4_000, 360, 0),
                new Row("kale", "", W33, q(4), q(0), q(4), q(0), q(0), 0, 0, 0));
    }

    @Test
    void otherVendorsLines_areNotHers() {
        ledger.food("2027-08-16", "big", "kale", 100, Origin.UNKNOWN);
        assertThat(season().rows()).isEmpty();
    }
}
