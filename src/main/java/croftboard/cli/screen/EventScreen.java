package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Seasons.Course;
import croftboard.book.Seasons.Event;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.util.List;
import java.util.Locale;

/** Events of the book: all in a list, or one with its menu. */
public final class EventScreen implements Screen {
    private final Names names;
    private final List<Event> events;
    private final boolean whole;

    private EventScreen(Book book, List<Event> events, boolean whole) {
        this.names = new Names(book);
        this.events = events;
        this.whole = whole;
    }

    public static EventScreen all(Book book) {
        return new EventScreen(book, book.seasons().events(), false);
    }

    public static EventScreen one(Book book, Event event) {
        return new EventScreen(book, List.of(event), true);
    }

    @Override
    public String name() {
        return "event";
    }

    @Override
    public void print(Page page) {
        if (whole) {
            events.forEach(e -> one(page, e));
            return;
        }
        page.heading("Events");
        if (events.isEmpty()) {
            page.say("The book has none: they stand in seasons/events.yaml.");
            return;
        }
        TextTable table = new TextTable(TextTable.Column.mark("id"), TextTable.Column.words("name"), TextTable.Column.mark("date"),
                TextTable.Column.mark("week"), TextTable.Column.figure("guarantee"), TextTable.Column.figure("food for"));
        events.forEach(e -> table.row(e.id(), e.name(), Dates.full(e.date()), IsoWeek.of(e.date()).toString(),
                Integer.toString(e.guarantee()), Long.toString(e.heads().ceil())));
        page.table(table);
    }

    private void one(Page page, Event e) {
        page.heading(e.name());
        page.say(Dates.full(e.date()) + e.service().map(t -> ", served at " + t).orElse("") + ", week " + IsoWeek.of(e.date()) + ".");
        page.say("Guarantee " + e.guarantee() + ", and " + percent(e.overage()) + " above it: food for " + e.heads().ceil() + ".");
        page.say("Diets: " + (e.diets().isEmpty() ? "none told" : e.diets()) + ". Price " + e.price() + " a head.");
        TextTable table = new TextTable(TextTable.Column.mark("course"), TextTable.Column.words("dish"),
                TextTable.Column.figure("of heads"), TextTable.Column.figure("portions"));
        e.menu().forEach(c -> table.row(c.id(), dish(c), percent(c.share()), Integer.toString(e.portions(c))));
        page.table(table);
    }

    private String dish(Course c) {
        return c.dish().map(names::recipe).orElseGet(() -> "the plan chooses, " + c.course()
                + c.diet().map(d -> ", " + d.name().toLowerCase(Locale.ROOT)).orElse(""));
    }

    private static String percent(Ratio share) {
        return share.times(100).toDecimal(1).stripTrailingZeros().toPlainString() + " %";
    }

    /** What another guarantee changes. */
    public static void changed(Page page, Event was, Event now) {
        page.say(now.name() + ", " + Dates.full(now.date()) + ": guarantee " + was.guarantee() + " -> " + now.guarantee()
                + ", food for " + was.heads().ceil() + " -> " + now.heads().ceil() + ".");
        for (int i = 0; i < now.menu().size(); i++) {
            page.item("- ", now.menu().get(i).id() + ": " + was.portions(was.menu().get(i)) + " -> "
                    + now.portions(now.menu().get(i)) + " portions.");
        }
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("event", "name", "date", "service", "guarantee", "overage", "food_for", "course", "dish", "share",
                "portions");
        for (Event e : events) {
            for (Course c : e.menu()) {
                rows.add(e.id(), e.name(), e.date(), e.service(), e.guarantee(), e.overage().toDecimal(4), e.heads().ceil(), c.id(),
                        c.dish(), c.share().toDecimal(4), e.portions(c));
            }
        }
        return rows;
    }
}
