package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.need.Account;

/** The money of all weeks as one. */
public final class RotationMoneyScreen implements Screen {
    private final RotationShown shown;

    public RotationMoneyScreen(RotationShown shown) {
        this.shown = shown;
    }

    @Override
    public String name() {
        return "money";
    }

    @Override
    public void print(Page page) {
        page.heading("Money of all weeks");
        Account account = shown.rotation().account();
        TextTable table = new TextTable(TextTable.Column.words("expected in all weeks"), TextTable.Column.figure("money"));
        MoneyScreen.lines(account, "value of the rotation").forEach((say, cents) -> table.row(say, new Cents(cents).toString()));
        page.table(table);
        page.say("Food costs " + new Cents(account.foodCost()) + " (orders, less surplus that keeps, and staples): "
                + MoneyScreen.share(account) + ".");
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("line", "money_usd");
        MoneyScreen.lines(shown.rotation().account(), "value of the rotation").forEach((say, c) -> rows.add(say, Rows.dollars(c)));
        return rows.add("food cost", Rows.dollars(shown.rotation().account().foodCost()));
    }
}
