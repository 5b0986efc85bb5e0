package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.plan.ahead.MonthCoverage;
import croftboard.plan.ahead.PlannedWeek;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Who finds a main on which days of a month: who eats poorly first, then each diet's days, then the vegan dishes. */
public final class MonthCoverageScreen implements Screen {
    private static final int DATES = 6;
    private final Book book;
    private final Names names;
    private final MonthCoverage month;

    public MonthCoverageScreen(Book book, MonthCoverage month) {
        this.book = book;
        this.names = new Names(book);
        this.month = month;
    }

    @Override
    public String name() {
        return "coverage";
    }

    @Override
    public void print(Page page) {
        page.heading("Who finds a " + month.course() + " dish, " + month.span());
        page.say(month.days().size() + " days are planned: " + month.planned().stream().map(PlannedWeek::from).distinct()
                .collect(Collectors.joining(", ")) + ".");
        if (!month.open().isEmpty()) {
            page.say("Not planned and not counted: " + month.open().stream().map(Object::toString).collect(Collectors.joining(", "))
                    + ".");
        }
        page.gap();
        poorly(page);
        month.diets().forEach(d -> days(page, d));
        month.diets().stream().filter(d -> d.eater().isVegan()).findFirst().ifPresent(d -> often(page, d));
        page.gap();
        page.say(Cautions.allergens(book.kitchen()));
    }

    private void poorly(Page page) {
        TextTable table = new TextTable(TextTable.Column.words("for"), TextTable.Column.figure("days"),
                TextTable.Column.figure("dishes"), TextTable.Column.words("eats poorly"));
        month.diets().forEach(d -> table.row(d.eater().words(), d.mains().size() + " of " + month.days().size(),
                Integer.toString(d.dishes().size()), String.join("; ", d.poorly(month.days()))));
        page.table(table);
        if (month.diets().stream().allMatch(d -> d.poorly(month.days()).isEmpty())) {
            page.say("Nobody eats poorly.");
        }
    }

    /** Weeks down, days across: how many dishes, {@code -} none, {@code ?} only one of which something is not stated. */
    private void days(Page page, MonthCoverage.Diet diet) {
        page.subheading("Mains, " + diet.eater().words());
        TreeSet<DayOfWeek> weekdays = month.days().stream().map(LocalDate::getDayOfWeek)
                .collect(Collectors.toCollection(TreeSet::new));
        List<TextTable.Column> columns = new ArrayList<>(List.of(TextTable.Column.mark("week")));
        weekdays.forEach(d -> columns.add(TextTable.Column.mark(d.name().charAt(0) + d.name().substring(1, 3).toLowerCase(Locale.ROOT))));
        TextTable table = new TextTable(columns.toArray(TextTable.Column[]::new));
        for (PlannedWeek week : month.planned()) {
            List<String> row = new ArrayList<>(List.of(week.week().toString()));
            weekdays.forEach(d -> row.add(cell(diet, week.week().day(d))));
            table.row(row.toArray(String[]::new));
        }
        page.table(table);
        if (!diet.perhaps().isEmpty()) {
            page.say("?: a dish would do, but its recipe holds something that is not stated. It counts for nobody.");
        }
    }

    private String cell(MonthCoverage.Diet diet, LocalDate day) {
        if (!month.days().contains(day)) {
            return "";
        }
        return diet.mains().containsKey(day) ? Integer.toString(diet.mains().get(day).size()) : diet.perhaps().contains(day) ? "?" : "-";
    }

    private void often(Page page, MonthCoverage.Diet vegan) {
        page.subheading("How often the same vegan dish");
        TextTable table = new TextTable(TextTable.Column.words("dish"), TextTable.Column.figure("times"),
                TextTable.Column.figure("days between"), TextTable.Column.words("on"));
        vegan.dishes().forEach(o -> table.row(names.recipe(o.recipe()), Integer.toString(o.days().size()),
                o.nearest().map(Object::toString).orElse(""), dates(o.days())));
        page.table(table);
        if (vegan.dishes().isEmpty()) {
            page.say("There is none.");
        }
    }

    private static String dates(List<LocalDate> days) {
        String first = days.stream().limit(DATES).map(Dates::day).collect(Collectors.joining(", "));
        return days.size() > DATES ? first + " and " + (days.size() - DATES) + " more" : first;
    }

    /** A row for each diet and day. */
    @Override
    public Rows rows() {
        Rows rows = new Rows("for", "week", "day", "mains", "not_stated", "dishes");
        month.diets().forEach(d -> month.days().forEach(day -> rows.add(d.eater().words(),
                croftboard.measure.IsoWeek.of(day).toString(), day, d.mains().getOrDefault(day, List.of()).size(),
                d.perhaps().contains(day), String.join(" ", d.mains().getOrDefault(day, List.of())))));
        return rows;
    }
}
