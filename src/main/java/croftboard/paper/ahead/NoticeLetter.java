package croftboard.paper.ahead;

import croftboard.book.Vendor;
import croftboard.measure.Cents;
import croftboard.plan.ahead.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A notice in plain sentences: subject and body of an e-mail, or what is read aloud on the telephone. */
public final class NoticeLetter {
    private NoticeLetter() { }

    public static String of(AheadContext context, Notice notice) {
        var kitchen = context.book().kitchen();
        Optional<Vendor> vendor = Optional.ofNullable(context.book().vendors().get(notice.vendor()));
        List<String> lines = new ArrayList<>();
        lines.add("Subject: What " + kitchen.name() + " expects to want, " + context.rotation().span());
        lines.add("");
        if (!context.inForce()) {
            lines.add("DRAFT, do not send: this version of the rotation is not in force.");
            lines.add("");
        }
        lines.add("Hello " + vendor.flatMap(v -> v.ordering().contact().person()).map(p -> p + " of ").orElse("")
                + context.called().vendor(notice.vendor()) + ",");
        lines.add("");
        lines.add("this is " + kitchen.name() + ". We have planned our menu from " + NoticeSheet.span(context)
                + ". This is what we expect to want of you:");
        crops(context, notice, lines);
        lines.add("");
        lines.add(NoticeSheet.explained());
        lines.add("All packs as planned come to " + new Cents(notice.cents()) + " at these prices. This is a notice, no order: orders"
                + " follow week by week before your cut-off.");
        lines.add("");
        lines.add("Please tell us what you will have and at what price: answer this mail, or fill in the columns have and"
                + " price_usd of the table " + NoticeSheet.id(context, notice) + " and send it back.");
        lines.add("");
        lines.add(kitchen.name());
        kitchen.paperwork().contact().person().ifPresent(lines::add);
        kitchen.paperwork().contact().phone().ifPresent(lines::add);
        kitchen.paperwork().contact().email().ifPresent(lines::add);
        return String.join("\n", lines) + "\n";
    }

    private static void crops(AheadContext context, Notice notice, List<String> lines) {
        String crop = "";
        for (List<Notice.Row> run : NoticeSheet.runs(notice)) {
            Notice.Row r = run.get(0);
            String name = NoticeSheet.article(context, notice.vendor(), r) + ", " + r.pack() + ", reckoned at " + new Cents(r.price()) + " a pack:";
            if (!name.equals(crop)) {
                lines.add("");
                lines.add(name);
                crop = name;
            }
            lines.add("- " + NoticeSheet.weeks(run) + ": " + r.packs() + (r.packs() == 1 ? " pack (" : " packs (") + NoticeSheet.range(r)
                    + "), " + r.firm() + " firm, " + r.hoped() + " hoped");
        }
    }
}
