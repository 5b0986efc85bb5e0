package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.Cents;
import croftboard.plan.ask.Exposure;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a week would come to if food failed. */
public final class ExposureScreen implements Screen {
    private static final int SHOWN = 8;
    private final Names names;
    private final Book book;
    private final Exposure e;

    public ExposureScreen(Book book, Exposure exposure) {
        this.book = book;
        this.names = new Names(book);
        this.e = exposure;
    }

    @Override
    public String name() {
        return "exposure";
    }

    static String weeks(Exposure e) {
        return e.weeks().size() == 1 ? e.weeks().get(0) : e.weeks().get(0) + " to " + e.weeks().get(e.weeks().size() - 1);
    }

    @Override
    public void print(Page page) {
        page.heading("If food failed: " + weeks(e));
        page.say("Every failure is known before the orders go out. Then: same menu, orders made anew, and a dish whose food cannot be "
                + "bought is dropped. Margin is before the price of broken promises.");
        spread(page);
        String all = e.weeks().size() == 1 ? "" : ", in all these weeks";
        singles(page, "Each vendor failing alone" + all, e.vendors(), true);
        singles(page, "Each crop failing alone, at all growers" + all, e.crops(), false);
        survival(page);
        backUps(page);
    }

    private void spread(Page page) {
        page.subheading(e.runs().size() + (e.weeks().size() == 1 ? " weeks" : " seasons") + " with random yields, seed " + e.seed());
        TextTable table = new TextTable(TextTable.Column.words("of 100 runs"), TextTable.Column.figure("planned"),
                TextTable.Column.figure("5 lie below"), TextTable.Column.figure("25 below"), TextTable.Column.figure("middle"),
                TextTable.Column.figure("75 below"), TextTable.Column.figure("95 below"));
        Exposure.Spread m = e.margins();
        table.row("margin", money(e.planned().margin()), money(m.low()), money(m.lowQuarter()), money(m.middle()),
                money(m.highQuarter()), money(m.high()));
        Exposure.Spread s = e.shares();
        table.row("local share", share(e.planned().share()), share(s.low()), share(s.lowQuarter()), share(s.middle()),
                share(s.highQuarter()), share(s.high()));
        Exposure.Spread b = e.broken();
        table.row("broken promises", money(e.planned().broken()), money(b.low()), money(b.lowQuarter()), money(b.middle()),
                money(b.highQuarter()), money(b.high()));
        page.table(table);
        long whole = e.runs().stream().filter(r -> r.dropped() == 0).count();
        page.say("The mean margin is " + money(m.mean()) + ". No dish was lost in " + percent(whole, e.runs().size()) + " of the runs.");
        page.say("Chances are common practice, no source: what is sure comes whole 97 times in 100, in part 2, not at all once; what "
                + "is likely 85, 11 and 4. A part is a quarter to three quarters, evenly. What a distributor is sure of comes whole 996 times in 1,000.");
    }

    private static String money(long cents) {
        return new Cents(cents).toString();
    }

    private static String share(long hundredths) {
        return String.format(Locale.ROOT, "%.1f %%", hundredths / 100.0);
    }

    private static String percent(long part, long of) {
        return of == 0 ? "-" : String.format(Locale.ROOT, "%.1f %%", 100.0 * part / of);
    }

    private void singles(Page page, String heading, List<Exposure.Single> all, boolean vendors) {
        page.subheading(heading);
        if (all.isEmpty()) {
            page.say("Nothing is ordered there.");
            return;
        }
        TextTable table = new TextTable(TextTable.Column.words(vendors ? "vendor" : "crop"), TextTable.Column.figure("costs in all"),
                TextTable.Column.figure("margin"), TextTable.Column.figure("local share"), TextTable.Column.words("dishes lost"));
        all.stream().limit(SHOWN).forEach(s -> table.row(vendors ? names.vendor(s.id()) : names.item(s.id()),
                money(e.planned().value() - s.outcome().value()), Signs.money(s.outcome().margin() - e.planned().margin()),
                share(s.outcome().share()), s.lost().isEmpty() ? "-" : s.lost().stream().map(names::recipe)
                        .collect(Collectors.joining(", "))));
        page.table(table);
        if (vendors) {
            page.say("The loss that costs most: " + names.vendor(all.get(0).id()) + ". " + all.stream().map(Exposure.Single::id)
                    .filter(v -> book.vendor(v).kind() == Vendor.Kind.GROWER).findFirst()
                    .map(v -> "Of the growers: " + names.vendor(v) + ".").orElse(""));
        }
        if (all.size() > SHOWN) {
            page.say("And " + (all.size() - SHOWN) + " more that cost less: --format csv has them all.");
        }
    }

    private void survival(Page page) {
        page.subheading("Dishes that fell out, by how often they are made");
        if (e.survival().isEmpty()) {
            page.say("None ever fell out.");
            return;
        }
        TextTable table = new TextTable(TextTable.Column.words("dish"), TextTable.Column.figure("made"));
        e.survival().stream().limit(SHOWN).forEach(s -> table.row(names.recipe(s.recipe()), percent(s.made(), s.planned())));
        page.table(table);
        if (e.survival().size() > SHOWN) {
            page.say("And " + (e.survival().size() - SHOWN) + " more that fell out less often.");
        }
    }

    private void backUps(Page page) {
        page.subheading("Which back-up is worth most");
        if (e.backUps().isEmpty()) {
            page.say("None of those that were tried.");
            return;
        }
        TextTable table = new TextTable(TextTable.Column.words("back-up"), TextTable.Column.figure("worth in the mean"),
                TextTable.Column.figure("called on"));
        e.backUps().stream().limit(SHOWN).forEach(b -> table.row(help(b), money(b.cents()), b.hit() + " times"));
        page.table(table);
        page.say("For what is lost most often: a second grower at the dearest price of the week, who fails as a likely crop does; "
                + "stock of what the week needs, at that price; another dish in its place. Invented terms, to compare by.");
    }

    private String help(Exposure.BackUp b) {
        return switch (b.help()) {
            case SECOND_GROWER -> "a second grower of " + names.item(b.of());
            case FROZEN_STOCK -> switch (book.ingredient(b.of()).storage()) {
                case WALK_IN -> "frozen " + names.item(b.of()) + ", where it freezes well";
                case FREEZER -> "more " + names.item(b.of()) + " in the freezer";
                case DRY -> "more " + names.item(b.of()) + " on the shelf";
            };
            case ANOTHER_DISH -> "another dish ready for " + names.recipe(b.of());
        };
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("of", "id", "margin_usd", "local_share_percent", "broken_usd", "dishes_lost", "count");
        add(rows, "planned", "", e.planned(), 1);
        e.vendors().forEach(s -> add(rows, "vendor fails", s.id(), s.outcome(), 1));
        e.crops().forEach(s -> add(rows, "crop fails", s.id(), s.outcome(), 1));
        for (int r = 0; r < e.runs().size(); r++) {
            add(rows, "run", Integer.toString(r + 1), e.runs().get(r), 1);
        }
        e.survival().forEach(s -> rows.add("dish made", s.recipe(), "", "", "", s.planned() - s.made(), s.planned()));
        e.backUps().forEach(b -> rows.add("back-up " + b.help().name().toLowerCase(Locale.ROOT).replace('_', ' '), b.of(),
                Rows.dollars(b.cents()), "", "", "", b.hit()));
        return rows;
    }

    private static void add(Rows rows, String of, String id, Exposure.Outcome o, int count) {
        rows.add(of, id, Rows.dollars(o.margin()), Rows.dollars(o.share()), Rows.dollars(o.broken()), o.dropped(), count);
    }
}
