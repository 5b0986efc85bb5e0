package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.plan.Rotation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** What differs between two rotations: dishes by week and place, and money; nothing that is equal. */
public final class RotationComparisonScreen implements Screen {
    private final Names names;
    private final String before;
    private final String after;
    private final Rotation was;
    private final Rotation is;

    /** @param before, after names of the two as they are typed */
    public RotationComparisonScreen(Book book, String before, String after, Rotation was, Rotation is) {
        names = new Names(book);
        this.before = before;
        this.after = after;
        this.was = was;
        this.is = is;
    }

    @Override
    public String name() {
        return "differences";
    }

    private record Change(IsoWeek week, String slot, Optional<String> was, Optional<String> is) { }

    /** Of the weeks that both have. */
    private List<Change> changes() {
        List<Change> all = new ArrayList<>();
        for (Rotation.Week week : was.weeks()) {
            is.week(week.week()).ifPresent(other -> {
                Map<String, String> a = week.plan().choices();
                Map<String, String> b = other.plan().choices();
                TreeSet<String> slots = new TreeSet<>(a.keySet());
                slots.addAll(b.keySet());
                slots.stream().filter(s -> !Optional.ofNullable(a.get(s)).equals(Optional.ofNullable(b.get(s))))
                        .forEach(s -> all.add(new Change(week.week(), s, Optional.ofNullable(a.get(s)),
                                Optional.ofNullable(b.get(s)))));
            });
        }
        return all;
    }

    @Override
    public void print(Page page) {
        page.heading("What differs from " + before + " to " + after);
        List<Change> changes = changes();
        if (!changes.isEmpty()) {
            TextTable table = new TextTable(TextTable.Column.mark("week"), TextTable.Column.mark("place"),
                    TextTable.Column.words("before"), TextTable.Column.words("after"));
            changes.forEach(c -> table.row(c.week.toString(), c.slot, dish(c.was), dish(c.is)));
            page.table(table);
        }
        long common = was.weeks().stream().filter(w -> is.week(w.week()).isPresent()).count();
        page.say(common == 0 ? "They have no week in common." : changes.size() + " dishes differ in the "
                + RotationHeadline.count((int) common, "week") + " that both have.");
        page.say("Worth " + new Cents(is.value()) + " over " + RotationHeadline.count(is.weeks().size(), "week") + " against "
                + new Cents(was.value()) + " over " + RotationHeadline.count(was.weeks().size(), "week") + "; orders "
                + new Cents(is.account().purchases()) + " against " + new Cents(was.account().purchases())
                + "; different dishes " + is.variety().dishes() + " against " + was.variety().dishes() + ".");
    }

    private String dish(Optional<String> recipe) {
        return recipe.map(names::recipe).orElse("(nothing)");
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("week", "slot", "before", "after");
        changes().forEach(c -> rows.add(c.week.toString(), c.slot, c.was, c.is));
        return rows;
    }
}
