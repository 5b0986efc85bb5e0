package croftboard.cli.screen;

import croftboard.book.Promises;
import croftboard.book.Seasons;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The menu: days across, lines down, a run of several days spanning them; events below. */
public final class MenuScreen implements Screen {
    private final Shown shown;
    private final Names names;

    public MenuScreen(Shown shown) {
        this.shown = shown;
        this.names = shown.names();
    }

    @Override
    public String name() {
        return "menu";
    }

    @Override
    public void print(Page page) {
        page.heading("Menu");
        List<WeekPlan.Served> regular = shown.plan().menu().stream().filter(s -> event(s).isEmpty()).toList();
        if (!regular.isEmpty()) {
            TreeSet<LocalDate> days = new TreeSet<>();
            Map<String, List<WeekPlan.Served>> byLine = new LinkedHashMap<>();
            for (WeekPlan.Served s : inLineOrder(regular)) {
                days.addAll(s.days());
                byLine.computeIfAbsent(s.line(), k -> new ArrayList<>()).add(s);
            }
            new MenuGrid(names, List.copyOf(days), byLine).print(page);
        }
        closed(page);
        legend(page);
        events(page);
    }

    private List<WeekPlan.Served> inLineOrder(List<WeekPlan.Served> rows) {
        List<String> order = shown.book().kitchen().lines().stream().map(l -> l.id()).toList();
        return rows.stream().sorted(java.util.Comparator.comparingInt((WeekPlan.Served s) ->
                Math.floorMod(order.indexOf(s.line()), order.size() + 1)).thenComparing(s -> s.days().get(0))).toList();
    }

    private Optional<Seasons.Event> event(WeekPlan.Served served) {
        String before = served.slot().substring(0, Math.max(0, served.slot().indexOf('/')));
        return shown.book().seasons().events().stream().filter(e -> e.id().equals(before)).findFirst();
    }

    private void closed(Page page) {
        shown.book().seasons().closures().forEach((date, why) -> {
            if (croftboard.measure.IsoWeek.of(date).equals(shown.plan().week())) {
                page.say("Closed on " + Dates.day(date) + ": " + why + ".");
            }
        });
    }

    private void legend(Page page) {
        page.say("The number under a dish is the portions to make for its whole run.");
        List<Promises.Coverage> marked = shown.book().kitchen().promises().coverage();
        if (!marked.isEmpty()) {
            page.say("Letters: " + marked.stream().map(c -> c.mark() + " counts for " + PlainText.clean(c.say()))
                    .collect(Collectors.joining("; ")) + ".");
            page.say("Letters are for staff, not for guests. " + Cautions.allergens(shown.book().kitchen()));
        }
    }

    private void events(Page page) {
        Map<String, List<WeekPlan.Served>> byEvent = new LinkedHashMap<>();
        for (WeekPlan.Served s : shown.plan().menu()) {
            event(s).ifPresent(e -> byEvent.computeIfAbsent(e.id(), k -> new ArrayList<>()).add(s));
        }
        byEvent.forEach((id, courses) -> {
            Seasons.Event event = event(courses.get(0)).orElseThrow();
            page.subheading(event.name() + ", " + Dates.day(event.date())
                    + event.service().map(t -> ", served at " + t).orElse(""));
            page.say(event.guarantee() + " guaranteed, and " + event.overage().times(100).toDecimal(0)
                    + " % more made. Diets told: " + (event.diets().isBlank() ? "none" : event.diets()) + ".");
            TextTable table = new TextTable(TextTable.Column.mark("course"), TextTable.Column.words("dish"),
                    TextTable.Column.figure("portions"));
            courses.forEach(c -> table.row(c.line(), dish(c), Integer.toString(c.portions())));
            page.table(table);
        });
    }

    private String dish(WeekPlan.Served served) {
        return served.recipe().map(names::recipe).orElse("(nothing)");
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("slot", "line", "event", "first_day", "last_day", "days", "dish", "dish_name", "portions",
                "marks", "kept", "expected_sales_usd");
        for (WeekPlan.Served s : shown.plan().menu()) {
            rows.add(s.slot(), names.line(s.line()), event(s).map(Seasons.Event::name), s.days().get(0),
                    s.days().get(s.days().size() - 1), s.days().size(), s.recipe(), s.recipe().map(names::recipe),
                    s.portions(), s.marks(), s.kept(), Rows.dollars(s.sales()));
        }
        return rows;
    }
}
