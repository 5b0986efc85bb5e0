package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Reply;
import croftboard.measure.Cents;
import croftboard.plan.RotationChange;
import croftboard.plan.ahead.Notice;
import java.util.List;
import java.util.Optional;

/** A grower's answer: what differs from the notice, then what that does to the rotation. */
public final class ReplyScreen implements Screen {
    private final Names names;
    private final Reply reply;
    private final Notice notice;
    private final RotationChange change;

    /** @param notice that was answered */
    public ReplyScreen(Book book, Reply reply, Notice notice, RotationChange change) {
        this.names = new Names(book);
        this.reply = reply;
        this.notice = notice;
        this.change = change;
    }

    @Override
    public String name() {
        return "reply";
    }

    @Override
    public void print(Page page) {
        page.heading("Answer of " + names.vendor(reply.vendor()) + " to " + reply.rotation());
        int answered = reply.answered().size();
        page.say(answered + " of " + notice.rows().size() + " lines are answered"
                + (answered < notice.rows().size() ? "; of the others the farm's calendar holds." : "."));
        answer(page);
        page.gap();
        if (change.weeks().isEmpty()) {
            page.say("The rotation stays as it is. Its value: " + new Cents(change.after()) + ".");
            return;
        }
        change.weeks().forEach(w -> week(page, w));
        page.gap();
        page.say("Weeks that change: " + change.weeks().size() + ". Value of the rotation: " + new Cents(change.before()) + " -> "
                + new Cents(change.after()) + " (" + signed(change.after() - change.before()) + ").");
    }

    private void answer(Page page) {
        TextTable table = new TextTable(TextTable.Column.words("crop"), TextTable.Column.words("pack"), TextTable.Column.mark("week"),
                TextTable.Column.figure("wanted"), TextTable.Column.figure("firm"), TextTable.Column.figure("has"),
                TextTable.Column.figure("assumed"), TextTable.Column.figure("asks"), TextTable.Column.words("note"));
        for (Reply.Row r : reply.answered()) {
            Notice.Row asked = asked(r);
            boolean less = r.have().getAsInt() < asked.packs();
            boolean dearer = r.price().map(p -> p.value() != asked.price()).orElse(false);
            if (less || dearer || !r.note().isEmpty()) {
                table.row(names.item(r.item()), r.pack(), r.week().toString(), Integer.toString(asked.packs()), Integer.toString(asked.firm()),
                        Integer.toString(r.have().getAsInt()), new Cents(asked.price()).toString(), r.price().map(Cents::toString).orElse(""),
                        r.note());
            }
        }
        if (table.isEmpty()) {
            page.say("All that is answered is there at the price assumed.");
        } else {
            page.table(table);
        }
    }

    private Notice.Row asked(Reply.Row r) {
        return notice.rows().stream().filter(n -> n.item().equals(r.item()) && n.pack().equals(r.pack()) && n.week().equals(r.week()))
                .findFirst().orElseThrow();
    }

    private void week(Page page, RotationChange.Week w) {
        page.subheading(w.week().toString());
        if (!w.is().complete()) {
            page.say("NOT COMPLETE after this answer:");
            w.is().missing().forEach(m -> page.item("- ", m.what() + " -> " + m.mend()));
        }
        w.dishes().forEach(d -> page.item("- ", d.slot() + ": " + dish(d.was()) + " -> " + dish(d.is())));
        if (w.dishes().isEmpty()) {
            page.say("Every dish stays.");
        }
        if (!w.packs().isEmpty()) {
            TextTable table = new TextTable(TextTable.Column.words("order of"), TextTable.Column.words("pack"), TextTable.Column.words("from"),
                    TextTable.Column.figure("packs"), TextTable.Column.figure("money"));
            w.packs().forEach(p -> table.row(names.item(p.item()), p.pack(), names.vendor(p.vendor()),
                    p.was() == p.is() ? Integer.toString(p.is()) : p.was() + " -> " + p.is(), signed(p.cents())));
            page.table(table);
        }
    }

    private String dish(Optional<String> recipe) {
        return recipe.map(names::recipe).orElse("(nothing)");
    }

    static String signed(long cents) {
        return (cents > 0 ? "+" : "") + new Cents(cents);
    }

    /** A row for each change. */
    @Override
    public Rows rows() {
        Rows rows = new Rows("week", "what", "id", "vendor", "pack", "was", "is", "usd");
        rows.add("", "value", "", "", "", Rows.dollars(change.before()), Rows.dollars(change.after()),
                Rows.dollars(change.after() - change.before()));
        change.weeks().forEach(w -> {
            w.dishes().forEach(d -> rows.add(w.week().toString(), "dish", d.slot(), "", "", d.was(), d.is(), ""));
            w.packs().forEach(p -> rows.add(w.week().toString(), "packs", p.item(), p.vendor(), p.pack(), p.was(), p.is(),
                    Rows.dollars(p.cents())));
        });
        return rows;
    }

    /** @return what is wrong, a line each */
    public static List<String> unasked(Reply reply, Notice notice) {
        return reply.rows().stream().filter(r -> notice.rows().stream().noneMatch(n -> n.item().equals(r.item()) && n.pack().equals(r.pack())
                && n.week().equals(r.week()))).map(r -> reply.file() + ":" + r.line() + ": " + r.item() + ", " + r.pack() + ", " + r.week()
                + " was not asked for -> keep the rows that were sent").toList();
    }
}
