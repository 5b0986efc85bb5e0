package croftboard.ledger.share;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.Credit;
import croftboard.ledger.Origin;
import croftboard.ledger.Receipt;
import croftboard.ledger.Transfer;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FoodCostTest {
    private static final YearMonth AUGUST = YearMonth.of(2027, 8);
    private final LedgerBuilder ledger = new LedgerBuilder();

    private FoodCost cost() {
        return FoodCost.of(ledger.done(), AUGUST);
    }

    @Test
    void count_closesOneMonthAndOpensTheNext() {
        ledger.count("2027-07-31", "flour", 1_000);
        ledger.count("2027-09-01", "flour", 700);
        ledger.count("2027-09-01", "oil", 0);
        ledger.food("2027-08-10", "big", "flour", 500, Origin.UNKNOWN);
        ledger.sale("2027-08-10", "", 4, 2_000);
        assertThat(cost().opening()).contains(new FoodCost.Stock(LocalDate.of(2027, 7, 31), 1_000, 1, 0));
        assertThat(cost().closing()).contains(new FoodCost.Stock(LocalDate.of(2027, 9, 1), 700, 2, 1));
        assertThat(cost().cost()).contains(800L);
        assertThat(FoodCost.of(ledger.done(), AUGUST.plusMonths(1)).opening()).isEqualTo(cost().closing());
    }

    @Test
    void everyKindOfMoney_goesItsWay() {
        ledger.count("2027-08-01", "flour", 10_000);
        ledger.count("2027-08-31", "flour", 9_000);
        ledger.food("2027-08-31", "big", "flour", 5_000, Origin.UNKNOWN);
        ledger.other("2027-08-10", Receipt.Kind.FEE, 70_000);
        ledger.credit("2027-08-10", Credit.Step.RECEIVED, 400, Optional.empty());
        ledger.credit("2027-08-10", Credit.Step.ASKED, 80_000, Optional.empty());
        ledger.transfer("2027-08-10", Transfer.Way.IN, 300);
        ledger.transfer("2027-08-10", Transfer.Way.OUT, 200);
        ledger.transfer("2027-08-10", Transfer.Way.STAFF_MEAL, 100);
        assertThat(cost().cost()).contains(10_000L + 5_000 - 400 + 300 - 200 - 100 - 9_000);
        assertThat(cost().ofSales()).as("nothing was sold").isEmpty();
    }

    @Test
    void missingCount_leavesTheCostOpen() {
        ledger.count("2027-08-01", "flour", 10_000);
        ledger.sale("2027-08-10", "soup", 4, 2_000);
        assertThat(cost().closing()).as("one count does not open and close").isEmpty();
        assertThat(cost().cost()).isEmpty();
    }

    @Test
    void countLongBeforeTheMonthsEnd_isTold() {
        ledger.count("2027-08-01", "flour", 10_000);
        ledger.count("2027-08-20", "flour", 9_000);
        assertThat(cost().countedEarly(3)).isPresent();
        assertThat(cost().countedEarly(11)).isEmpty();
    }
}
