package croftboard.cli.screen;

import croftboard.ledger.file.PublishedDefinitions;
import croftboard.ledger.share.Aside;
import croftboard.ledger.share.Counted;
import croftboard.ledger.share.Money;
import croftboard.ledger.share.Share;
import croftboard.measure.Ratio;
import java.util.Locale;

/** The share of local food in what was paid: the number, whose definition, its range, other definitions, what is kept out. */
public final class LedgerShareScreen implements Screen {
    private final SharesShown shown;

    public LedgerShareScreen(SharesShown shown) {
        this.shown = shown;
    }

    @Override
    public String name() {
        return "definitions";
    }

    @Override
    public void print(Page page) {
        Share share = shown.asked();
        page.heading("Local share, " + Dates.full(share.from()) + " to " + Dates.full(share.to()));
        Money all = share.all();
        if (all.share().isEmpty()) {
            page.say("No food was paid for in these days, so there is no share.");
            asides(page, share);
            return;
        }
        page.say(SharesShown.percent(all.share()) + " local: " + SharesShown.dollars(all.local()) + " of "
                + SharesShown.dollars(all.total()) + " paid for food.");
        page.say("Local means: " + share.definition().say() + " (" + share.definition().id()
                + (shown.inForce(share) ? ", in force in this kitchen)." : source(share) + ", not the one in force in this kitchen)."));
        shown.target().ifPresent(t -> target(page, all, t));
        range(page, all);
        definitions(page);
        near(page, share);
        asides(page, share);
        page.gap();
        page.say("Counted from " + lines(share.lines().size()) + " of receipts by the day the food came: what was charged, corrections"
                + " applied, credits not taken off. Where food is from is what the book said when it was booked. See every line:"
                + " --trail.");
    }

    private static void target(Page page, Money all, Ratio target) {
        Ratio missing = target.times(all.total()).minus(Ratio.of(all.local()));
        page.say("Target: " + ShareScreen.percent(target) + " (each week's own, weighted by money): "
                + (missing.signum() <= 0 ? "reached." : "not reached, " + SharesShown.dollars(missing.ceil()) + " short."));
    }

    private static void range(Page page, Money all) {
        if (all.unclassified() != 0) {
            page.say(SharesShown.dollars(all.unclassified()) + " is not classified and counts as not local.");
        }
        if (all.mixedIn() != 0) {
            page.say(SharesShown.dollars(all.mixedIn()) + " of the local money is mixed food that counts whole; its local part is "
                    + SharesShown.dollars(all.mixedInPart()) + ".");
        }
        if (all.mixedOut() != 0) {
            page.say(SharesShown.dollars(all.mixedOut()) + " is mixed food that does not count; its local part is "
                    + SharesShown.dollars(all.mixedOutPart()) + ".");
        }
        if (all.lowCents() != all.local() || all.highCents() != all.local()) {
            page.say("So it is at least " + SharesShown.percent(all.low()) + " and at most " + SharesShown.percent(all.high())
                    + ": with only the local part of mixed food, and with all that is not classified and every local part.");
        }
    }

    private void definitions(Page page) {
        page.subheading("By other definitions");
        TextTable table = new TextTable(TextTable.Column.words("definition"), TextTable.Column.figure("local"),
                TextTable.Column.figure("not local"), TextTable.Column.figure("not classified"), TextTable.Column.figure("share"),
                TextTable.Column.figure("at least"), TextTable.Column.figure("at most"));
        for (Share s : shown.shares()) {
            Money m = s.all();
            table.row(s.definition().id() + (shown.inForce(s) ? " (in force)" : ""), SharesShown.dollars(m.local()),
                    SharesShown.dollars(m.notLocal()), SharesShown.dollars(m.unclassified()), SharesShown.percent(m.share()),
                    SharesShown.percent(m.low()), SharesShown.percent(m.high()));
        }
        page.table(table);
        shown.shares().stream().skip(1).forEach(s -> page.item("- ", s.definition().id() + ": " + s.definition().say() + source(s) + "."));
    }

    private String source(Share s) {
        return PublishedDefinitions.source(s.definition(), shown.book().kitchen().place().state()).map(x -> " (" + x + ")").orElse("");
    }

    private static void near(Page page, Share share) {
        page.subheading("Grown, made or only sold near by, by the same definition: all food money");
        TextTable table = new TextTable(TextTable.Column.words("what is near"), TextTable.Column.figure("money"),
                TextTable.Column.figure("of all"));
        share.near().forEach((near, cents) -> table.row(near.toString(), SharesShown.dollars(cents),
                ShareScreen.percent(Ratio.of(cents, share.all().total()))));
        table.row("all food", SharesShown.dollars(share.all().total()), ShareScreen.percent(Ratio.ONE));
        page.table(table);
    }

    private static void asides(Page page, Share share) {
        if (share.asides().isEmpty()) {
            return;
        }
        page.subheading("In neither number");
        TextTable table = new TextTable(TextTable.Column.words("what"), TextTable.Column.figure("entries"),
                TextTable.Column.figure("money"));
        share.asides().forEach(a -> table.row(a.kind().toString(), Integer.toString(a.lines()), SharesShown.dollars(a.cents())));
        page.table(table);
        share.asides().stream().filter(a -> a.kind() == Aside.Kind.CREDIT_RECEIVED).forEach(a -> page.say("Of the credits received, "
                + SharesShown.dollars(a.food().local()) + " is for food that counts as local, " + SharesShown.dollars(a.food().notLocal())
                + " for food that does not, " + SharesShown.dollars(a.food().unclassified()) + " for what cannot be told."));
    }

    private static String lines(int count) {
        return String.format(Locale.ROOT, "%,d", count) + (count == 1 ? " line" : " lines");
    }

    /** Every definition, the asked one first. */
    @Override
    public Rows rows() {
        Rows rows = new Rows("definition", "in_force", "says", "from", "to", "local_usd", "not_local_usd", "not_classified_usd",
                "total_usd", "share", "at_least", "at_most", "mixed_counted_usd", "mixed_counted_local_part_usd",
                "mixed_not_counted_usd", "mixed_not_counted_local_part_usd");
        for (Share s : shown.shares()) {
            Money m = s.all();
            rows.add(s.definition().id(), shown.inForce(s), s.definition().say(), s.from(), s.to(), Rows.dollars(m.local()),
                    Rows.dollars(m.notLocal()), Rows.dollars(m.unclassified()), Rows.dollars(m.total()),
                    m.share().map(r -> r.toDecimal(6)), m.low().map(r -> r.toDecimal(6)), m.high().map(r -> r.toDecimal(6)),
                    Rows.dollars(m.mixedIn()), Rows.dollars(m.mixedInPart()), Rows.dollars(m.mixedOut()),
                    Rows.dollars(m.mixedOutPart()));
        }
        return rows;
    }

    /** What is kept out, one row a kind. */
    public Rows asideRows() {
        Rows rows = new Rows("what", "entries", "usd");
        shown.asked().asides().forEach(a -> rows.add(a.kind().toString(), a.lines(), Rows.dollars(a.cents())));
        return rows;
    }

    /** What is near about the food, one row a kind. */
    public Rows nearRows() {
        Rows rows = new Rows("near", "usd");
        shown.asked().near().forEach((near, cents) -> rows.add(near.toString(), Rows.dollars(cents)));
        return rows;
    }

    static String answer(Counted line) {
        return switch (line.answer()) {
            case LOCAL -> "local";
            case NOT_LOCAL -> "not local";
            case UNCLASSIFIED -> "not classified";
        };
    }
}
