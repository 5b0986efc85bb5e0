package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.ledger.share.MenuMix;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.plan.look.LookBack;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A plan against what happened, and what to change. */
public final class LookBackScreen implements Screen {
    private static final String UNKNOWN = "?";
    private final Names names;
    private final LookBack look;
    private final String plan;

    /** @param plan such as 2027-W33@2, posted */
    public LookBackScreen(Book book, LookBack look, String plan) {
        this.names = new Names(book);
        this.look = look;
        this.plan = plan;
    }

    @Override
    public String name() {
        return "look-back";
    }

    @Override
    public void print(Page page) {
        page.heading("Looking back at " + plan);
        runs(page);
        money(page);
        own(page);
        yields(page);
        mix(page);
    }

    private void runs(Page page) {
        TextTable table = new TextTable(TextTable.Column.mark("served"), TextTable.Column.words("line"), TextTable.Column.words("dish"),
                TextTable.Column.figure("planned"), TextTable.Column.figure("put out"), TextTable.Column.figure("sold"),
                TextTable.Column.figure("left"), TextTable.Column.mark("ran out"));
        for (LookBack.Run r : look.runs()) {
            table.row(Dates.shortDay(r.first()) + (r.last().equals(r.first()) ? "" : " - " + Dates.shortDay(r.last())), names.line(r.line()),
                    names.recipe(r.dish()), Integer.toString(r.planned()), figure(r.putOut()), figure(r.sold()) + (r.silent() > 0 && r.sold().isPresent()
                    ? " +" + UNKNOWN : ""), figure(r.left()), ranOut(r));
        }
        page.table(table);
        int known = look.runs().stream().filter(r -> r.difference().isPresent()).mapToInt(LookBack.Run::planned).sum();
        int sold = look.runs().stream().filter(r -> r.difference().isPresent()).mapToInt(r -> r.sold().orElse(0)).sum();
        long out = look.runs().stream().filter(r -> r.ranOutDays() > 0).count();
        int silent = look.runs().stream().mapToInt(LookBack.Run::silent).sum();
        page.gap();
        page.say("Portions: " + known + " planned, " + sold + " sold" + (known == 0 ? "" : ", " + Math.round(100.0 * sold / known) + " %") + ". Ran out: "
                + out + " of " + look.runs().size() + " dishes." + (silent == 0 ? "" : " Of " + silent + (silent == 1 ? " day" : " days")
                + " nothing is written down (" + UNKNOWN + "): they are not counted."));
    }

    private static String ranOut(LookBack.Run r) {
        return r.ranOutDays() == 0 ? r.sold().isEmpty() ? UNKNOWN : "-" : r.ranOut().map(t -> "at " + t).orElse("yes")
                + (r.ranOutDays() > 1 ? ", " + r.ranOutDays() + " days" : "");
    }

    private static String figure(Optional<Integer> of) {
        return of.map(i -> Integer.toString(i)).orElse(UNKNOWN);
    }

    private void money(Page page) {
        LookBack.Money m = look.money();
        page.subheading("Money, events aside");
        TextTable table = new TextTable(TextTable.Column.words("what"), TextTable.Column.figure("plan"), TextTable.Column.figure("happened"),
                TextTable.Column.figure("difference"));
        row(table, "sales of dishes", m.sales(), m.sold());
        row(table, "food on the plan's orders, credits off", m.ordered(), m.received());
        row(table, "waste with its cost written down", m.wastePlanned(), m.waste());
        page.table(table);
        page.gap();
        if (m.unsold() > 0 || m.waiting() > 0) {
            page.say("Not in these figures: " + (m.unsold() == 0 ? "" : counted(m.unsold(), "dish", "dishes") + " of which the register has nothing")
                    + (m.unsold() > 0 && m.waiting() > 0 ? ", " : "") + (m.waiting() == 0 ? "" : counted(m.waiting(), "order", "orders")
                    + " of which nothing is booked as received") + ".");
        }
        if (m.waste().isPresent()) {
            page.say("Waste booked: " + ForecastScreen.figure(m.wastePortions()) + " portions" + (m.wasteUncosted() == 0 ? "."
                    : "; " + counted(m.wasteUncosted(), "entry", "entries") + " without a cost, so the money is more."));
        }
        WeekPlan.Share s = look.plan().share();
        page.say("Local share: the plan expected " + percent(s.low()) + " to " + percent(s.high()) + ". What it came to: croftboard share --from "
                + look.week().monday() + " --to " + look.week().monday().plusDays(6) + ".");
        page.say("Minutes: the ledger holds no working hours, so the plan's cannot be held against them.");
    }

    private static String counted(int n, String one, String more) {
        return n + " " + (n == 1 ? one : more);
    }

    private static void row(TextTable table, String what, long plan, Optional<Long> happened) {
        table.row(what, new Cents(plan).toString(), happened.map(h -> new Cents(h).toString()).orElse(UNKNOWN),
                happened.map(h -> (h > plan ? "+" : h < plan ? "-" : "") + new Cents(Math.abs(h - plan))).orElse(UNKNOWN));
    }

    private static String percent(Ratio of) {
        return of.times(100).toDecimal(0).toPlainString() + " %";
    }

    private void own(Page page) {
        page.subheading("Figures of your own");
        if (look.own().isEmpty()) {
            page.say("None this week.");
        }
        for (LookBack.Own o : look.own()) {
            page.item("- ", Dates.day(o.date()) + ", " + (o.line().isEmpty() ? "all lines" : names.line(o.line())) + ": yours " + number(o.set())
                    + o.forecast().map(f -> ", forecast " + number(f)).orElse("") + ", sold " + figure(o.sold()) + (o.ranOut() ? " and ran out" : "")
                    + ": " + o.verdict() + ". \"" + o.reason() + "\"");
        }
        long better = look.own().stream().filter(o -> o.verdict().startsWith("yours")).count();
        long worse = look.own().stream().filter(o -> o.verdict().startsWith("the forecast was closer")).count();
        if (better + worse > 1) {
            page.say("Closer: yours " + better + " times, the forecast " + worse + " times.");
        }
    }

    private static String number(double of) {
        return String.format(Locale.ROOT, of == Math.rint(of) ? "%.0f" : "%.1f", of);
    }

    private void yields(Page page) {
        page.subheading("Yields of the last eight weeks");
        if (look.yields().isEmpty()) {
            page.say("No batch was weighed.");
        }
        for (LookBack.Yield y : look.yields()) {
            page.item("- ", names.recipe(y.recipe()) + ": " + y.batches() + (y.batches() == 1 ? " batch" : " batches") + ", got " + percent(y.got())
                    + " of what the recipe says." + (y.change() ? " Change `makes` (and `loss`) in recipes/." : ""));
        }
    }

    private void mix(Page page) {
        page.subheading("Menu mix");
        if (look.mix().isEmpty()) {
            page.say("The register has no sale of a dish this week.");
            return;
        }
        MenuMix mix = look.mix().get();
        TextTable table = new TextTable(TextTable.Column.words("dish"), TextTable.Column.figure("sold"), TextTable.Column.figure("brings a portion"),
                TextTable.Column.mark("popular"), TextTable.Column.mark("earns"), TextTable.Column.words("then"));
        mix.dishes().forEach(d -> table.row(names.recipe(d.sold().dish()), ForecastScreen.figure(Ratio.of(d.sold().units(), 1000)),
                new Cents(d.sold().margin().round()).toString(), d.popular() ? "yes" : "no", d.earns() ? "yes" : "no", d.word()));
        page.table(table);
        page.gap();
        page.say("Popular: more than " + ForecastScreen.figure(mix.threshold().over(1000)) + " portions, " + percent(mix.popular()) + " of an even share."
                + " Earns: a portion brings more, after its food, than the " + new Cents(mix.average().round()) + " of all portions. One week says little;"
                + " a dish that keeps a promise of coverage stays whatever its class.");
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("kind", "line", "dish", "first", "last", "planned", "put_out", "sold", "left", "ran_out_days", "ran_out", "silent_days",
                "forecast", "own", "verdict", "reason");
        look.runs().forEach(r -> rows.add("run", r.line(), r.dish(), r.first(), r.last(), r.planned(), r.putOut(), r.sold(), r.left(), r.ranOutDays(),
                r.ranOut(), r.silent(), "", "", "", ""));
        look.own().forEach(o -> rows.add("own", o.line(), "", o.date(), o.date(), "", "", o.sold(), "", o.ranOut() ? 1 : 0, "", "",
                o.forecast().map(LookBackScreen::number).orElse(""), number(o.set()), o.verdict(), o.reason()));
        LookBack.Money m = look.money();
        money(rows, "sales", m.sales(), m.sold());
        money(rows, "food", m.ordered(), m.received());
        money(rows, "waste", m.wastePlanned(), m.waste());
        look.yields().forEach(y -> rows.add("yield", "", y.recipe(), "", "", "", "", "", "", "", "", "", "", y.got().toDecimal(3), y.batches(), ""));
        look.mix().map(MenuMix::dishes).orElse(List.of()).forEach(d -> rows.add("mix", "", d.sold().dish(), "", "", "", "",
                ForecastScreen.figure(Ratio.of(d.sold().units(), 1000)), "", "", "", "", "", Rows.dollars(d.sold().margin().round()), d.word(), ""));
        return rows;
    }

    private void money(Rows rows, String kind, long plan, Optional<Long> happened) {
        LocalDate monday = look.week().monday();
        rows.add(kind, "", "", monday, monday.plusDays(6), Rows.dollars(plan), "", happened.map(Rows::dollars), "", "", "", "", "", "", "", "");
    }
}
