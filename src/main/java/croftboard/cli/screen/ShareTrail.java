package croftboard.cli.screen;

import croftboard.ledger.Receipt;
import croftboard.ledger.share.Counted;

/** Every receipt line behind the share; their sum is the food money, to the cent. */
public final class ShareTrail implements Screen {
    private final SharesShown shown;

    public ShareTrail(SharesShown shown) {
        this.shown = shown;
    }

    @Override
    public String name() {
        return "trail";
    }

    @Override
    public void print(Page page) {
        page.subheading("Every line, " + shown.asked().definition().id());
        page.say("Booked from: file, line, and the entry's number in the ledger. Miles are straight line.");
        TextTable table = new TextTable(TextTable.Column.mark("came"), TextTable.Column.words("food"),
                TextTable.Column.figure("paid"), TextTable.Column.words("counts as"),
                TextTable.Column.words("booked from"));
        for (Counted line : shown.asked().lines()) {
            Receipt r = line.receipt();
            table.row(r.date().toString(), food(r) + " from " + shown.names().vendor(r.vendor()), SharesShown.dollars(r.cents()),
                    LedgerShareScreen.answer(line) + ": " + line.why().replace(" straight line", ""), booked(r));
        }
        table.row("sum", "", SharesShown.dollars(shown.asked().all().total()), "", "");
        page.table(table);
    }

    private String food(Receipt r) {
        return r.item().map(shown.names()::item).orElse(r.words());
    }

    private static String booked(Receipt r) {
        return r.stamp().booking().name() + ":" + r.stamp().line() + " #" + r.stamp().id()
                + r.stamp().corrects().map(c -> ", corrects #" + c.entry() + ": " + c.why()).orElse("");
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("entry", "came", "vendor", "vendor_name", "item", "item_name", "words", "order", "packs", "paid_usd",
                "counts_as", "why", "near", "local_part", "grown", "made", "booked_from", "line", "booked_at", "corrects", "why_corrected",
                "definition");
        for (Counted line : shown.asked().lines()) {
            Receipt r = line.receipt();
            rows.add(r.stamp().id(), r.date(), r.vendor(), shown.names().vendor(r.vendor()), r.item(), food(r), r.words(), r.order(),
                    new java.math.BigDecimal(r.came().toString()), Rows.dollars(r.cents()), LedgerShareScreen.answer(line), line.why(),
                    line.near().toString(), r.origin().localPart().map(p -> p.toDecimal(4)),
                    croftboard.ledger.Origin.text(r.origin().grown()), croftboard.ledger.Origin.text(r.origin().made()),
                    r.stamp().booking().name(), r.stamp().line(), r.stamp().booking().at(),
                    r.stamp().corrects().map(croftboard.ledger.Stamp.Correction::entry),
                    r.stamp().corrects().map(croftboard.ledger.Stamp.Correction::why), shown.asked().definition().id());
        }
        return rows;
    }
}
