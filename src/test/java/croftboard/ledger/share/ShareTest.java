package croftboard.ledger.share;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.LocalCheck.Answer;
import croftboard.book.LocalRules.Definition;
import croftboard.book.LocalRules;
import croftboard.book.Vendor.Whence;
import croftboard.book.Vendor;
import croftboard.ledger.Credit;
import croftboard.ledger.Origin;
import croftboard.ledger.Receipt;
import croftboard.ledger.Transfer;
import croftboard.ledger.file.PublishedDefinitions;
import croftboard.measure.Cents;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ShareTest {
    private static final Definition NEAR = new Definition("near", "near", Set.of("NY"), Optional.of(150), Ratio.of(1, 2));
    private final LedgerBuilder ledger = new LedgerBuilder();

    private Share share() {
        return share(Map.of());
    }

    private Share share(Map<String, Vendor> vendors) {
        return Share.of(Period.read(ledger.done(), LocalDate.of(2027, 8, 1), LocalDate.of(2027, 8, 31)), NEAR,
                LedgerBuilder.STORE, vendors);
    }

    @Test
    void money_isCountedByWhereFoodIsFrom_unknownApart() {
        ledger.food("2027-08-02", "hollow", "carrot", 4_100, LedgerBuilder.raw("NY", 21));
        ledger.food("2027-08-02", "big", "onion", 4_900, LedgerBuilder.raw("WA", 2200));
        ledger.food("2027-08-31", "big", "garlic", 1_000, Origin.UNKNOWN);
        ledger.food("2027-09-01", "big", "garlic", 7_777, Origin.UNKNOWN);
        Share share = share();
        assertThat(share.all()).isEqualTo(new Money(4_100, 4_900, 1_000, 0, 0, 0, 0));
        assertThat(share.all().share()).contains(Ratio.of(41, 100));
        assertThat(share.all().low()).contains(Ratio.of(41, 100));
        assertThat(share.all().high()).contains(Ratio.of(51, 100));
    }

    @Test
    void mixedFood_countsWhole_andWidensTheRangeByItsLocalPart() {
        ledger.food("2027-08-02", "mill", "bread", 1_000, LedgerBuilder.mixed("NY", 10, "0.6"));
        ledger.food("2027-08-02", "mill", "cake", 500, LedgerBuilder.mixed("NY", 10, "0.5"));
        ledger.food("2027-08-02", "big", "onion", 500, LedgerBuilder.raw("WA", 2200));
        Money all = share().all();
        assertThat(all).isEqualTo(new Money(1_000, 1_000, 0, 1_000, 600, 500, 250));
        assertThat(all.share()).contains(Ratio.of(1, 2));
        assertThat(all.low()).contains(Ratio.of(600, 2_000));
        assertThat(all.high()).contains(Ratio.of(1_250, 2_000));
    }

    @Test
    void whatIsNoFoodBought_standsInNeitherNumber_butInALineOfItsOwn() {
        long carrots = ledger.food("2027-08-02", "hollow", "carrot", 4_000, LedgerBuilder.raw("NY", 21));
        ledger.other("2027-08-02", Receipt.Kind.NOT_FOOD, 900);
        ledger.other("2027-08-02", Receipt.Kind.FEE, 100);
        ledger.other("2027-08-02", Receipt.Kind.DEPOSIT, 50);
        ledger.credit("2027-08-05", Credit.Step.ASKED, 700, Optional.of(carrots));
        ledger.credit("2027-08-09", Credit.Step.RECEIVED, 600, Optional.of(carrots));
        ledger.credit("2027-08-09", Credit.Step.RECEIVED, 30, Optional.empty());
        ledger.transfer("2027-08-09", Transfer.Way.IN, 300);
        ledger.transfer("2027-08-09", Transfer.Way.STAFF_MEAL, 200);
        Share share = share();
        assertThat(share.all()).isEqualTo(new Money(4_000, 0, 0, 0, 0, 0, 0));
        assertThat(share.asides()).containsExactly(new Aside(Aside.Kind.NOT_FOOD, 1, 900, Money.NONE),
                new Aside(Aside.Kind.FEE, 1, 100, Money.NONE), new Aside(Aside.Kind.DEPOSIT, 1, 50, Money.NONE),
                new Aside(Aside.Kind.CREDIT_RECEIVED, 2, 630, new Money(600, 0, 30, 0, 0, 0, 0)),
                new Aside(Aside.Kind.CREDIT_ASKED, 1, 700, Money.NONE), new Aside(Aside.Kind.TRANSFER_IN, 1, 300, Money.NONE),
                new Aside(Aside.Kind.STAFF_MEAL, 1, 200, Money.NONE));
    }

    /** The credit names the line as it was first booked; the line was corrected since. */
    @Test
    void creditOfACorrectedLine_countsAsTheLineDoesNow() {
        long first = ledger.food("2027-07-30", "hollow", "carrot", 4_000, Origin.UNKNOWN);
        ledger.corrected(first, "2027-07-30", "hollow", "carrot", 4_000, LedgerBuilder.raw("NY", 21));
        ledger.credit("2027-08-09", Credit.Step.RECEIVED, 600, Optional.of(first));
        assertThat(share().asides()).containsExactly(new Aside(Aside.Kind.CREDIT_RECEIVED, 1, 600, new Money(600, 0, 0, 0, 0, 0, 0)));
    }

    @Test
    void correctedLine_countsOnce_withdrawnLineNotAtAll() {
        long first = ledger.food("2027-08-02", "hollow", "carrot", 9_999, LedgerBuilder.raw("NY", 21));
        ledger.corrected(first, "2027-08-02", "hollow", "carrot", 4_000, LedgerBuilder.raw("NY", 21));
        ledger.withdrawn(ledger.food("2027-08-03", "hollow", "carrot", 5_555, LedgerBuilder.raw("NY", 21)), "2027-08-03");
        assertThat(share().all()).isEqualTo(new Money(4_000, 0, 0, 0, 0, 0, 0));
    }

    @Test
    void grownMadeAndSoldNearBy_areThreeFigures() {
        ledger.food("2027-08-02", "hollow", "carrot", 1, LedgerBuilder.raw("NY", 21));
        ledger.food("2027-08-02", "mill", "bread", 20, new Origin(LedgerBuilder.at("KS", 1200), LedgerBuilder.at("NY", 9), Optional.empty()));
        ledger.food("2027-08-02", "mill", "granola", 300, LedgerBuilder.mixed("NY", 9, "0.7"));
        ledger.food("2027-08-02", "corner", "orange", 4_000, LedgerBuilder.raw("FL", 1100));
        ledger.food("2027-08-02", "big", "orange", 50_000, LedgerBuilder.raw("FL", 1100));
        ledger.food("2027-08-02", "big", "garlic", 600_000, Origin.UNKNOWN);
        Share share = share(Map.of("corner", vendor("corner", "NY"), "big", vendor("big", "OH")));
        assertThat(share.near()).isEqualTo(Map.of(Near.GROWN, 1L, Near.MADE, 320L, Near.SOLD, 4_000L, Near.FAR, 50_000L,
                Near.UNKNOWN, 600_000L));
        assertThat(share.all().local()).as("bread of far flour is made here, not local").isEqualTo(301);
    }

    private static Vendor vendor(String id, String state) {
        Place place = ((Whence.At) LedgerBuilder.at(state, state.equals("NY") ? 12 : 600)).place();
        return new Vendor(id, id, Vendor.Kind.DISTRIBUTOR, place, List.of(), Cents.ZERO, Cents.ZERO, Optional.empty(), List.of(),
                List.of(), List.of());
    }

    @Test
    void unmatchedLine_countsByItsOrigin_andSaysSo() {
        ledger.food("2027-08-02", "hollow", "", 900, Origin.UNKNOWN);
        Counted line = share().lines().get(0);
        assertThat(line.answer()).isEqualTo(Answer.UNCLASSIFIED);
        assertThat(line.why()).startsWith("not matched to an ingredient");
    }

    @Test
    void noFoodBought_hasNoShare() {
        assertThat(share().all().share()).isEmpty();
    }

    @Test
    void definitions_inForceFirst_bookBeforePublished_noMeaningTwice() {
        LocalRules rules = new LocalRules("near", List.of(
                new Definition("ours", "our State, over 51 percent", Set.of("NY"), Optional.empty(), Ratio.of(51, 100)), NEAR));
        Definitions all = Definitions.of(Optional.of(rules), PublishedDefinitions.of("NY"));
        assertThat(all.all()).extracting(Definition::id).containsExactly("near", "ours", "state-or-400", "within-250", "within-150",
                "within-100", "state-majority");
        assertThat(Definitions.of(Optional.empty(), PublishedDefinitions.of("VT")).first().states()).containsExactly("VT");
    }
}
