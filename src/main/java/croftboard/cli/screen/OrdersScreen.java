package croftboard.cli.screen;

import croftboard.book.Ingredient;
import croftboard.measure.Cents;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;

/** The orders, soonest cut-off first: vendor, cut-off, delivery, packs, money, minimum, local or not, what they rest on. */
public final class OrdersScreen implements Screen {
    private final Shown shown;
    private final Names names;

    public OrdersScreen(Shown shown) {
        this.shown = shown;
        this.names = shown.names();
    }

    @Override
    public String name() {
        return "orders";
    }

    @Override
    public void print(Page page) {
        page.heading("Orders");
        if (shown.plan().orders().isEmpty()) {
            page.say("Nothing is to be ordered.");
        }
        long money = 0;
        long fees = 0;
        for (WeekPlan.Order order : shown.plan().orders()) {
            order(page, order);
            money += order.total();
            fees += order.fee();
        }
        page.gap();
        page.say("All orders " + new Cents(money) + ", delivery fees " + new Cents(fees) + ", together "
                + new Cents(money + fees) + ".");
    }

    private void order(Page page, WeekPlan.Order order) {
        page.subheading(names.vendor(order.vendor()) + ": order by " + Dates.hour(order.cutOff()) + ", comes "
                + Dates.day(order.delivery()));
        if (order.cutOff().isBefore(shown.now())) {
            page.say("The cut-off is past: what was not sent in time does not come.");
        }
        TextTable table = new TextTable(TextTable.Column.words("item"), TextTable.Column.words("pack"),
                TextTable.Column.figure("packs"), TextTable.Column.figure("a pack"), TextTable.Column.figure("money"),
                TextTable.Column.mark("local?"), TextTable.Column.words("rests on"));
        for (WeekPlan.OrderLine l : order.lines()) {
            table.row(names.item(l.item()), l.pack(), Integer.toString(l.packs()), new Cents(l.price()).toString(),
                    new Cents(l.cost()).toString(), locality(l.locality()), restsOn(l));
        }
        page.table(table);
        page.say("Order " + new Cents(order.total()) + ". " + minimum(order)
                + (order.fee() > 0 ? " Delivery fee " + new Cents(order.fee()) + "." : ""));
    }

    private String restsOn(WeekPlan.OrderLine line) {
        Ingredient ingredient = shown.book().ingredients().get(line.item());
        String must = !line.promised() ? "" : ingredient != null && ingredient.isStaple() ? "; staple, back to par"
                : "; promised to take";
        return (line.onList() ? "this week's list" : "calendar") + must;
    }

    static String locality(WeekProblem.Locality locality) {
        return switch (locality) {
            case LOCAL -> "local";
            case NOT_LOCAL -> "not local";
            case UNCLASSIFIED -> "not classified";
        };
    }

    private static String minimum(WeekPlan.Order order) {
        if (order.minimum() == 0) {
            return "No minimum.";
        }
        long missing = order.toMinimum() - order.total();
        String words = "Minimum " + new Cents(order.minimum()) + ": ";
        return words + (missing > 0 ? new Cents(missing) + " short." : "met.");
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("vendor", "vendor_name", "cut_off", "delivery", "item", "item_name", "pack", "packs",
                "pack_price_usd", "cost_usd", "local", "why_local", "rests_on", "promised", "delivery_fee_usd");
        for (WeekPlan.Order o : shown.plan().orders()) {
            for (WeekPlan.OrderLine l : o.lines()) {
                rows.add(o.vendor(), names.vendor(o.vendor()), o.cutOff(), o.delivery(), l.item(), names.item(l.item()),
                        l.pack(), l.packs(), Rows.dollars(l.price()), Rows.dollars(l.cost()), locality(l.locality()),
                        l.whyLocal(), l.onList() ? "list" : "calendar", l.promised(), Rows.dollars(o.fee()));
            }
        }
        return rows;
    }
}
