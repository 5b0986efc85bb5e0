package croftboard.paper.ahead;

import croftboard.book.Reply;
import croftboard.paper.Data;
import croftboard.plan.ahead.Notice;

/** A notice as the table that goes out and comes back: the last three columns are the grower's to fill. */
public final class NoticeTable {
    private NoticeTable() { }

    public static Data of(AheadContext context, Notice notice) {
        Data.Building rows = Data.of(Reply.COLUMNS.toArray(String[]::new));
        notice.rows().forEach(r -> rows.row(context.name(), notice.vendor(), r.item(), NoticeSheet.article(context, notice.vendor(), r),
                r.pack(), r.week(), r.low(), r.packs(), r.high(), r.firm(), r.hoped(), RotationTables.dollars(r.price()), "", "", ""));
        return rows.done();
    }
}
