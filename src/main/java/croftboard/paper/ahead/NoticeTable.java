package croftboard.paper.ahead;

import croftboard.paper.Data;
import croftboard.plan.ahead.Notice;
import java.util.List;

/** A notice as the table that goes out and comes back: the last three columns are the grower's to fill. */
public final class NoticeTable {
    /** The same columns go out and come back. */
    public static final List<String> COLUMNS = List.of("rotation", "vendor", "item", "name", "pack", "week", "packs_low", "packs",
            "packs_high", "firm", "hoped", "price_assumed_usd", "have", "price_usd", "note");

    private NoticeTable() { }

    public static Data of(AheadContext context, Notice notice) {
        Data.Building rows = Data.of(COLUMNS.toArray(String[]::new));
        notice.rows().forEach(r -> rows.row(context.name(), notice.vendor(), r.item(), NoticeSheet.article(context, notice.vendor(), r),
                r.pack(), r.week(), r.low(), r.packs(), r.high(), r.firm(), r.hoped(), RotationTables.dollars(r.price()), "", "", ""));
        return rows.done();
    }
}
