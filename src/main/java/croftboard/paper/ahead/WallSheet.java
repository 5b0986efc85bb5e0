package croftboard.paper.ahead;

import croftboard.book.Kitchen;
import croftboard.measure.IsoWeek;
import croftboard.paper.Block;
import croftboard.paper.Data;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.When;
import croftboard.plan.WeekPlan;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** All weeks on one sheet for the wall: weeks across, lines and days down. More than five weeks go on more sheets. */
public final class WallSheet {
    /** Weeks that stand side by side in type that is read from a step away. */
    private static final int ACROSS = 5;
    private static final int LINE_WIDTH = 12;
    private static final int DAY_WIDTH = 9;
    private static final int ALL = 100;
    private final AheadContext context;
    private final List<WeekPlan> plans;

    private WallSheet(AheadContext context, List<WeekPlan> plans) {
        this.context = context;
        this.plans = plans;
    }

    public static List<Sheet> of(AheadContext context) {
        List<Sheet> sheets = new ArrayList<>();
        List<WeekPlan> all = context.plans();
        int pages = (all.size() + ACROSS - 1) / ACROSS;
        for (int p = 0; p < pages; p++) {
            List<WeekPlan> plans = all.subList(p * all.size() / pages, (p + 1) * all.size() / pages);
            sheets.add(new WallSheet(context, plans).sheet(pages == 1 ? "wall" : "wall-" + (p + 1)));
        }
        return sheets;
    }

    private Sheet sheet(String id) {
        IsoWeek first = plans.get(0).week();
        IsoWeek last = plans.get(plans.size() - 1).week();
        Block.Table table = table();
        List<Block> blocks = new ArrayList<>(List.of(table));
        String always = context.book().kitchen().lines().stream().filter(l -> l.standing().isPresent())
                .map(l -> l.name() + ": " + context.called().recipe(l.standing().orElseThrow())).collect(Collectors.joining("; "));
        if (!always.isEmpty()) {
            blocks.add(new Block.Text("Always: " + always + "."));
        }
        return new Sheet(SheetKind.WALL, id, "Menu, " + When.day(first.monday()) + " to " + When.day(last.day(DayOfWeek.SUNDAY)) + " " + last.day(DayOfWeek.SUNDAY).getYear(),
                List.of(), blocks, data(), new Sheet.Look(true, new WallFit(context.book().kitchen().paper(), table).type(), true, false));
    }

    private Block.Table table() {
        List<Block.Column> columns = new ArrayList<>(List.of(Block.Column.words("Line", LINE_WIDTH), Block.Column.words("Day", DAY_WIDTH)));
        plans.forEach(p -> columns.add(Block.Column.words(When.day(p.week().monday()).substring(4) + " (" + p.week().toString().substring(5) + ")", ALL / plans.size())));
        List<Block.Row> rows = new ArrayList<>();
        context.book().kitchen().lines().stream().filter(l -> l.standing().isEmpty()).forEach(l -> rows(l, rows));
        events(rows);
        return new Block.Table(columns, rows);
    }

    private void rows(Kitchen.ServiceLine line, List<Block.Row> rows) {
        boolean first = true;
        for (DayOfWeek day : starts(line.id())) {
            List<String> cells = new ArrayList<>(List.of(first ? line.name() : "", days(line.id(), day)));
            plans.forEach(p -> cells.add(dish(p, line.id(), day)));
            rows.add(new Block.Row(cells, first ? Block.Kind.TOTAL : Block.Kind.PLAIN));
            first = false;
        }
    }

    /** Weekdays on which a dish of the line begins in any of the weeks. */
    private TreeSet<DayOfWeek> starts(String line) {
        return plans.stream().flatMap(p -> p.menu().stream()).filter(s -> s.line().equals(line) && context.book().kitchen().lines()
                .stream().anyMatch(l -> l.id().equals(s.line()))).map(s -> s.days().get(0).getDayOfWeek())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** {@code Mon-Wed}, the longest that any week has. */
    private String days(String line, DayOfWeek from) {
        LocalDate last = null;
        String words = name(from);
        int most = 1;
        for (WeekPlan p : plans) {
            for (WeekPlan.Served s : p.menu()) {
                if (s.line().equals(line) && s.days().get(0).getDayOfWeek() == from && s.days().size() > most) {
                    most = s.days().size();
                    last = s.days().get(most - 1);
                    words = name(from) + "-" + name(last.getDayOfWeek());
                }
            }
        }
        return words;
    }

    private static String name(DayOfWeek day) {
        return day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    private String dish(WeekPlan plan, String line, DayOfWeek day) {
        Optional<WeekPlan.Served> served = plan.menu().stream()
                .filter(s -> s.line().equals(line) && s.days().get(0).getDayOfWeek() == day).findFirst();
        return served.map(s -> s.recipe().map(r -> context.called().recipe(r))
                .orElse("(nothing)")).orElse("closed");
    }

    /** Meals beside the case: a row for each. */
    private void events(List<Block.Row> rows) {
        Map<String, List<String>> events = new LinkedHashMap<>();
        for (int p = 0; p < plans.size(); p++) {
            WeekPlan plan = plans.get(p);
            for (WeekPlan.Served s : plan.menu()) {
                boolean event = context.book().kitchen().lines().stream().noneMatch(l -> l.id().equals(s.line()));
                if (event) {
                    String name = s.slot().substring(0, Math.max(0, s.slot().indexOf('/')));
                    List<String> cells = events.computeIfAbsent(name, e -> new ArrayList<>(java.util.Collections.nCopies(plans.size(), "")));
                    String dish = s.recipe().map(context.called()::recipe).orElse("(nothing)");
                    cells.set(p, cells.get(p).isEmpty() ? When.day(s.days().get(0)) + ": " + dish : cells.get(p) + "; " + dish);
                }
            }
        }
        events.forEach((id, dishes) -> {
            List<String> cells = new ArrayList<>(List.of("Event", ""));
            cells.addAll(dishes);
            rows.add(new Block.Row(cells, Block.Kind.TOTAL));
        });
    }

    private Data data() {
        return RotationTables.menu(context, plans);
    }
}
