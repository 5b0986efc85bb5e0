package croftboard.cli.screen;

import croftboard.ledger.share.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The share's money by vendor, crop, dish or month. */
public final class ShareGroups implements Screen {
    private final SharesShown shown;

    public ShareGroups(SharesShown shown) {
        this.shown = shown;
    }

    @Override
    public String name() {
        return "by";
    }

    private String by() {
        return shown.by().orElseThrow();
    }

    /** Months as they follow, everything else by money. */
    private List<Map.Entry<String, Money>> sorted() {
        List<Map.Entry<String, Money>> all = new ArrayList<>(shown.groups().entrySet());
        if (!by().equals("month")) {
            all.sort(Comparator.comparing((Map.Entry<String, Money> e) -> -e.getValue().total()).thenComparing(Map.Entry::getKey));
        }
        return all;
    }

    @Override
    public void print(Page page) {
        page.subheading("By " + by() + ", " + shown.asked().definition().id());
        if (by().equals("dish")) {
            page.say("What was paid for an ingredient, spread over the dishes sold by what their recipes take of it and the portions"
                    + " sold: a reckoning, not receipts.");
        }
        TextTable table = new TextTable(TextTable.Column.words(by()), TextTable.Column.figure("local"),
                TextTable.Column.figure("not local"), TextTable.Column.figure("not classified"), TextTable.Column.figure("all"),
                TextTable.Column.figure("share"));
        sorted().forEach(e -> row(table, shown.group(e.getKey()), e.getValue()));
        row(table, "all", shown.asked().all());
        page.table(table);
    }

    private static void row(TextTable table, String name, Money m) {
        table.row(name, SharesShown.dollars(m.local()), SharesShown.dollars(m.notLocal()), SharesShown.dollars(m.unclassified()),
                SharesShown.dollars(m.total()), SharesShown.percent(m.share()));
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows(by(), "name", "definition", "local_usd", "not_local_usd", "not_classified_usd", "total_usd", "share",
                "at_least", "at_most");
        sorted().forEach(e -> {
            Money m = e.getValue();
            rows.add(e.getKey(), shown.group(e.getKey()), shown.asked().definition().id(), Rows.dollars(m.local()),
                    Rows.dollars(m.notLocal()), Rows.dollars(m.unclassified()), Rows.dollars(m.total()),
                    m.share().map(r -> r.toDecimal(6)), m.low().map(r -> r.toDecimal(6)), m.high().map(r -> r.toDecimal(6)));
        });
        return rows;
    }
}
