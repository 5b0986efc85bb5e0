package croftboard.paper.ahead;

import croftboard.book.Vendor;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.paper.Block;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.When;
import croftboard.plan.ahead.Notice;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;

/** What a grower is told ahead, on paper: to talk over, with columns to write the answer in. */
public final class NoticeSheet {
    private NoticeSheet() { }

    public static Sheet of(AheadContext context, Notice notice) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Text("What " + context.book().kitchen().name() + " expects to want of you from " + span(context)
                + ". Weeks run from Monday to Sunday. " + explained()));
        blocks.add(table(context, notice));
        blocks.add(new Block.Text("All packs as planned come to " + new Cents(notice.cents()) + " at the prices assumed. This is a notice, no order: "
                + "orders follow week by week before your cut-off."));
        blocks.add(new Block.Heading(2, "Anything else we should know"));
        blocks.add(new Block.Blank(3));
        return new Sheet(SheetKind.NOTICE, id(context, notice), "Notice: " + context.called().vendor(notice.vendor()),
                List.of("Packs we expect to want, " + context.rotation().span()), blocks, NoticeTable.of(context, notice),
                Sheet.Look.PLAIN.wide());
    }

    static String explained() {
        return "Firm: we take these as long as you have them. Hoped: most likely on top of the firm ones. Range: nine weeks in ten we want"
                + " no fewer than the first number, nine in ten no more than the second.";
    }

    static String span(AheadContext context) {
        IsoWeek last = context.rotation().span().last();
        return When.full(context.rotation().span().first().monday()) + " to " + When.full(last.day(DayOfWeek.SUNDAY));
    }

    static String id(AheadContext context, Notice notice) {
        return "notice-" + notice.vendor();
    }

    private static Block table(AheadContext context, Notice notice) {
        List<Block.Row> rows = new ArrayList<>();
        String crop = "";
        for (List<Notice.Row> run : runs(notice)) {
            Notice.Row r = run.get(0);
            String name = article(context, notice.vendor(), r) + ", " + r.pack() + ", reckoned at " + new Cents(r.price()) + " a pack";
            if (!name.equals(crop)) {
                rows.add(Block.Row.group(name));
                crop = name;
            }
            rows.add(Block.Row.of(weeks(run), Integer.toString(r.packs()), range(r), Integer.toString(r.firm()), Integer.toString(r.hoped()), "",
                    "", ""));
        }
        return new Block.Table(List.of(Block.Column.words("Weeks", 30), Block.Column.figure("Packs\na week", 9), Block.Column.mark("Range", 9),
                Block.Column.figure("Firm", 8), Block.Column.figure("Hoped", 8), Block.Column.blank("You have", 12),
                Block.Column.blank("Your price", 12), Block.Column.blank("Note", 22)), rows);
    }

    static String range(Notice.Row r) {
        return r.low() == r.high() ? Integer.toString(r.low()) : r.low() + " to " + r.high();
    }

    /** Weeks in which the same is wanted, one after the other. */
    static List<List<Notice.Row>> runs(Notice notice) {
        List<List<Notice.Row>> runs = new ArrayList<>();
        for (Notice.Row r : notice.rows()) {
            List<Notice.Row> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (!last.isEmpty() && follows(last.get(last.size() - 1), r)) {
                last.add(r);
            } else {
                runs.add(new ArrayList<>(List.of(r)));
            }
        }
        return runs;
    }

    private static boolean follows(Notice.Row a, Notice.Row b) {
        return new Notice.Row(a.item(), a.pack(), a.week().plusWeeks(1), a.packs(), a.low(), a.high(), a.firm(), a.price()).equals(b);
    }

    /** {@code 6 Sep (W36)}, {@code 6 Sep to 26 Sep (W36 to W38)}. */
    static String weeks(List<Notice.Row> run) {
        IsoWeek first = run.get(0).week();
        IsoWeek last = run.get(run.size() - 1).week();
        return first.equals(last) ? day(first, DayOfWeek.MONDAY) + " to " + day(first, DayOfWeek.SUNDAY)
                : day(first, DayOfWeek.MONDAY) + " to " + day(last, DayOfWeek.SUNDAY) + ", each week";
    }

    private static String day(IsoWeek week, DayOfWeek day) {
        return When.day(week.day(day)).substring(4);
    }

    /** As the vendor calls it. */
    static String article(AheadContext context, String vendor, Notice.Row row) {
        Vendor seller = context.book().vendors().get(vendor);
        return seller == null ? context.called().item(row.item()) : seller.offers().stream()
                .filter(o -> o.item().equals(row.item()) && o.pack().equals(row.pack())).findFirst().flatMap(Vendor.Offer::as)
                .orElse(context.called().item(row.item()));
    }
}
