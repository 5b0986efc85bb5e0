package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import java.util.LinkedHashMap;
import java.util.Map;

/** The money of the week, line by line, down to the one number by which plans are compared. */
public final class MoneyScreen implements Screen {
    private final Shown shown;
    private final Account account;

    public MoneyScreen(Shown shown) {
        this.shown = shown;
        this.account = shown.plan().account();
    }

    @Override
    public String name() {
        return "money";
    }

    @Override
    public void print(Page page) {
        page.heading("Money");
        TextTable table = new TextTable(TextTable.Column.words("expected in the week"), TextTable.Column.figure("money"));
        lines().forEach((say, cents) -> table.row(say, new Cents(cents).toString()));
        page.table(table);
        page.say("Food costs " + new Cents(account.foodCost()) + " (orders, less surplus that keeps, and staples): "
                + share() + ".");
        surplus(page);
    }

    private Map<String, Long> lines() {
        Map<String, Long> lines = new LinkedHashMap<>();
        lines.put("sales from the case", account.sales());
        lines.put("events, by the head", account.eventSales());
        lines.put("what left portions still bring", account.left());
        lines.put("orders", -account.purchases());
        lines.put("worth of surplus that keeps", account.kept());
        lines.put("staples used", -account.staples());
        lines.put("waste thrown away", -account.waste());
        lines.put("delivery fees", -account.fees());
        lines.put("overtime", -account.overtime());
        lines.put("margin", account.value() + account.brokenCents());
        lines.put("price of broken promises", -account.brokenCents());
        lines.put("value of the plan", account.value());
        return lines;
    }

    private String share() {
        long sales = account.sales() + account.eventSales();
        return sales == 0 ? "no sales are expected"
                : Ratio.of(account.foodCost()).times(100).over(sales).toDecimal(1) + " % of sales";
    }

    private void surplus(Page page) {
        if (shown.plan().surplus().isEmpty()) {
            return;
        }
        page.subheading("Left over from the orders");
        TextTable table = new TextTable(TextTable.Column.words("item"), TextTable.Column.figure("keeps"),
                TextTable.Column.figure("worth"), TextTable.Column.figure("does not keep"), TextTable.Column.figure("costs"));
        for (WeekPlan.Surplus s : shown.plan().surplus()) {
            table.row(shown.names().item(s.item()), mass(s.keptMg()), money(s.keptMg(), s.keptCents()),
                    mass(s.wastedMg()), money(s.wastedMg(), s.wasteCents()));
        }
        page.table(table);
    }

    private static String money(long mg, long cents) {
        return mg == 0 ? "-" : new Cents(cents).toString();
    }

    private static String mass(long mg) {
        return mg == 0 ? "-" : CookAmounts.mass(Ratio.of(mg, 1000));
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("line", "money_usd");
        lines().forEach((say, cents) -> rows.add(say, Rows.dollars(cents)));
        return rows.add("food cost", Rows.dollars(account.foodCost()));
    }
}
