package croftboard.cli.screen;

import croftboard.book.Promises;
import croftboard.ledger.share.FoodCost;
import croftboard.measure.Ratio;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** What the food that was sold in a month had cost, line by line, against its sales. */
public final class FoodCostScreen implements Screen {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final int DAYS = 3;
    private final FoodCost cost;
    private final Optional<Promises.FoodCost> promise;

    /** @param promise of the book: at most this share of sales */
    public FoodCostScreen(FoodCost cost, Optional<Promises.FoodCost> promise) {
        this.cost = cost;
        this.promise = promise;
    }

    @Override
    public String name() {
        return "food-cost";
    }

    @Override
    public void print(Page page) {
        page.heading("Food cost, " + MONTH.format(cost.month()));
        TextTable table = new TextTable(TextTable.Column.words("what"), TextTable.Column.figure("money"));
        table.row("opening stock" + counted(cost.opening()), stock(cost.opening()));
        table.row("+ purchases of food", SharesShown.dollars(cost.purchases()));
        table.row("- credits received", SharesShown.dollars(cost.credits()));
        table.row("+ food from other departments", SharesShown.dollars(cost.transfersIn()));
        table.row("- food to other departments", SharesShown.dollars(cost.transfersOut()));
        table.row("- staff meals", SharesShown.dollars(cost.staffMeals()));
        table.row("- closing stock" + counted(cost.closing()), stock(cost.closing()));
        table.row("= food cost", cost.cost().map(SharesShown::dollars).orElse("not known"));
        table.row("sales, before tax", SharesShown.dollars(cost.sales()));
        table.row("food cost of sales", cost.ofSales().map(ShareScreen::percent).orElse("not known"));
        page.table(table);
        page.gap();
        promised(page);
        missing(page);
        page.say("Delivery fees, deposits and what is not food are in none of it; waste is in the cost.");
    }

    private static String counted(Optional<FoodCost.Stock> stock) {
        return stock.map(s -> ", counted " + Dates.full(s.counted()) + ", " + s.lines() + " lines").orElse(", not counted");
    }

    private static String stock(Optional<FoodCost.Stock> stock) {
        return stock.map(s -> SharesShown.dollars(s.cents())).orElse("not known");
    }

    private void promised(Page page) {
        if (promise.isPresent() && cost.ofSales().isPresent()) {
            Ratio most = promise.get().atMost();
            page.say("The book promises at most " + ShareScreen.percent(most) + ": "
                    + (cost.ofSales().get().compareTo(most) <= 0 ? "kept." : "over by " + SharesShown.dollars(cost.cost().orElseThrow()
                            - most.times(cost.sales()).floor()) + "."));
        }
    }

    private void missing(Page page) {
        if (cost.cost().isEmpty()) {
            page.say("Without a count at both ends there is no food cost -> book the count of "
                    + Dates.full(cost.opening().isEmpty() ? cost.month().atDay(1) : cost.month().atEndOfMonth())
                    + " with croftboard count." + (cost.sales() > 0 ? " What was bought is " + ShareScreen.percent(
                            Ratio.of(cost.purchased(), cost.sales())) + " of sales; that is not the same thing." : ""));
        }
        if (cost.sales() <= 0) {
            page.say("No sales are booked for this month -> croftboard sold FILE.");
        }
        cost.countedEarly(DAYS).ifPresent(s -> page.say("The closing count is of " + Dates.full(s.counted()) + ": what was bought and used"
                + " since is counted as used this month."));
        int unvalued = cost.opening().map(FoodCost.Stock::unvalued).orElse(0) + cost.closing().map(FoodCost.Stock::unvalued).orElse(0);
        if (unvalued > 0) {
            page.say(unvalued + (unvalued == 1 ? " line" : " lines") + " of the counts carry no money: not matched, or no price known.");
        }
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("month", "opening_counted", "opening_usd", "purchases_usd", "credits_usd", "transfers_in_usd",
                "transfers_out_usd", "staff_meals_usd", "closing_counted", "closing_usd", "food_cost_usd", "sales_usd", "food_cost_share");
        return rows.add(cost.month().toString(), cost.opening().map(FoodCost.Stock::counted), cost.opening().map(s -> Rows.dollars(s.cents())),
                Rows.dollars(cost.purchases()), Rows.dollars(cost.credits()), Rows.dollars(cost.transfersIn()),
                Rows.dollars(cost.transfersOut()), Rows.dollars(cost.staffMeals()), cost.closing().map(FoodCost.Stock::counted),
                cost.closing().map(s -> Rows.dollars(s.cents())), cost.cost().map(Rows::dollars), Rows.dollars(cost.sales()),
                cost.ofSales().map(r -> r.toDecimal(6)));
    }
}
