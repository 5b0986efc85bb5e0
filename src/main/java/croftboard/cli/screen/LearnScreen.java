package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Learned;
import croftboard.book.Seasons;
import croftboard.forecast.Learning;
import croftboard.measure.Ratio;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What was learned: the figures, the larger changes with their reasons, and the days that were set aside. */
public final class LearnScreen implements Screen {
    private static final double WORTH_SAYING = 0.05;
    private static final int MOST = 12;
    private final Names names;
    private final Seasons before;
    private final Book book;
    private final Learned now;
    private final Learning learning;

    /** @param book as it was before */
    public LearnScreen(Book book, Learned now, Learning learning) {
        this.names = new Names(book);
        this.before = book.seasons();
        this.book = book;
        this.now = now;
        this.learning = learning;
    }

    private record Change(String what, double was, double is, int places, int seen, int ranOut) {
        double size() {
            return was == 0 ? 1 : is / was - 1;
        }

        String words() {
            String by = seen == 0 ? "never sold: as its kin do" : days(seen) + ", " + (ranOut == 0 ? "none" : ranOut) + " ran out";
            return what + ": " + figure(was, places) + " -> " + figure(is, places) + " (" + percent(size()) + "): " + by + ".";
        }
    }

    private static String days(int n) {
        return n == 1 ? "1 day" : n + " days";
    }

    private static String figure(double of, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", of);
    }

    private static String percent(double of) {
        return String.format(Locale.ROOT, "%+.0f %%", 100 * of);
    }

    @Override
    public String name() {
        return "learn";
    }

    @Override
    public void print(Page page) {
        page.heading("Learned through " + now.through());
        page.say(days(now.days()) + " of a dish on a line, " + now.ranOut() + " of which ran out. A day that ran out counts as \"at"
                + " least\", or up to its hour where that was written down. Portions are of a dish of average draw.");
        page.gap();
        lines(page);
        changes(page, "Larger changes of lines, portions a day", lineChanges());
        changes(page, "Larger changes of dishes, draw", dishChanges());
        odd(page);
        passed(page);
    }

    private void lines(Page page) {
        List<DayOfWeek> open = List.of(DayOfWeek.values()).stream().filter(d -> book.kitchen().open().contains(d)).toList();
        List<TextTable.Column> columns = new ArrayList<>(List.of(TextTable.Column.words("line")));
        open.forEach(d -> columns.add(TextTable.Column.figure(word(d))));
        columns.addAll(List.of(TextTable.Column.figure("cv"), TextTable.Column.figure("days"), TextTable.Column.figure("ran out")));
        TextTable table = new TextTable(columns.toArray(TextTable.Column[]::new));
        now.lines().forEach((id, line) -> {
            List<String> row = new ArrayList<>(List.of(names.line(id)));
            open.forEach(d -> row.add(line.days().containsKey(d) ? figure(line.days().get(d).portions().toDouble(), 1) : "-"));
            row.addAll(List.of(figure(line.cv().toDouble(), 2), Integer.toString(line.seen()),
                    Integer.toString(line.days().values().stream().mapToInt(Learned.Day::ranOut).sum())));
            table.row(row.toArray(String[]::new));
        });
        page.table(table);
    }

    private static String word(DayOfWeek day) {
        return day.name().substring(0, 1) + day.name().substring(1, 3).toLowerCase(Locale.ROOT);
    }

    private double was(String line, DayOfWeek day) {
        Learned.Line old = before.learned().map(l -> l.lines().get(line)).orElse(null);
        Ratio own = before.demand().containsKey(line) ? before.demand().get(line).mean().getOrDefault(day, Ratio.ZERO) : Ratio.ZERO;
        return (old == null || !old.days().containsKey(day) ? own : old.days().get(day).portions()).toDouble();
    }

    private double wasDraw(String dish) {
        return before.draw(book.recipes().get(dish)).toDouble();
    }

    private List<Change> lineChanges() {
        List<Change> all = new ArrayList<>();
        now.lines().forEach((id, line) -> line.days().forEach((day, d) -> all.add(new Change(names.line(id) + ", " + word(day),
                was(id, day), d.portions().toDouble(), 1, d.seen(), d.ranOut()))));
        return larger(all);
    }

    private List<Change> dishChanges() {
        List<Change> all = new ArrayList<>();
        now.dishes().forEach((id, d) -> all.add(new Change(names.recipe(id), wasDraw(id), d.draw().toDouble(), 2, d.seen(), d.ranOut())));
        return larger(all);
    }

    private static List<Change> larger(List<Change> all) {
        return all.stream().filter(c -> Math.abs(c.size()) >= WORTH_SAYING)
                .sorted(Comparator.comparingDouble((Change c) -> -Math.abs(c.size())).thenComparing(Change::what)).toList();
    }

    private static void changes(Page page, String heading, List<Change> larger) {
        page.subheading(heading);
        if (larger.isEmpty()) {
            page.say("None of 5 % or more.");
        }
        larger.stream().limit(MOST).forEach(c -> page.item("- ", c.words()));
        if (larger.size() > MOST) {
            page.say("and " + (larger.size() - MOST) + " more: --format csv lists all.");
        }
    }

    private void odd(Page page) {
        if (!learning.odd().isEmpty()) {
            page.subheading("Days far from what was expected, weighed less. An event? A wrong count?");
            learning.odd().stream().limit(MOST).forEach(o -> page.item("- ", Dates.full(o.day().date()) + ", " + names.line(o.day().line())
                    + ", " + names.recipe(o.day().dish()) + ": sold " + o.day().sold() + ", expected " + figure(o.expected(), 0) + "."));
            if (learning.odd().size() > MOST) {
                page.say("and " + (learning.odd().size() - MOST) + " more.");
            }
        }
    }

    private void passed(Page page) {
        Map<String, Integer> why = new TreeMap<>();
        learning.passed().forEach(p -> why.merge(p.why(), 1, Integer::sum));
        if (!why.isEmpty()) {
            page.subheading("Set aside");
            why.forEach((words, n) -> page.item("- ", days(n) + ": " + words + "."));
        }
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("kind", "id", "day", "was", "now", "seen", "ran_out");
        now.lines().forEach((id, line) -> line.days().forEach((day, d) -> rows.add("line", id, word(day).toLowerCase(Locale.ROOT),
                figure(was(id, day), 1), d.portions().toDecimal(1), d.seen(), d.ranOut())));
        now.dishes().forEach((id, d) -> rows.add("dish", id, "", figure(wasDraw(id), 3), d.draw().toDecimal(3), d.seen(), d.ranOut()));
        now.weeks().forEach(w -> rows.add("week", w.weeks().toString(), "", "", w.times().toDecimal(3), "", ""));
        return rows;
    }
}
