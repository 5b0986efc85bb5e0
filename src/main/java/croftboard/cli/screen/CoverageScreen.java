package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Promises: those of every day as a grid, the others as a list; kept or broken, and what each break costs. */
public final class CoverageScreen implements Screen {
    private static final int LEAST_WORDS = 20;
    private static final int GRID_CELL = 9;
    private final Shown shown;
    private final boolean brokenOnly;

    public CoverageScreen(Shown shown) {
        this(shown, false);
    }

    private CoverageScreen(Shown shown, boolean brokenOnly) {
        this.shown = shown;
        this.brokenOnly = brokenOnly;
    }

    /** Without the promises that are kept. */
    public static CoverageScreen brokenOnly(Shown shown) {
        return new CoverageScreen(shown, true);
    }

    @Override
    public String name() {
        return "coverage";
    }

    @Override
    public void print(Page page) {
        page.heading("Promises");
        Map<String, List<WeekPlan.Promise>> daily = new LinkedHashMap<>();
        List<WeekPlan.Promise> others = new ArrayList<>();
        for (WeekPlan.Promise p : shown.plan().promises()) {
            if (isDaily(p)) {
                daily.computeIfAbsent(p.id(), k -> new ArrayList<>()).add(p);
            } else if (!brokenOnly || !p.kept()) {
                others.add(p);
            }
        }
        if (!brokenOnly) {
            days(page, daily);
            page.gap();
        }
        if (!others.isEmpty()) {
            page.table(list(others));
        }
        broken(page);
        if (!brokenOnly) {
            page.say(Cautions.allergens(shown.book().kitchen()));
        }
    }

    private static boolean isDaily(WeekPlan.Promise promise) {
        return promise.id().startsWith("coverage ") && promise.day().isPresent();
    }

    private void days(Page page, Map<String, List<WeekPlan.Promise>> daily) {
        TreeSet<LocalDate> dates = new TreeSet<>();
        daily.values().forEach(ps -> ps.forEach(p -> dates.add(p.day().orElseThrow())));
        List<LocalDate> all = List.copyOf(dates);
        int fit = Math.max(1, (page.width() - LEAST_WORDS) / GRID_CELL);
        for (int first = 0; first < all.size(); first += fit) {
            List<LocalDate> here = all.subList(first, Math.min(all.size(), first + fit));
            page.gap();
            page.table(grid(daily, here));
        }
    }

    private static TextTable grid(Map<String, List<WeekPlan.Promise>> daily, List<LocalDate> here) {
        List<TextTable.Column> columns = new ArrayList<>(List.of(TextTable.Column.words("each day")));
        here.forEach(d -> columns.add(TextTable.Column.mark(Dates.shortDay(d))));
        TextTable table = new TextTable(columns.toArray(TextTable.Column[]::new));
        daily.values().forEach(promises -> {
            List<String> row = new ArrayList<>(List.of(promises.get(0).say()));
            here.forEach(d -> row.add(promises.stream().filter(p -> p.day().orElseThrow().equals(d)).findFirst()
                    .map(CoverageScreen::word).orElse("-")));
            table.row(row.toArray(String[]::new));
        });
        return table;
    }

    private static String word(WeekPlan.Promise promise) {
        return promise.kept() ? "kept" : promise.amount() + " short";
    }

    private TextTable list(List<WeekPlan.Promise> promises) {
        TextTable table = new TextTable(TextTable.Column.words("promise"), TextTable.Column.mark("when"),
                TextTable.Column.mark(""), TextTable.Column.words("by how much"), TextTable.Column.figure("cost"));
        promises.forEach(p -> table.row(p.say(), p.day().map(Dates::day).orElse("week"), p.kept() ? "kept" : "broken",
                p.kept() ? "" : howMuch(p), p.kept() ? "" : new Cents(p.cents()).toString()));
        return table;
    }

    /** In the unit of the promise: money, minutes or dishes. */
    private static String howMuch(WeekPlan.Promise p) {
        return switch (p.id().split(" ")[0]) {
            case "local-share" -> new Cents(p.amount()) + " short";
            case "food-cost" -> new Cents(p.amount()) + " over";
            case "even-days" -> p.amount() + " min";
            case "filled-lines" -> p.amount() + " empty";
            case "coverage" -> p.amount() + " short";
            default -> p.amount() + " too many";
        };
    }

    private void broken(Page page) {
        long cents = shown.plan().promises().stream().mapToLong(WeekPlan.Promise::cents).sum();
        long count = shown.plan().promises().stream().filter(p -> !p.kept()).count();
        page.gap();
        page.say(count == 0 ? "Every promise is kept."
                : "Broken promises: " + count + ", together " + new Cents(cents) + ".");
        shown.plan().promises().stream().filter(p -> isDaily(p) && !p.kept()).forEach(p -> page.item("- ",
                Dates.day(p.day().orElseThrow()) + ": " + p.say() + ", " + p.amount() + " short, "
                        + new Cents(p.cents()) + "."));
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("promise", "say", "day", "kept", "amount", "cost_usd");
        shown.plan().promises().forEach(p -> rows.add(p.id(), p.say(), p.day(), p.kept(), p.amount(),
                Rows.dollars(p.cents())));
        return rows;
    }
}
