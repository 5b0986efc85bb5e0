package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.LocalCheck.Answer;
import croftboard.book.LocalRules.Definition;
import croftboard.ledger.Origin;
import croftboard.ledger.Transfer;
import croftboard.ledger.file.PublishedDefinitions;
import croftboard.ledger.share.FoodCost;
import croftboard.ledger.share.LedgerBuilder;
import croftboard.ledger.share.Period;
import croftboard.ledger.share.Share;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares and food cost of the ledger against published figures and the words of the law. */
class LedgerShareOutsideTest {
    private static final LocalDate DAY = LocalDate.of(2022, 6, 1);

    private static Definition published(String id, String state) {
        return PublishedDefinitions.of(state).stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
    }

    private static Answer answer(Definition definition, Origin origin) {
        LedgerBuilder ledger = new LedgerBuilder();
        ledger.food(DAY.toString(), "v", "food", 100, origin);
        return share(ledger, definition).lines().get(0).answer();
    }

    private static Share share(LedgerBuilder ledger, Definition definition) {
        return Share.of(Period.read(ledger.done(), DAY, DAY), definition, LedgerBuilder.STORE, Map.of());
    }

    /** New England Local Food Count 2022: $3.7 bn of $120.5 bn is told as 3.1 percent (3.07). */
    @Test
    void threePointSevenOf120Point5_is3Point1Percent() {
        LedgerBuilder ledger = new LedgerBuilder();
        ledger.food(DAY.toString(), "farms", "food", 370_000_000_000L, LedgerBuilder.raw("NY", 20));
        ledger.food(DAY.toString(), "others", "food", 11_680_000_000_000L, LedgerBuilder.raw("CA", 2300));
        var share = share(ledger, published("state-majority", "NY")).all().share().orElseThrow();
        assertThat(share.times(100).toDecimal(1)).isEqualByComparingTo("3.1");
        assertThat(share.times(100).toDecimal(2)).isEqualByComparingTo("3.07");
    }

    /**
     * 7 U.S.C. 1932(g)(9)(A)(i): transported less than 400 miles, or in the State of origin. 400 itself is not local, and a
     * straight line of nearly 400 is a longer road: neither is ever counted as local.
     */
    @ParameterizedTest(name = "{0} at {1} miles: {2}")
    @CsvSource({"PA, 359, LOCAL", "PA, 399.9, UNCLASSIFIED", "PA, 400, UNCLASSIFIED", "PA, 441, NOT_LOCAL", "NY, 399.9, LOCAL",
        "NY, 400, LOCAL", "NY, 441, LOCAL", "NY, 900, LOCAL"})
    void farmBill_400MilesOrTheSameState(String state, double miles, Answer expected) {
        assertThat(answer(published("state-or-400", "NY"), LedgerBuilder.raw(state, miles))).isEqualTo(expected);
    }

    /** 9 V.S.A. 2465a: more than 50 percent of ingredients, and processed there; half is no majority. */
    @ParameterizedTest(name = "{0} of ingredients, made in {1}: {2}")
    @CsvSource({"0.50, VT, NOT_LOCAL", "0.500001, VT, LOCAL", "0.49, VT, NOT_LOCAL", "0.9, NH, NOT_LOCAL"})
    void vermont_majorityOfIngredients(String part, String madeIn, Answer expected) {
        assertThat(answer(published("state-majority", "VT"), LedgerBuilder.mixed(madeIn, 5, part))).isEqualTo(expected);
    }

    /** New York's 30 percent rule for school lunch: over 51 percent of raw materials; 51 is not over 51. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"0.51, NOT_LOCAL", "0.5101, LOCAL"})
    void newYork_over51Percent(String part, Answer expected) {
        assertThat(answer(published("state-over-51", "NY"), LedgerBuilder.mixed("NY", 5, part))).isEqualTo(expected);
    }

    /** Limits in use (trade.md 5; standards.md 3.1): each holds at nine tenths and fails at eleven tenths of itself, out of State or in. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"within-250, 250", "within-150, 150", "within-100, 100"})
    void miles_doNotAskForTheState(String id, int miles) {
        for (String state : new String[] {"NY", "PA"}) {
            assertThat(answer(published(id, "NY"), LedgerBuilder.raw(state, miles * 0.89))).isEqualTo(Answer.LOCAL);
            assertThat(answer(published(id, "NY"), LedgerBuilder.raw(state, miles * 1.11))).isEqualTo(Answer.NOT_LOCAL);
        }
    }

    /**
     * Food cost's published example (trade.md B1, [FC2]): opening 24,000, purchases 21,000, closing 18,000, staff meals 5,000,
     * transfers out 2,000, in 2,500, sales 75,000: 22,500, which is 30.0 percent by our own reckoning.
     */
    @Test
    void foodCost_withTransfersAndStaffMeals() {
        LedgerBuilder ledger = new LedgerBuilder();
        ledger.count("2022-06-01", "stock", 2_400_000);
        ledger.food("2022-06-10", "v", "food", 2_100_000, Origin.UNKNOWN);
        ledger.transfer("2022-06-10", Transfer.Way.STAFF_MEAL, 500_000);
        ledger.transfer("2022-06-10", Transfer.Way.OUT, 200_000);
        ledger.transfer("2022-06-10", Transfer.Way.IN, 250_000);
        ledger.sale("2022-06-10", "soup", 1, 7_500_000);
        ledger.count("2022-06-30", "stock", 1_800_000);
        FoodCost cost = FoodCost.of(ledger.done(), YearMonth.of(2022, 6));
        assertThat(cost.cost()).contains(2_250_000L);
        assertThat(cost.ofSales().orElseThrow().times(100).toDecimal(1)).isEqualByComparingTo("30.0");
    }

    /** Food cost's first published example (trade.md B1, [FC1]): 5,500 of 13,700 is told as 40 percent (40.1). */
    @Test
    void foodCost_5500Of13700_is40Percent() {
        LedgerBuilder ledger = new LedgerBuilder();
        ledger.count("2022-06-01", "stock", 0);
        ledger.food("2022-06-10", "v", "food", 550_000, Origin.UNKNOWN);
        ledger.sale("2022-06-10", "soup", 1, 1_370_000);
        ledger.count("2022-06-30", "stock", 0);
        assertThat(FoodCost.of(ledger.done(), YearMonth.of(2022, 6)).ofSales().orElseThrow().times(100).toDecimal(1))
                .isEqualByComparingTo("40.1");
    }
}
