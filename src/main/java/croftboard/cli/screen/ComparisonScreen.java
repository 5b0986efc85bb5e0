package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.plan.ask.Comparison;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What differs between two plans: orders first, as somebody must be told; then the kitchen, the promises, the money. */
public final class ComparisonScreen implements Screen {
    private final Names names;
    private final String before;
    private final String after;
    private final Comparison c;

    /** @param before, after how the two plans are called, such as {@code 2027-W33@1} */
    public ComparisonScreen(Book book, String before, String after, Comparison comparison) {
        this.names = new Names(book);
        this.before = before;
        this.after = after;
        this.c = comparison;
    }

    @Override
    public String name() {
        return "compare";
    }

    @Override
    public void print(Page page) {
        page.heading("From " + before + " to " + after);
        if (c.nothing()) {
            page.say("Nothing differs.");
            return;
        }
        differences(page);
    }

    /** The groups without a heading over all, for other screens. */
    void differences(Page page) {
        orders(page, Comparison.Act.SEND, "Orders to send");
        orders(page, Comparison.Act.SEND_AGAIN, "Orders to send again");
        orders(page, Comparison.Act.CANCEL, "Orders to cancel");
        dishes(page);
        prep(page);
        promises(page);
        money(page);
    }

    private void orders(Page page, Comparison.Act act, String heading) {
        List<Comparison.OrderDiffers> these = c.orders().stream().filter(o -> o.act() == act).toList();
        if (these.isEmpty()) {
            return;
        }
        page.subheading(heading);
        TextTable table = new TextTable(TextTable.Column.words("vendor"), TextTable.Column.mark("delivery"),
                TextTable.Column.words("item"), TextTable.Column.figure("before"), TextTable.Column.figure("after"),
                TextTable.Column.figure("order"));
        for (Comparison.OrderDiffers o : these) {
            String vendor = names.vendor(o.vendor());
            String day = Dates.day(o.delivery());
            String money = new Cents(o.act() == Comparison.Act.CANCEL ? o.before() : o.after()).toString();
            if (o.lines().isEmpty()) {
                table.row(vendor, day, "the same packs at another price", "", "", money);
            }
            for (Comparison.LineDiffers l : o.lines()) {
                table.row(vendor, day, names.item(l.item()) + ", " + l.pack(), Integer.toString(l.before()),
                        Integer.toString(l.after()), money);
                vendor = "";
                day = "";
                money = "";
            }
        }
        page.table(table);
    }

    private void dishes(Page page) {
        if (c.dishes().isEmpty()) {
            return;
        }
        page.subheading("Dishes");
        TextTable table = new TextTable(TextTable.Column.mark("place"), TextTable.Column.words("before"),
                TextTable.Column.figure("portions"), TextTable.Column.words("after"), TextTable.Column.figure("portions"));
        c.dishes().forEach(d -> table.row(d.slot(), dish(d.before()), portions(d.portionsBefore()), dish(d.after()),
                portions(d.portionsAfter())));
        page.table(table);
    }

    private String dish(Optional<String> recipe) {
        return recipe.map(names::recipe).orElse("(nothing)");
    }

    private static String portions(int portions) {
        return portions == 0 ? "-" : Integer.toString(portions);
    }

    private void prep(Page page) {
        if (c.prep().isEmpty()) {
            return;
        }
        page.subheading("Prep, in standard batches");
        TextTable table = new TextTable(TextTable.Column.mark("day"), TextTable.Column.words("recipe"),
                TextTable.Column.figure("before"), TextTable.Column.figure("after"));
        String last = "";
        for (Comparison.PrepDiffers p : c.prep()) {
            String day = Dates.day(p.day());
            table.row(day.equals(last) ? "" : day, names.recipe(p.recipe()), batches(p.before()), batches(p.after()));
            last = day;
        }
        page.table(table);
    }

    private static String batches(Ratio batches) {
        return batches.signum() == 0 ? "-" : batches.toDecimal(2).toString();
    }

    private void promises(Page page) {
        if (c.promises().isEmpty()) {
            return;
        }
        page.subheading("Promises");
        TextTable table = new TextTable(TextTable.Column.words("promise"), TextTable.Column.mark("when"),
                TextTable.Column.figure("before"), TextTable.Column.figure("after"));
        c.promises().forEach(p -> table.row(p.say(), when(p.day()), promise(p.before()), promise(p.after())));
        page.table(table);
    }

    private static String when(Optional<LocalDate> day) {
        return day.map(Dates::day).orElse("week");
    }

    private static String promise(long cents) {
        return cents == 0 ? "kept" : "broken, " + new Cents(cents);
    }

    private void money(Page page) {
        if (c.money().isEmpty()) {
            return;
        }
        page.subheading("Money");
        TextTable table = new TextTable(TextTable.Column.words("expected in the week"), TextTable.Column.figure("before"),
                TextTable.Column.figure("after"), TextTable.Column.figure("difference"));
        c.money().forEach(m -> table.row(m.line(), new Cents(m.before()).toString(), new Cents(m.after()).toString(),
                Signs.money(m.after() - m.before())));
        page.table(table);
        if (!c.shareBefore().equals(c.shareAfter())) {
            page.say("Expected local share: " + percent(c.shareBefore()) + " before, " + percent(c.shareAfter()) + " after.");
        }
    }

    private static String percent(Ratio share) {
        return share.times(100).toDecimal(1) + " %";
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("group", "day", "of", "before", "after");
        c.orders().forEach(o -> {
            String group = "order to " + o.act().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
            rows.add(group, o.delivery(), o.vendor() + " total usd", Rows.dollars(o.before()), Rows.dollars(o.after()));
            o.lines().forEach(l -> rows.add(group, o.delivery(), o.vendor() + "/" + l.item() + ", " + l.pack(), l.before(),
                    l.after()));
        });
        c.dishes().forEach(d -> rows.add("dish", "", d.slot(), d.before().orElse(""), d.after().orElse("")));
        c.dishes().forEach(d -> rows.add("portions", "", d.slot(), d.portionsBefore(), d.portionsAfter()));
        c.prep().forEach(p -> rows.add("batches", p.day(), p.recipe(), p.before().toDecimal(2), p.after().toDecimal(2)));
        c.promises().forEach(p -> rows.add("broken promise usd", p.day(), p.say(), Rows.dollars(p.before()),
                Rows.dollars(p.after())));
        c.money().forEach(m -> rows.add("money usd", "", m.line(), Rows.dollars(m.before()), Rows.dollars(m.after())));
        return rows;
    }
}
