package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.plan.ask.Worth;

/** What one more of each scarce thing would be worth, most first. */
public final class WorthScreen implements Screen {
    private static final int HOUR = 60;
    private static final int MOST = 8;
    private final Names names;
    private final String plan;
    private final Worth worth;

    public WorthScreen(Book book, String plan, Worth worth) {
        this.names = new Names(book);
        this.plan = plan;
        this.worth = worth;
    }

    @Override
    public String name() {
        return "worth";
    }

    @Override
    public void print(Page page) {
        page.heading("What one more would be worth, " + plan);
        page.say("The plan is worth " + new Cents(worth.value()) + ". It uses " + worth.looked() + " things up to their limit or nearly, "
                + "dishes that might stand on one more line among them; these would be worth most.");
        TextTable table = new TextTable(TextTable.Column.words("one more"), TextTable.Column.figure("is worth"),
                TextTable.Column.words("and holds"), TextTable.Column.words("by"));
        worth.things().stream().filter(t -> t.cents() > 0).forEach(t -> table.row(what(t.what()), new Cents(t.cents()).toString(),
                holds(t), t.otherMenu() ? "other dishes" : "orders and overtime"));
        if (table.isEmpty()) {
            page.say("None of them would be worth anything.");
        } else {
            page.table(table);
        }
        page.say(worth.exact() ? "Every menu was tried: this is what they are worth." : "Found by planning again, with the menu as it is "
                + "and with short searches of others; a longer search may find more.");
        page.say("Before what it costs: more packs are paid for in this figure, more hands and equipment are not.");
        if (worth.betterAnyway() > 0) {
            page.say("The same searches found a week worth " + new Cents(worth.betterAnyway()) + " more without any of this; that is "
                    + "taken off the figures.");
        }
    }

    private static String holds(Worth.Thing t) {
        if (t.what() instanceof Worth.Line) {
            return "-";
        }
        return t.minutes() < HOUR ? "its first " + t.minutes() + " min bring it" : t.upTo() == 1 ? "for one" : t.upTo() >= MOST
                ? "for " + MOST + ", perhaps more" : "for " + t.upTo();
    }

    private String what(Worth.Scarce s) {
        if (s instanceof Worth.Pack p) {
            return names.item(p.item()) + ", " + p.pack() + ", from " + names.vendor(p.vendor()) + " on " + Dates.day(p.delivery())
                    + " (all " + p.limit() + " ordered)";
        }
        if (s instanceof Worth.Hour h) {
            return "hour at " + h.station() + " on " + Dates.day(h.day());
        }
        if (s instanceof Worth.Unit u) {
            return "unit of " + u.equipment() + u.day().map(d -> " on " + Dates.day(d)).orElse(" in the week");
        }
        Worth.Line l = (Worth.Line) s;
        return names.recipe(l.recipe()) + " allowed on " + names.line(l.line());
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("one_more", "worth_usd", "holds_for", "minutes_of_an_hour", "other_menu");
        worth.things().forEach(t -> rows.add(what(t.what()), Rows.dollars(t.cents()), t.upTo(), t.minutes(), t.otherMenu()));
        return rows;
    }
}
