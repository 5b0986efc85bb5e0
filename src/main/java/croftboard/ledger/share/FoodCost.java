package croftboard.ledger.share;

import croftboard.ledger.Credit;
import croftboard.ledger.Ledger;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.StockCount;
import croftboard.ledger.Transfer;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * What the food that was sold in a month had cost: opening stock + purchases - credits received + transfers in - transfers out
 * - staff meals - closing stock. In cents.
 *
 * <p>The count that opens a month is the last one up to and on its first day; it closes the month before. Fees, deposits and
 * what is not food are in none of it.
 *
 * @param sales before tax, of this kitchen's dishes, matched or not
 */
public record FoodCost(YearMonth month, Optional<Stock> opening, long purchases, long credits, long transfersIn,
        long transfersOut, long staffMeals, Optional<Stock> closing, long sales) {

    /** @param unvalued lines that carry no money: not matched, or no price was known */
    public record Stock(LocalDate counted, long cents, int lines, int unvalued) { }

    public static FoodCost of(Ledger ledger, YearMonth month) {
        LocalDate from = month.atDay(1);
        LocalDate to = month.atEndOfMonth();
        Optional<Stock> opening = count(ledger, from);
        Optional<Stock> closing = count(ledger, to.plusDays(1)).filter(c -> c.counted.isAfter(from));
        return new FoodCost(month, opening,
                ledger.entries(Receipt.class, from, to).stream().filter(r -> r.kind() == Receipt.Kind.FOOD)
                        .mapToLong(Receipt::cents).sum(),
                ledger.entries(Credit.class, from, to).stream().filter(c -> c.step() == Credit.Step.RECEIVED)
                        .mapToLong(Credit::cents).sum(),
                moved(ledger, from, to, Transfer.Way.IN), moved(ledger, from, to, Transfer.Way.OUT),
                moved(ledger, from, to, Transfer.Way.STAFF_MEAL), closing,
                ledger.entries(Sale.class, from, to).stream().filter(Sale::ours).mapToLong(Sale::cents).sum());
    }

    private static long moved(Ledger ledger, LocalDate from, LocalDate to, Transfer.Way way) {
        return ledger.entries(Transfer.class, from, to).stream().filter(t -> t.way() == way).mapToLong(Transfer::cents).sum();
    }

    /** The last count up to and on {@code day}, at most a month old. */
    private static Optional<Stock> count(Ledger ledger, LocalDate day) {
        List<StockCount> counts = ledger.entries(StockCount.class, day.minusMonths(1), day);
        if (counts.isEmpty()) {
            return Optional.empty();
        }
        LocalDate last = counts.get(counts.size() - 1).date();
        List<StockCount> lines = counts.stream().filter(c -> c.date().equals(last)).toList();
        return Optional.of(new Stock(last, lines.stream().mapToLong(StockCount::cents).sum(), lines.size(),
                (int) lines.stream().filter(c -> c.cents() == 0).count()));
    }

    /** Empty while a count is missing. */
    public Optional<Long> cost() {
        return opening.flatMap(o -> closing.map(c -> o.cents + purchased() - c.cents));
    }

    /** Everything but the two counts. */
    public long purchased() {
        return purchases - credits + transfersIn - transfersOut - staffMeals;
    }

    /** Empty while a count or the sales are missing. */
    public Optional<Ratio> ofSales() {
        return sales > 0 ? cost().map(c -> Ratio.of(c, sales)) : Optional.empty();
    }

    /** Days between the count that closes the month and the month's end, when they are more than {@code most}. */
    public Optional<Stock> countedEarly(int most) {
        return closing.filter(c -> c.counted.isBefore(month.atEndOfMonth().minusDays(most)));
    }
}
