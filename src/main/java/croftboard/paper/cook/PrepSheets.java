package croftboard.paper.cook;

import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.plan.work.Making;
import croftboard.plan.work.PrepWork;
import croftboard.plan.work.WorkingOrder;
import croftboard.safety.Caution;
import croftboard.safety.Rule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Sheet 3: what one station makes, cuts and weighs on one day, in an order that hands and equipment allow. */
public final class PrepSheets implements SheetMaker {
    @Override
    public SheetKind kind() {
        return SheetKind.PREP;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        CookWeek week = new CookWeek(context);
        List<Sheet> sheets = new ArrayList<>();
        for (PrepWork.Day day : days(context)) {
            for (PrepWork.Bench bench : day.benches()) {
                sheet(week, day.date(), bench).ifPresent(sheets::add);
            }
        }
        return sheets;
    }

    /** The plan's days, and those on which a station only cuts for later days. */
    private static List<PrepWork.Day> days(PaperContext context) {
        TreeMap<LocalDate, List<PrepWork.Bench>> days = new TreeMap<>();
        for (PrepWork.Day d : new PrepWork(context.book(), context.plan()).days()) {
            days.computeIfAbsent(d.date(), k -> new ArrayList<>()).addAll(d.benches());
            for (PrepWork.Ahead a : d.ahead()) {
                LocalDate cut = a.making().day().minusDays(a.item().cutAhead());
                if (a.item().cutAhead() > 0) {
                    addBench(context.book().kitchen(), days.computeIfAbsent(cut, k -> new ArrayList<>()), cut,
                            a.making().stations().get(0));
                }
            }
        }
        return days.entrySet().stream().filter(e -> context.filters().wants(e.getKey()))
                .map(e -> new PrepWork.Day(e.getKey(), e.getValue(), List.of())).toList();
    }

    private static void addBench(Kitchen kitchen, List<PrepWork.Bench> benches, LocalDate day, String station) {
        if (benches.stream().noneMatch(b -> b.station().id().equals(station))) {
            kitchen.stations().stream().filter(s -> s.id().equals(station)).forEach(s -> benches.add(new PrepWork.Bench(s,
                    kitchen.handsMinutes(station, day.getDayOfWeek()), 0, List.of(), List.of())));
        }
    }

    /** None for a station that only takes deliveries in: purchase orders and the order calendar are its sheets. */
    private static Optional<Sheet> sheet(CookWeek week, LocalDate day, PrepWork.Bench bench) {
        String station = bench.station().id();
        List<WorkingOrder.Task> tasks = week.orderOn(day).stream()
                .filter(t -> t.making().stations().contains(station)).toList();
        List<PrepLines.Line> lines = week.prepLines(day, station);
        if (tasks.isEmpty() && lines.isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>();
        if (!bench.received().isEmpty()) {
            blocks.add(new Block.Heading(2, "Take in, and check against the purchase orders"));
            blocks.add(new Block.Ticks(bench.received().stream().map(week.called::vendor).toList()));
        }
        if (!tasks.isEmpty()) {
            blocks.add(new Block.Heading(2, "Make, in this order"));
            blocks.add(new Block.Text("\u25cf\u25cf\u25cf first: the clock runs long, or other work waits for it."
                    + " \u25cf\u25cf today. \u25cf for a later day."));
            blocks.add(makings(week, station, tasks));
            equipment(week, day, tasks, blocks);
        }
        items(week, day, lines, blocks);
        if (!tasks.isEmpty()) {
            blocks.add(new Block.Text(cooling(week)));
        }
        return Optional.of(new Sheet(SheetKind.PREP, "prep-" + day + (station.isEmpty() ? ".none" : "-" + station),
                "Prep: " + bench.station().name() + ", " + When.full(day), List.of(hands(bench)), blocks,
                PrepData.of(week, day, station, tasks, lines), Sheet.Look.BIG.wide(),
                week.behind(makings(tasks, lines))));
    }

    /** What is made, and what is cut for later. */
    private static List<Making> makings(List<WorkingOrder.Task> tasks, List<PrepLines.Line> lines) {
        List<Making> all = new ArrayList<>(tasks.stream().map(WorkingOrder.Task::making).toList());
        lines.forEach(l -> all.addAll(l.users()));
        return all;
    }

    private static String hands(PrepWork.Bench bench) {
        long over = bench.used() - bench.hands();
        long limit = bench.station().overtimeLimitMinutes();
        return "Hands: " + CookWeek.minutes(bench.used()) + " of work, " + CookWeek.minutes(bench.hands()) + " on the rota"
                + (over <= 0 ? "." : ": " + CookWeek.minutes(over) + " overtime"
                + (over > limit ? ", MORE THAN THE " + CookWeek.minutes(limit) + " THERE IS." : "."));
    }

    private static Block makings(CookWeek week, String station, List<WorkingOrder.Task> tasks) {
        List<Row> rows = new ArrayList<>();
        int number = 1;
        for (WorkingOrder.Task t : tasks) {
            Making m = t.making();
            rows.add(Row.of(CookWeek.BOX, CookWeek.dots(t.urgency()), number++ + ". " + m.recipe().name() + "\nfor "
                    + week.purpose(m) + itsGoods(week, m, station), howMuch(m), week.neededBy(m) + "\n" + When.day(m.useBy()),
                    CookWeek.minutes(m.minutesAt(station))
                            + (m.unattended().signum() == 0 ? "" : "\n+ " + CookAmounts.minutes(m.unattended()))));
        }
        return new Block.Table(List.of(Column.mark("", 4), Column.words("", 6), Column.words("Make", 46),
                Column.words("How much", 16), Column.words("Needed by,\nkeeps until", 15),
                Column.figure("Hands,\n+ by itself", 17)), rows);
    }

    /** A making at several stations has its ingredients on the list of the first. */
    private static String itsGoods(CookWeek week, Making m, String station) {
        String first = m.stations().get(0);
        return first.equals(station) ? "" : "\nwhat goes in is on the list of: " + week.called.station(first);
    }

    static String howMuch(Making m) {
        return (m.portions().isPresent() ? m.portions().get() + " portions" : CookAmounts.mass(m.grams())) + "\n"
                + CookWeek.batches(m.batches());
    }

    /** What all stations together put into the equipment that this one uses. */
    private static void equipment(CookWeek week, LocalDate day, List<WorkingOrder.Task> tasks, List<Block> blocks) {
        List<String> words = new ArrayList<>();
        for (Kitchen.Equipment e : week.kitchen().equipment()) {
            if (!e.held() && tasks.stream().anyMatch(t -> units(t.making(), e).signum() > 0)) {
                long all = week.on(day).stream().mapToLong(m -> units(m, e).ceil()).sum();
                words.add(e.name() + " " + all + e.perDay().map(n -> " of " + n).orElse("") + " " + e.unit());
            }
        }
        if (!words.isEmpty()) {
            blocks.add(new Block.Text("Today, all stations together: " + String.join("; ", words) + "."));
        }
    }

    static Ratio units(Making making, Kitchen.Equipment e) {
        return making.recipe().steps().stream().map((Recipe.Step s) -> s.uses().getOrDefault(e.id(), Ratio.ZERO))
                .reduce(Ratio.ZERO, Ratio::plus).times(making.batches());
    }

    private static void items(CookWeek week, LocalDate day, List<PrepLines.Line> lines, List<Block> blocks) {
        List<Row> rows = new ArrayList<>();
        group(week, "Cut", lines.stream().filter(l -> l.cut().isPresent() && l.useOn().equals(day)).toList(), day, rows);
        group(week, "Weigh", lines.stream().filter(l -> l.cut().isEmpty() && l.useOn().equals(day)).toList(), day, rows);
        group(week, "Start for a later day", lines.stream().filter(l -> l.useOn().isAfter(day)).toList(), day, rows);
        if (!rows.isEmpty()) {
            blocks.add(new Block.Heading(2, "Get ready"));
            if (lines.stream().anyMatch(l -> l.useOn().equals(day))) {
                blocks.add(new Block.Text("Needed by: the numbers above of the makings that ask for it."));
            }
            blocks.add(new Block.Table(List.of(Column.mark("", 4), Column.words("", 6), Column.words("Item, cut", 54),
                    Column.figure("As bought", 14), Column.figure("Ready", 15), Column.words("Needed by", 13)), rows));
        }
    }

    private static void group(CookWeek week, String head, List<PrepLines.Line> lines, LocalDate day, List<Row> rows) {
        if (!lines.isEmpty()) {
            rows.add(Row.group(head));
        }
        for (PrepLines.Line l : lines) {
            boolean today = l.useOn().equals(day);
            rows.add(Row.of(CookWeek.BOX, CookWeek.dots(l.urgency()), name(week, l, day)
                    + (l.cut().isPresent() || !today ? "\nfor " + week.users(l.users(), l.useOn()) : ""), CookAmounts.mass(l.ap()),
                    CookAmounts.mass(l.ep()) + l.measured().map(m -> "\n" + m).orElse(""),
                    today ? numbers(l) : When.day(l.useOn())));
        }
    }

    /** {@code no. 3, 5, 8}. */
    private static String numbers(PrepLines.Line l) {
        return "no. " + l.pieces().stream().map(p -> Integer.toString(p.place())).distinct().collect(Collectors.joining(", "));
    }

    private static String name(CookWeek week, PrepLines.Line l, LocalDate day) {
        return week.called.item(l.item()) + l.cut().map(c -> ", " + c).orElse("")
                + l.insteadOf().map(o -> "\n(instead of " + o + ")").orElse("") + (l.thawed() ? "\n(thawed)" : "")
                + elsewhere(week, l, day);
    }

    /** The same cut on another station's list of the day, so that two boards can become one. */
    private static String elsewhere(CookWeek week, PrepLines.Line line, LocalDate day) {
        String station = line.users().get(0).stations().get(0);
        return week.kitchen().stations().stream().filter(s -> line.cut().isPresent() && !s.id().equals(station))
                .flatMap(s -> week.prepLines(day, s.id()).stream().filter(o -> o.item().equals(line.item())
                        && o.cut().equals(line.cut()) && o.useOn().equals(line.useOn()))
                        .map(o -> "\n(" + s.name() + " cuts " + CookAmounts.mass(o.ep()) + " more)"))
                .collect(Collectors.joining());
    }

    private static String cooling(CookWeek week) {
        return "A hot batch that is kept cold: " + week.code.limit(Rule.COOLING_FIRST_TIME).say() + ", "
                + week.code.limit(Rule.COOLING_TIME).say() + " (" + week.code.limit(Rule.COOLING_TIME).section() + "). "
                + Caution.limits(week.code, week.kitchen());
    }

}
