package croftboard.paper.cook;

import croftboard.book.Kitchen;
import croftboard.book.Seasons;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.Data;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.plan.WeekPlan;
import croftboard.plan.work.Making;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sheet 6: what one line was to sell and did, day by day. It comes back from the counter: the columns of its CSV are those
 * that are read again.
 */
public final class ProductionSheets implements SheetMaker {
    /** Words for the reason of waste, as they are read back. */
    static final List<String> REASONS = List.of("over-production", "spoiled", "trim", "mistake", "sampled", "donated");

    @Override
    public SheetKind kind() {
        return SheetKind.PRODUCTION;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        CookWeek week = new CookWeek(context);
        List<Sheet> sheets = new ArrayList<>();
        for (Kitchen.ServiceLine line : context.book().kitchen().lines()) {
            List<Served> rows = rows(context, s -> week.event(s.slot()).isEmpty() && s.line().equals(line.id()));
            sheet(week, line.id(), line.name(), rows).ifPresent(sheets::add);
        }
        for (Seasons.Event event : context.book().seasons().events()) {
            List<Served> rows = rows(context, s -> week.event(s.slot()).filter(event::equals).isPresent());
            sheet(week, event.id() + ".event", event.name(), rows).ifPresent(sheets::add);
        }
        return sheets;
    }

    /** @param fresh portions made for the service that begins that day; empty: what is left of the day before */
    private record Served(WeekPlan.Served slot, LocalDate day, Optional<Integer> fresh) { }

    private static List<Served> rows(PaperContext context, java.util.function.Predicate<WeekPlan.Served> wanted) {
        List<Served> rows = new ArrayList<>();
        for (WeekPlan.Served s : context.plan().menu()) {
            if (wanted.test(s)) {
                s.days().stream().filter(context.filters()::wants).forEach(d -> rows.add(new Served(s, d, fresh(s, d))));
            }
        }
        rows.sort(java.util.Comparator.comparing(Served::day).thenComparing(r -> r.slot.slot()));
        return rows;
    }

    private static Optional<Integer> fresh(WeekPlan.Served slot, LocalDate day) {
        LocalDate before = LocalDate.MIN;
        for (WeekPlan.Production p : slot.productions()) {
            LocalDate after = before;
            LocalDate first = slot.days().stream().filter(d -> d.isAfter(after)).findFirst().orElse(p.lastServed());
            if (first.equals(day)) {
                return Optional.of(p.portions());
            }
            before = p.lastServed();
        }
        return Optional.empty();
    }

    private static Optional<Sheet> sheet(CookWeek week, String id, String name, List<Served> served) {
        if (served.isEmpty()) {
            return Optional.empty();
        }
        List<Row> rows = new ArrayList<>();
        for (Served s : served) {
            String dish = s.slot.recipe().map(week.called::recipe).orElse("nothing planned");
            rows.add(Row.of(When.day(s.day), dish + (week.event(s.slot.slot()).isPresent() ? " (" + s.slot.line() + ")" : ""),
                    planned(s), "", "", "", "", "", ""));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Table(List.of(Column.words("Day", 11), Column.words("Dish", 27), Column.figure("Planned", 10),
                Column.blank("Prepared", 10), Column.blank("Sold", 9), Column.blank("Left", 9), Column.blank("Ran out at", 11),
                Column.blank("Waste", 9), Column.blank("Reason", 19)), rows));
        blocks.add(new Block.Text("Portions. Planned: made new for that day; \"from before\": what the day before left over."
                + " Ran out at: the time, or a dash when it did not. Left: at closing. Waste: of what was left, thrown or given"
                + " away."));
        blocks.add(new Block.Text("Reasons: " + String.join(", ", REASONS) + "."));
        String day = week.context.filters().day().map(d -> "-" + d).orElse("");
        return Optional.of(new Sheet(SheetKind.PRODUCTION, "production-" + id + day, "Production sheet: " + name,
                List.of("Week " + week.context.plan().week() + ", beginning " + When.full(week.context.plan().week().monday())),
                blocks, data(week, served), new Sheet.Look(true, 12, true, false), week.behind(makings(week, served))));
    }

    private static String planned(Served s) {
        return s.slot.recipe().isEmpty() ? "0" : s.fresh.map(Object::toString).orElse("from before");
    }

    private static List<Making> makings(CookWeek week, List<Served> served) {
        return week.tracing.makings().stream().filter(m -> m.service().filter(x -> served.stream()
                .anyMatch(s -> s.slot.slot().equals(x.slot()))).isPresent()).toList();
    }

    private static Data data(CookWeek week, List<Served> served) {
        Data.Building data = Data.of("week", "version", "date", "slot", "line", "dish", "dish_name", "planned_portions",
                "prepared_portions", "sold_portions", "left_portions", "ran_out_at", "waste_portions", "waste_reason", "note");
        for (Served s : served) {
            data.row(week.context.plan().week(), week.context.version(), s.day, s.slot.slot(), s.slot.line(),
                    s.slot.recipe().orElse(""), s.slot.recipe().map(week.called::recipe).orElse(""), s.fresh.orElse(0), "", "",
                    "", "", "", "", "");
        }
        return data.done();
    }
}
