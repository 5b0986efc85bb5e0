package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The expected local share against the season's target, with its definition, its range, and the money by vendor. */
public final class ShareScreen implements Screen {
    private final Shown shown;
    private final boolean why;

    public ShareScreen(Shown shown) {
        this(shown, true);
    }

    private ShareScreen(Shown shown, boolean why) {
        this.shown = shown;
        this.why = why;
    }

    /** Without the reason for every order line. */
    public static ShareScreen sumsOnly(Shown shown) {
        return new ShareScreen(shown, false);
    }

    /** Cents by how they count. */
    private static final class Money {
        private long local;
        private long not;
        private long unclassified;

        long total() {
            return local + not + unclassified;
        }

        void add(WeekPlan.OrderLine line) {
            if (line.locality() == WeekProblem.Locality.LOCAL) {
                local += line.cost();
            } else if (line.locality() == WeekProblem.Locality.NOT_LOCAL) {
                not += line.cost();
            } else {
                unclassified += line.cost();
            }
        }
    }

    @Override
    public String name() {
        return "share";
    }

    @Override
    public void print(Page page) {
        WeekPlan.Share share = shown.plan().share();
        page.heading("Expected local share");
        page.say("Local means: " + share.definition() + ".");
        page.say("Of " + new Cents(share.total()) + " for food, " + new Cents(share.local()) + " is local: "
                + percent(share.low()) + ", against a target of " + percent(share.target()) + ": "
                + (share.low().compareTo(share.target()) >= 0 ? "reached." : "not reached, "
                        + new Cents(share.target().times(share.total()).minus(Ratio.of(share.local())).ceil()) + " short."));
        if (share.unclassified() > 0) {
            page.say(new Cents(share.unclassified()) + " is not classified and counts as not local; were all of it local,"
                    + " the share would be " + percent(share.high()) + ".");
        }
        page.gap();
        TextTable table = new TextTable(TextTable.Column.words("vendor"), TextTable.Column.figure("local"),
                TextTable.Column.figure("not local"), TextTable.Column.figure("not classified"), TextTable.Column.figure("all"));
        byVendor().forEach((id, m) -> table.row(shown.names().vendor(id), new Cents(m.local).toString(),
                new Cents(m.not).toString(), new Cents(m.unclassified).toString(), new Cents(m.total()).toString()));
        table.row("all vendors", new Cents(share.local()).toString(), new Cents(share.notLocal()).toString(),
                new Cents(share.unclassified()).toString(), new Cents(share.total()).toString());
        page.table(table);
        if (why) {
            WeekProblem.Locality[] all = {WeekProblem.Locality.UNCLASSIFIED, WeekProblem.Locality.NOT_LOCAL,
                WeekProblem.Locality.LOCAL};
            for (WeekProblem.Locality locality : all) {
                reasons(page, locality);
            }
            page.gap();
        }
        page.say("Expected, from orders. The share that counts is the one on receipts.");
    }

    private Map<String, Money> byVendor() {
        Map<String, Money> all = new TreeMap<>();
        shown.plan().orders().forEach(o -> o.lines().forEach(
                l -> all.computeIfAbsent(o.vendor(), k -> new Money()).add(l)));
        return all;
    }

    private void reasons(Page page, WeekProblem.Locality locality) {
        Map<String, Long> reasons = new TreeMap<>();
        shown.plan().orders().forEach(o -> o.lines().stream().filter(l -> l.locality() == locality)
                .forEach(l -> reasons.merge(shown.names().item(l.item()) + " from " + shown.names().vendor(o.vendor()) + ": "
                        + l.whyLocal(), l.cost(), Long::sum)));
        if (!reasons.isEmpty()) {
            String words = OrdersScreen.locality(locality);
            page.subheading(words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ", and why");
            reasons.forEach((reason, cents) -> page.item("- ", reason + " (" + new Cents(cents) + ")"));
        }
    }

    static String percent(Ratio share) {
        return share.times(100).toDecimal(1) + " %";
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("vendor", "vendor_name", "local_usd", "not_local_usd", "not_classified_usd", "total_usd");
        byVendor().forEach((id, m) -> rows.add(id, shown.names().vendor(id), Rows.dollars(m.local), Rows.dollars(m.not),
                Rows.dollars(m.unclassified), Rows.dollars(m.total())));
        return rows;
    }
}
