package croftboard.cli.screen;

import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.plan.work.Making;
import croftboard.plan.work.PrepWork;
import java.util.List;

/** The work by day and station, in working order, and what must be got ready for later days. */
public final class PrepScreen implements Screen {
    private final Shown shown;
    private final Names names;
    private final List<PrepWork.Day> days;

    public PrepScreen(Shown shown) {
        this.shown = shown;
        this.names = shown.names();
        this.days = new PrepWork(shown.book(), shown.plan()).days();
    }

    @Override
    public String name() {
        return "prep";
    }

    @Override
    public void print(Page page) {
        page.heading("Prep");
        if (days.isEmpty()) {
            page.say("Nothing is to be made.");
        }
        for (PrepWork.Day day : days) {
            page.subheading(Dates.full(day.date()));
            day.benches().forEach(b -> bench(page, b));
            if (!day.ahead().isEmpty()) {
                page.gap();
                page.say("Get ready for later:");
                day.ahead().forEach(a -> page.item("- ", ahead(a)));
            }
        }
        page.gap();
        page.say("AP: as purchased. EP: edible portion, after trimming.");
        page.say(Cautions.cooling(shown.book().kitchen()));
    }

    private void bench(Page page, PrepWork.Bench bench) {
        page.gap();
        page.say(bench.station().name() + ": " + minutes(bench.used()) + " of " + minutes(bench.hands()) + " hands"
                + over(bench) + ".");
        if (!bench.received().isEmpty()) {
            page.item("- ", "Take in: " + String.join(", ", bench.received().stream().map(names::vendor).toList()) + ".");
        }
        for (Making m : bench.makings()) {
            page.item("- ", PlainText.clean(m.recipe().name()) + ", " + batches(m) + ", "
                    + minutes(m.minutesAt(bench.station().id())) + " of hands"
                    + (m.unattended().signum() > 0 ? ", " + CookAmounts.minutes(m.unattended()) + " a batch by itself" : "")
                    + ". Use by " + Dates.day(m.useBy()) + "." + (isFirst(m, bench) || m.items().isEmpty() ? ""
                            : " Its items stand under " + names.station(m.stations().get(0)) + "."));
            if (isFirst(m, bench)) {
                page.table("    ", items(m));
            }
        }
    }

    /** A making's items stand once: at the first of its stations. */
    private static boolean isFirst(Making making, PrepWork.Bench bench) {
        return making.stations().get(0).equals(bench.station().id()) && !making.items().isEmpty();
    }

    private static String over(PrepWork.Bench bench) {
        long over = bench.used() - bench.hands();
        if (over <= 0) {
            return "";
        }
        long limit = bench.station().overtimeLimitMinutes();
        return ", " + minutes(over) + " overtime of at most " + minutes(limit)
                + (over > limit ? ": MORE THAN THERE IS" : "");
    }

    private static String minutes(long minutes) {
        return CookAmounts.minutes(Ratio.of(minutes));
    }

    private static String batches(Making m) {
        String count = CookAmounts.mixed(m.batches()) + (m.batches().compareTo(Ratio.ONE) > 0 ? " batches" : " batch");
        return m.portions().map(p -> p + " portions, " + count).orElseGet(() ->
                CookAmounts.mass(m.recipe().makes().base().times(m.batches())) + ", " + count);
    }

    private TextTable items(Making making) {
        TextTable table = new TextTable(TextTable.Column.words("item"), TextTable.Column.words("cut"),
                TextTable.Column.words("amount"), TextTable.Column.figure("AP"), TextTable.Column.figure("EP"));
        for (Making.Item i : making.items()) {
            boolean weighed = i.amount().unit().kind() == Unit.Kind.MASS;
            table.row(names.item(i.id()) + i.insteadOf().map(o -> " (instead of " + o + ")").orElse("")
                    + i.note().map(n -> " (" + n + ")").orElse(""), cut(i), weighed ? "" : CookAmounts.of(i.amount()),
                    i.component() ? "" : CookAmounts.mass(i.ap()), CookAmounts.mass(i.ep()));
        }
        return table;
    }

    private static String cut(Making.Item item) {
        return item.component() ? "made here" : item.cut().orElse("");
    }

    private String ahead(PrepWork.Ahead a) {
        String what = CookAmounts.mass(a.item().ap()) + " " + names.item(a.item().id());
        return (a.item().frozen() ? "Take from the freezer to thaw in the cold: " + what
                : "Start " + what + a.item().cut().map(c -> ", " + c).orElse(""))
                + ", for " + names.recipe(a.making().recipe().id()) + " on " + Dates.day(a.making().day()) + ".";
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("day", "station", "recipe", "recipe_name", "batches", "portions", "use_by", "minutes",
                "item", "item_name", "cut", "amount", "ap_grams", "ep_grams", "days_ahead");
        for (PrepWork.Day day : days) {
            for (PrepWork.Bench b : day.benches()) {
                for (Making m : b.makings()) {
                    makingRow(rows, day, b, m);
                    if (isFirst(m, b)) {
                        m.items().forEach(i -> rows.add(day.date(), b.station().id(), m.recipe().id(), m.recipe().name(),
                                "", "", "", "", i.id(), names.item(i.id()), i.cut(), CookAmounts.of(i.amount()),
                                i.ap().toDecimal(1), i.ep().toDecimal(1), i.ahead()));
                    }
                }
            }
        }
        return rows;
    }

    private static void makingRow(Rows rows, PrepWork.Day day, PrepWork.Bench bench, Making m) {
        rows.add(day.date(), bench.station().id(), m.recipe().id(), m.recipe().name(), m.batches().toDecimal(4),
                m.portions(), m.useBy(), m.minutesAt(bench.station().id()), "", "", "", "", "", "", "");
    }
}
