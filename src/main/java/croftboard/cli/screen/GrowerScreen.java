package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.ledger.share.GrowerSeason;
import croftboard.ledger.share.GrowerSeason.Row;
import croftboard.measure.CookAmounts;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;

/** One vendor's season for the talk in winter: by crop, then week by week. */
public final class GrowerScreen implements Screen {
    private final GrowerSeason season;
    private final Book book;
    private final Names names;

    public GrowerScreen(Book book, GrowerSeason season) {
        this.season = season;
        this.book = book;
        this.names = new Names(book);
    }

    @Override
    public String name() {
        return "grower-season";
    }

    @Override
    public void print(Page page) {
        page.heading(names.vendor(season.vendor()) + ", " + Dates.full(season.from()) + " to " + Dates.full(season.to()));
        if (season.rows().isEmpty()) {
            page.say("Nothing was received from this vendor in these days.");
            return;
        }
        page.say("Paid for food: " + SharesShown.dollars(season.paid()) + " (" + SharesShown.dollars(season.charged()) + " charged, "
                + SharesShown.dollars(season.charged() - season.paid()) + " credited).");
        if (season.besides() != 0) {
            page.say("Beside that, for fees, deposits and what is not food: " + SharesShown.dollars(season.besides()) + ".");
        }
        page.subheading("By crop, in packs");
        page.table(table(true));
        promises(page);
        page.subheading("Week by week, in packs");
        page.table(table(false));
        page.gap();
        page.say("Ordered: where an order is known. Short: ordered, and neither came nor was sent back. Instead: came as something else.");
    }

    private TextTable table(boolean crops) {
        TextTable table = new TextTable(TextTable.Column.words("crop"), TextTable.Column.words(crops ? "pack" : "week"),
                TextTable.Column.figure("ordered"), TextTable.Column.figure("came"), TextTable.Column.figure("short"),
                TextTable.Column.figure("instead"), TextTable.Column.figure("sent back"), TextTable.Column.figure("weight"),
                TextTable.Column.figure("paid"));
        for (Row r : crops ? season.crops() : season.rows()) {
            table.row(names.item(r.item()), crops ? r.pack() : r.week().toString(), r.ordered().toString(), r.came().toString(),
                    r.shorted().toString(), r.instead().toString(), r.rejected().toString(),
                    r.mg() == 0 ? "" : CookAmounts.mass(Ratio.of(r.mg(), 1000)), SharesShown.dollars(r.paid()));
        }
        return table;
    }

    /** What the book has promised to take, beside what was ordered. */
    private void promises(Page page) {
        Vendor vendor = book.vendors().get(season.vendor());
        if (vendor == null) {
            return;
        }
        Map<String, Long> promised = new TreeMap<>();
        for (IsoWeek w = IsoWeek.of(season.from()); w.compareTo(IsoWeek.of(season.to())) <= 0; w = w.plusWeeks(1)) {
            for (Vendor.Commitment c : vendor.commitments()) {
                if (c.weeks().holds(w)) {
                    promised.merge(c.item() + "\n" + c.pack(), (long) c.packs(), Long::sum);
                }
            }
        }
        promised.forEach((key, packs) -> {
            String[] parts = key.split("\n");
            String ordered = season.crops().stream().filter(r -> r.item().equals(parts[0]) && r.pack().equals(parts[1]))
                    .map(r -> r.ordered() + " ordered, " + r.came() + " came").findFirst().orElse("none ordered");
            page.item("- ", "We promised to take " + packs + " of " + names.item(parts[0]) + ", " + parts[1] + ", in these weeks: " + ordered
                    + ".");
        });
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("vendor", "item", "name", "pack", "week", "ordered", "came", "short", "instead", "sent_back", "grams",
                "charged_usd", "credited_usd", "paid_usd");
        season.rows().forEach(r -> rows.add(season.vendor(), r.item(), names.item(r.item()), r.pack(), r.week().toString(),
                new BigDecimal(r.ordered().toString()), new BigDecimal(r.came().toString()), new BigDecimal(r.shorted().toString()),
                new BigDecimal(r.instead().toString()), new BigDecimal(r.rejected().toString()), BigDecimal.valueOf(r.mg(), 3),
                Rows.dollars(r.charged()), Rows.dollars(r.credited()), Rows.dollars(r.paid())));
        return rows;
    }
}
