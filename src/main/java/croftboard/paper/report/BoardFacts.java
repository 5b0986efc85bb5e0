package croftboard.paper.report;

import croftboard.ledger.Left;
import croftboard.ledger.Ledger;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.Waste;
import croftboard.ledger.share.DishSpread;
import croftboard.ledger.share.FoodCost;
import croftboard.ledger.share.MenuMix;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What the board's version has beside the members'.
 *
 * @param months whole calendar months of the span, also where the span begins or ends inside one
 * @param plans posted plans of the span's weeks. @param weeks of the span
 * @param mix dishes sold with a price for every ingredient. @param unpriced dishes left out of it
 */
public record BoardFacts(List<Month> months, List<Planned> plans, int weeks, Actual actual, MenuMix mix, List<String> unpriced) {
    /** @param wasteCents where it was told */
    public record Month(FoodCost cost, long wasteCents) { }

    /**
     * A posted plan and what came of its week. Cents.
     *
     * @param expected sales. @param taken by the register. @param minutes planned at the benches, all stations
     */
    public record Planned(IsoWeek week, long expected, long taken, long minutes) { }

    /** By the production sheets: rows of dishes on days. Portions in thousandths. */
    public record Actual(int rows, long planned1000, long sold1000, long left1000, int ranOut) { }

    /** What a posted plan says. */
    public record Posted(IsoWeek week, long expected, long minutes) { }

    /**
     * @param uses what a portion takes
     * @param otherwise cents a gram of what was not bought in these days
     */
    public static BoardFacts of(Ledger ledger, LocalDate from, LocalDate to, List<Posted> posted, DishSpread.Uses uses,
            Function<String, Optional<Ratio>> otherwise) {
        List<Month> months = new ArrayList<>();
        for (YearMonth m = YearMonth.from(from); !m.isAfter(YearMonth.from(to)); m = m.plusMonths(1)) {
            months.add(new Month(FoodCost.of(ledger, m), ledger.entries(Waste.class, m.atDay(1), m.atEndOfMonth()).stream()
                    .mapToLong(Waste::cents).sum()));
        }
        List<Sale> sales = ledger.entries(Sale.class, from, to).stream().filter(Sale::ours).toList();
        Map<IsoWeek, Long> taken = new TreeMap<>();
        sales.forEach(s -> taken.merge(IsoWeek.of(s.date()), s.cents(), Long::sum));
        List<Planned> plans = posted.stream().map(p -> new Planned(p.week, p.expected, taken.getOrDefault(p.week, 0L), p.minutes)).toList();
        int weeks = (int) (IsoWeek.of(to).monday().toEpochDay() - IsoWeek.of(from).monday().toEpochDay()) / 7 + 1;
        List<String> unpriced = new ArrayList<>();
        List<MenuMix.Sold> sold = sold(sales, prices(ledger.entries(Receipt.class, from, to)), otherwise, uses, unpriced);
        return new BoardFacts(months, plans, weeks, actual(ledger.entries(Left.class, from, to)), MenuMix.of(sold, MenuMix.USUAL), unpriced);
    }

    private static Actual actual(List<Left> rows) {
        long planned = 0;
        long sold = 0;
        long left = 0;
        int ranOut = 0;
        for (Left row : rows) {
            planned += Quantity.of(row.planned()).thousandths();
            sold += row.sold().orElse(Quantity.ZERO).thousandths();
            left += row.left().orElse(Quantity.ZERO).thousandths();
            ranOut += row.ranOut().isPresent() ? 1 : 0;
        }
        return new Actual(rows.size(), planned, sold, left, ranOut);
    }

    /** Cents a gram as purchased, averaged over what was bought. */
    private static Map<String, Ratio> prices(List<Receipt> receipts) {
        Map<String, long[]> sums = new TreeMap<>();
        receipts.stream().filter(r -> r.item().isPresent() && r.mg() > 0).forEach(r -> {
            long[] sum = sums.computeIfAbsent(r.item().orElseThrow(), k -> new long[2]);
            sum[0] += r.cents();
            sum[1] += r.mg();
        });
        Map<String, Ratio> prices = new TreeMap<>();
        sums.forEach((item, sum) -> prices.put(item, Ratio.of(sum[0], sum[1]).times(1000)));
        return prices;
    }

    private static List<MenuMix.Sold> sold(List<Sale> sales, Map<String, Ratio> paid,
            Function<String, Optional<Ratio>> otherwise, DishSpread.Uses uses, List<String> unpriced) {
        Map<String, Ratio> prices = new TreeMap<>(paid);
        Map<String, long[]> dishes = new TreeMap<>();
        sales.stream().filter(s -> s.dish().isPresent()).forEach(s -> {
            long[] sum = dishes.computeIfAbsent(s.dish().orElseThrow(), k -> new long[2]);
            sum[0] += s.units().thousandths();
            sum[1] += s.cents();
        });
        List<MenuMix.Sold> sold = new ArrayList<>();
        dishes.forEach((dish, sum) -> {
            Map<String, Ratio> grams = uses.perPortion(dish);
            grams.keySet().forEach(item -> otherwise.apply(item).ifPresent(price -> prices.putIfAbsent(item, price)));
            if (grams.isEmpty() || sum[0] <= 0 || !prices.keySet().containsAll(grams.keySet())) {
                unpriced.add(dish);
                return;
            }
            Ratio cost = grams.entrySet().stream().map(g -> g.getValue().times(prices.get(g.getKey()))).reduce(Ratio.ZERO, Ratio::plus);
            sold.add(new MenuMix.Sold(dish, sum[0], Ratio.of(sum[1], sum[0]).times(1000).minus(cost)));
        });
        return sold;
    }
}
