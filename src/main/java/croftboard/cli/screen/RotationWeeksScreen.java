package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.plan.Rotation;
import croftboard.plan.WeekPlan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Week by week: sales, food, deliveries, promises kept, and which are broken. */
public final class RotationWeeksScreen implements Screen {
    private final RotationShown shown;

    public RotationWeeksScreen(RotationShown shown) {
        this.shown = shown;
    }

    @Override
    public String name() {
        return "weeks";
    }

    @Override
    public void print(Page page) {
        page.heading("Week by week");
        TextTable table = new TextTable(TextTable.Column.mark("week"), TextTable.Column.mark("from"),
                TextTable.Column.figure("dishes"), TextTable.Column.figure("sales"), TextTable.Column.figure("orders"),
                TextTable.Column.figure("deliveries"), TextTable.Column.figure("local, %"),
                TextTable.Column.figure("promises kept"));
        for (Rotation.Week week : shown.rotation().weeks()) {
            WeekPlan p = week.plan();
            table.row(p.week().toString(), Dates.day(p.week().monday()), Integer.toString(p.choices().size()),
                    new Cents(p.account().sales() + p.account().eventSales()).toString(),
                    new Cents(p.account().purchases()).toString(), Integer.toString(p.orders().size()),
                    percent(p.share().low()), Rotation.kept(p) + " of " + p.promises().size());
        }
        page.table(table);
        page.say("A week's orders are those that come in its seven days; the first week's hold the days before it as well. "
                + "What one week buys and another uses is counted once in the worth of the whole.");
        share(page);
        broken(page);
    }

    private void share(Page page) {
        WeekPlan.Share all = shown.rotation().share();
        if (all.target().signum() > 0) {
            page.say("Local food over all weeks: expected " + percent(all.low())
                    + (all.unclassified() > 0 ? " to " + percent(all.high()) : "") + " % of food money, promised "
                    + percent(all.target()) + " %. Only receipts tell the share.");
        }
    }

    private static String percent(Ratio share) {
        return share.times(100).toDecimal(1).toPlainString();
    }

    private void broken(Page page) {
        Map<String, long[]> broken = new LinkedHashMap<>();
        for (Rotation.Week week : shown.rotation().weeks()) {
            for (WeekPlan.Promise p : week.plan().promises()) {
                if (!p.kept()) {
                    long[] sum = broken.computeIfAbsent(p.say(), k -> new long[2]);
                    sum[0]++;
                    sum[1] += p.cents();
                }
            }
        }
        if (broken.isEmpty()) {
            page.say("Every promise of every week is kept.");
            return;
        }
        page.subheading("Promises broken, as each week counts them");
        TextTable table = new TextTable(TextTable.Column.words("promise"), TextTable.Column.figure("times"),
                TextTable.Column.figure("price"));
        broken.forEach((say, sum) -> table.row(say, Long.toString(sum[0]), new Cents(sum[1]).toString()));
        page.table(table);
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("week", "monday", "dishes", "sales_usd", "orders_usd", "deliveries", "local_share_low",
                "promises_kept", "promises", "complete");
        List<Rotation.Week> weeks = shown.rotation().weeks();
        weeks.forEach(w -> rows.add(w.week().toString(), w.week().monday(), w.plan().choices().size(),
                Rows.dollars(w.plan().account().sales() + w.plan().account().eventSales()),
                Rows.dollars(w.plan().account().purchases()), w.plan().orders().size(),
                w.plan().share().low().toDecimal(4), Rotation.kept(w.plan()),
                w.plan().promises().size(), w.plan().complete()));
        return rows;
    }
}
