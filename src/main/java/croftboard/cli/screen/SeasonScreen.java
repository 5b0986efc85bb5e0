package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.plan.ahead.Season;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One part of the season ahead: demand, commitments, gaps, freezing, or dishes that lack. */
public final class SeasonScreen implements Screen {
    private static final double POUND_MG = 453_592.37;
    private static final int NAMED = 3;
    private final Book book;
    private final Names names;
    private final Season season;
    private final Part part;

    /** The parts, in the order in which they are shown. */
    public enum Part {
        DEMAND, COMMITMENTS, GAPS, FREEZING, DISHES;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public SeasonScreen(Book book, Season season, Part part) {
        this.book = book;
        this.names = new Names(book);
        this.season = season;
        this.part = part;
    }

    @Override
    public String name() {
        return part.toString();
    }

    /** What stands above all parts. */
    public static void head(Season season, Page page) {
        page.heading("The season ahead, " + season.span());
        page.say(season.planned().size() + " weeks are planned: " + season.planned().stream().map(w -> w.from()).distinct().limit(NAMED)
                .collect(Collectors.joining(", ")) + (season.planned().stream().map(w -> w.from()).distinct().count() > NAMED ? " and more" : "") + ".");
        if (!season.open().isEmpty()) {
            page.say("Not planned and not counted: " + weeks(season.open().get(0), season.open().get(season.open().size() - 1), season.open().size()));
        }
    }

    private static String weeks(IsoWeek from, IsoWeek to, int count) {
        return from.equals(to) ? from + "." : count + " weeks between " + from + " and " + to + ".";
    }

    @Override
    public void print(Page page) {
        switch (part) {
            case DEMAND -> demand(page);
            case COMMITMENTS -> commitments(page);
            case GAPS -> gaps(page);
            case FREEZING -> freezing(page);
            case DISHES -> dishes(page);
        }
    }

    private void demand(Page page) {
        page.heading("Wanted of each crop, pounds as bought");
        TextTable table = new TextTable(TextTable.Column.words("crop"), TextTable.Column.figure("wanted"), TextTable.Column.figure("weeks"),
                TextTable.Column.figure("most a week"), TextTable.Column.words("of growers, first in line first"), TextTable.Column.figure("elsewhere"));
        season.demands().forEach(d -> table.row(names.item(d.item()), pounds(d.all()), Long.toString(d.wanted().values().stream()
                .filter(m -> m > 0).count()), pounds(d.wanted().values().stream().mapToLong(m -> m).max().orElse(0)), d.growers().keySet().stream()
                .map(v -> names.vendor(v) + " " + pounds(d.of(v))).collect(Collectors.joining(", ")), pounds(d.elsewhere())));
        page.table(table);
        page.say("A grower gets what it counts on having: first who names the crop among its priorities, then the cheapest.");
    }

    private void commitments(Page page) {
        page.heading("Commitments worth proposing, packs a week");
        TextTable table = new TextTable(TextTable.Column.words("grower"), TextTable.Column.words("crop"), TextTable.Column.words("pack"),
                TextTable.Column.mark("weeks"), TextTable.Column.figure("floor"), TextTable.Column.figure("propose"),
                TextTable.Column.figure("ceiling"), TextTable.Column.figure("now"), TextTable.Column.figure("worth"));
        season.promises().forEach(p -> table.row(names.vendor(p.vendor()), names.item(p.item()), p.pack(), span(p.from(), p.to()),
                Integer.toString(p.floor()), Integer.toString(p.packs()), Integer.toString(p.ceiling()), Integer.toString(p.already()),
                new Cents(p.worth()).toString()));
        if (table.isEmpty()) {
            page.say("None is worth a dollar more than buying week by week.");
            return;
        }
        page.table(table);
        page.say("Committing to all of them is worth " + new Cents(season.promises().stream().mapToLong(Season.Promise::worth).sum())
                + " in the mean against buying week by week. Those worth less than $1 are left out.");
        page.say("Floor: still used in a poor year with low demand. Ceiling: used at most in a good year with high demand. Now: promised in the book.");
        page.say("Reckoned over a poor, a fair and a good year (1 : 2 : 1) and low, middling and high demand. Assumed, common practice without a"
                + " source: of what is not promised, others leave 40 % in a poor year, 90 % in a fair one; a crop counted as sure comes within 8 %"
                + " (one standard deviation), a likely one within 20 %.");
    }

    private void gaps(Page page) {
        page.heading("Weeks without a local crop");
        TextTable table = new TextTable(TextTable.Column.words("crop"), TextTable.Column.mark("weeks"), TextTable.Column.figure("pounds"),
                TextTable.Column.words("dishes that want it"));
        season.gaps().forEach(g -> table.row(names.item(g.item()), span(g.from(), g.to()), pounds(g.mg()), dishes(g.dishes())));
        if (table.isEmpty()) {
            page.say("None: growers count on having some of every crop of theirs in every week that wants it.");
        } else {
            page.table(table);
        }
    }

    private void freezing(Page page) {
        page.heading("Freezing chances");
        TextTable table = new TextTable(TextTable.Column.words("crop"), TextTable.Column.mark("surplus"), TextTable.Column.figure("pounds"),
                TextTable.Column.figure("frozen lb"), TextTable.Column.figure("cu ft"), TextTable.Column.figure("hours"),
                TextTable.Column.figure("worth"), TextTable.Column.words("later eaten by"));
        season.freezing().forEach(f -> table.row(names.item(f.item()), span(f.from(), f.to()), pounds(f.mg()), pounds(f.frozenMg()),
                Long.toString(f.cubicFeet()), String.format(Locale.ROOT, "%.1f", f.minutes() / 60.0), new Cents(f.worth()).toString(), dishes(f.dishes())));
        if (table.isEmpty()) {
            page.say("None: no surplus whose frozen form the book knows and a later dish eats.");
        } else {
            page.table(table);
            page.say("Worth: what the frozen goods would cost, less crop and hands (5 minutes a pound at the dearest overtime; 35 pounds to a cubic foot:"
                    + " common practice, no source). Below zero: not worth the hands. See that the freezer has the room: the book does not say.");
        }
        page.say("Freezing only. Canning, drying, pickling, curing, vacuum: ask your authority first (" + book.kitchen().healthAuthority() + ").");
    }

    private void dishes(Page page) {
        page.heading("Dishes that a season lacks");
        TextTable table = new TextTable(TextTable.Column.mark("season"), TextTable.Column.words("kind"), TextTable.Column.figure("there are"),
                TextTable.Column.figure("turned over"), TextTable.Column.figure("lacks"));
        season.lacks().forEach(l -> table.row(l.season(), l.kind(), Integer.toString(l.have()), Integer.toString(l.need()),
                Integer.toString(l.need() - l.have())));
        if (table.isEmpty()) {
            page.say("None: every line has dishes enough for its gap of " + book.kitchen().gapDays() + " days in every season.");
        } else {
            page.table(table);
        }
        season.unused().stream().collect(Collectors.groupingBy(Season.Unused::season, java.util.TreeMap::new, Collectors.toList()))
                .forEach((name, crops) -> page.say("Growers have it in " + name + " and no dish of that season uses it: "
                        + list(crops, u -> names.item(u.item())) + "."));
    }

    private static <T> String list(List<T> all, Function<T, String> words) {
        return all.stream().map(words).collect(Collectors.joining(", "));
    }

    private String dishes(List<String> recipes) {
        String first = recipes.stream().limit(NAMED).map(names::recipe).collect(Collectors.joining("; "));
        return recipes.size() > NAMED ? first + " and " + (recipes.size() - NAMED) + " more" : first;
    }

    private static String span(IsoWeek from, IsoWeek to) {
        return from.equals(to) ? from.toString() : from.year() == to.year() ? from + ".." + to.toString().substring(5) : from + ".." + to;
    }

    private static String pounds(long mg) {
        return String.format(Locale.ROOT, "%.0f", mg / POUND_MG);
    }

    @Override
    public Rows rows() {
        return switch (part) {
            case DEMAND -> demandRows();
            case COMMITMENTS -> promiseRows();
            case GAPS -> {
                Rows rows = new Rows("item", "item_name", "from", "to", "grams", "dishes");
                season.gaps().forEach(g -> rows.add(g.item(), names.item(g.item()), g.from().toString(), g.to().toString(), grams(g.mg()),
                        String.join(" ", g.dishes())));
                yield rows;
            }
            case FREEZING -> {
                Rows rows = new Rows("item", "frozen_item", "from", "to", "grams", "frozen_grams", "cubic_feet", "minutes", "worth_usd", "dishes");
                season.freezing().forEach(f -> rows.add(f.item(), f.frozen(), f.from().toString(), f.to().toString(), grams(f.mg()),
                        grams(f.frozenMg()), f.cubicFeet(), f.minutes(), Rows.dollars(f.worth()), String.join(" ", f.dishes())));
                yield rows;
            }
            case DISHES -> {
                Rows rows = new Rows("season", "what", "there_are", "turned_over");
                season.lacks().forEach(l -> rows.add(l.season(), l.kind(), l.have(), l.need()));
                season.unused().forEach(u -> rows.add(u.season(), "no dish uses " + u.item(), 0, 1));
                yield rows;
            }
        };
    }

    /** A row for each crop, week and grower; elsewhere has no vendor. */
    private Rows demandRows() {
        Rows rows = new Rows("item", "item_name", "week", "vendor", "grams");
        season.demands().forEach(d -> d.wanted().forEach((week, mg) -> {
            long left = mg;
            for (String v : d.growers().keySet()) {
                long share = d.growers().get(v).getOrDefault(week, 0L);
                left -= share;
                if (share > 0) {
                    rows.add(d.item(), names.item(d.item()), week.toString(), v, grams(share));
                }
            }
            if (left > 0) {
                rows.add(d.item(), names.item(d.item()), week.toString(), "", grams(left));
            }
        }));
        return rows;
    }

    private Rows promiseRows() {
        Rows rows = new Rows("vendor", "vendor_name", "item", "item_name", "pack", "from", "to", "weeks", "floor", "propose", "ceiling", "promised_now",
                "price_usd", "worth_usd");
        season.promises().forEach(p -> rows.add(p.vendor(), names.vendor(p.vendor()), p.item(), names.item(p.item()), p.pack(), p.from().toString(),
                p.to().toString(), p.weeks(), p.floor(), p.packs(), p.ceiling(), p.already(), Rows.dollars(p.price()), Rows.dollars(p.worth())));
        return rows;
    }

    private static long grams(long mg) {
        return Math.round(mg / 1000.0);
    }
}
