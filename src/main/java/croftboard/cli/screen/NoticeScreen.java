package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.plan.ahead.Notice;
import java.util.List;

/** What growers are told ahead: each vendor's packs by week. */
public final class NoticeScreen implements Screen {
    private final Names names;
    private final String rotation;
    private final List<Notice> notices;

    /** @param rotation its name with its version */
    public NoticeScreen(Book book, String rotation, List<Notice> notices) {
        this.names = new Names(book);
        this.rotation = rotation;
        this.notices = List.copyOf(notices);
    }

    @Override
    public String name() {
        return "notice";
    }

    @Override
    public void print(Page page) {
        for (Notice notice : notices) {
            page.heading(names.vendor(notice.vendor()) + ", " + rotation);
            TextTable table = new TextTable(TextTable.Column.words("crop"), TextTable.Column.words("pack"), TextTable.Column.mark("week"),
                    TextTable.Column.figure("packs"), TextTable.Column.figure("range"), TextTable.Column.figure("firm"),
                    TextTable.Column.figure("hoped"), TextTable.Column.figure("price"));
            String before = "";
            for (Notice.Row r : notice.rows()) {
                String here = r.item() + "/" + r.pack();
                boolean again = here.equals(before);
                table.row(again ? "" : names.item(r.item()), again ? "" : r.pack(), r.week().toString(), Integer.toString(r.packs()),
                        r.low() + " to " + r.high(), Integer.toString(r.firm()), Integer.toString(r.hoped()), new Cents(r.price()).toString());
                before = here;
            }
            page.table(table);
            page.say(notice.packs() + " packs in all, " + new Cents(notice.cents()) + " at the prices assumed.");
        }
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("vendor", "vendor_name", "item", "item_name", "pack", "week", "packs_low", "packs", "packs_high", "firm", "hoped",
                "price_assumed_usd");
        notices.forEach(n -> n.rows().forEach(r -> rows.add(n.vendor(), names.vendor(n.vendor()), r.item(), names.item(r.item()), r.pack(),
                r.week().toString(), r.low(), r.packs(), r.high(), r.firm(), r.hoped(), Rows.dollars(r.price()))));
        return rows;
    }
}
