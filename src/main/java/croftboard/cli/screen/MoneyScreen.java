package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The money of the week, line by line, down to the one number by which plans are compared. */
public final class MoneyScreen implements Screen {
    private static final int BRIEF = 8;
    private final Shown shown;
    private final boolean brief;
    private final Account account;

    public MoneyScreen(Shown shown) {
        this(shown, false);
    }

    private MoneyScreen(Shown shown, boolean brief) {
        this.shown = shown;
        this.brief = brief;
        this.account = shown.plan().account();
    }

    /** The same with only the dearest of what is left over and keeps. */
    public static MoneyScreen brief(Shown shown) {
        return new MoneyScreen(shown, true);
    }

    @Override
    public String name() {
        return "money";
    }

    @Override
    public void print(Page page) {
        page.heading("Money");
        TextTable table = new TextTable(TextTable.Column.words("expected in the week"), TextTable.Column.figure("money"));
        lines(account, "value of the plan").forEach((say, cents) -> table.row(say, new Cents(cents).toString()));
        page.table(table);
        page.say("Food costs " + new Cents(account.foodCost()) + " (orders, less surplus that keeps, and staples): "
                + share(account) + ".");
        surplus(page);
    }

    /** @param value words for the one number */
    static Map<String, Long> lines(Account account, String value) {
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
        lines.put(value, account.value());
        return lines;
    }

    static String share(Account account) {
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
        List<WeekPlan.Surplus> rows = shown.plan().surplus();
        List<WeekPlan.Surplus> others = rows.stream().filter(s -> s.wastedMg() == 0)
                .sorted(Comparator.comparingLong(WeekPlan.Surplus::keptCents).reversed()).skip(brief ? BRIEF : rows.size())
                .toList();
        for (WeekPlan.Surplus s : rows) {
            if (others.contains(s)) {
                continue;
            }
            table.row(shown.names().item(s.item()), mass(s.keptMg()), money(s.keptMg(), s.keptCents()),
                    mass(s.wastedMg()), money(s.wastedMg(), s.wasteCents()));
        }
        page.table(table);
        if (!others.isEmpty()) {
            long rest = others.stream().mapToLong(WeekPlan.Surplus::keptCents).sum();
            page.say("And " + others.size() + " more that keep, worth " + new Cents(rest) + ": croftboard show "
                    + shown.plan().week() + " money.");
        }
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
        lines(account, "value of the plan").forEach((say, cents) -> rows.add(say, Rows.dollars(cents)));
        return rows.add("food cost", Rows.dollars(account.foodCost()));
    }
}
