package croftboard.paper.cook;

import croftboard.book.Recipe;
import croftboard.book.Seasons;
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
import croftboard.plan.WeekPlan;
import croftboard.plan.work.EventTrace;
import croftboard.plan.work.Making;
import croftboard.safety.Caution;
import croftboard.safety.DishStatement;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Sheet 11: an event from its guarantee to its orders. */
public final class FunctionSheets implements SheetMaker {
    @Override
    public SheetKind kind() {
        return SheetKind.FUNCTION;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        CookWeek week = new CookWeek(context);
        return context.book().seasons().events().stream()
                .filter(e -> context.plan().menu().stream().anyMatch(s -> week.event(s.slot()).filter(e::equals).isPresent()))
                .filter(e -> context.filters().wants(e.date())).map(e -> sheet(week, e)).toList();
    }

    private static Sheet sheet(CookWeek week, Seasons.Event event) {
        EventTrace trace = new EventTrace(week.context.plan(), week.tracing, event.id());
        List<EventTrace.Shared> shared = trace.makings();
        List<Making> makings = shared.stream().map(EventTrace.Shared::making).toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(facts(event));
        blocks.add(new Block.Heading(2, "Menu"));
        blocks.add(menu(week, event));
        statements(week, event, blocks);
        blocks.add(new Block.Heading(2, "Timing, back from service"));
        timing(week, event, makings, blocks);
        blocks.add(new Block.Heading(2, "Batches for it"));
        blocks.add(new Block.Text("\"For it\": its share of what is used of the batch."));
        blocks.add(batches(week, trace, shared));
        blocks.add(new Block.Heading(2, "What is bought for it"));
        blocks.add(brought(week, trace));
        return new Sheet(SheetKind.FUNCTION, "function-" + event.id(), "Function sheet: " + event.name(),
                List.of(When.full(event.date()) + event.service().map(t -> ", served at " + When.clock(t)).orElse("")), blocks,
                FunctionData.of(week, event, trace, shared), Sheet.Look.PLAIN, week.behind(makings));
    }

    private static Block facts(Seasons.Event event) {
        Ratio heads = event.heads();
        return Block.Fields.of("Head count, guaranteed", Integer.toString(event.guarantee()),
                "Overage", percent(event.overage()) + " above the guarantee: food for " + heads.ceil()
                        + ", each course by its share, rounded up",
                "Served at", event.service().map(When::clock).orElse(""),
                "Diets, as the guests told", event.diets().isEmpty() ? "none told" : event.diets(),
                "Charge", event.price() + " a head on the guarantee",
                "Heads that came", "");
    }

    static String percent(Ratio share) {
        return share.times(100).toDecimal(1).stripTrailingZeros().toPlainString() + " %";
    }

    static Optional<WeekPlan.Served> slot(CookWeek week, Seasons.Event event, Seasons.Course course) {
        return week.context.plan().menu().stream().filter(s -> s.slot().equals(event.id() + "/" + course.id())).findFirst();
    }

    private static Block menu(CookWeek week, Seasons.Event event) {
        List<Row> rows = new ArrayList<>();
        for (Seasons.Course c : event.menu()) {
            Optional<WeekPlan.Served> served = slot(week, event, c);
            Optional<Recipe> dish = served.flatMap(WeekPlan.Served::recipe)
                    .flatMap(r -> Optional.ofNullable(week.context.book().recipes().get(r)));
            rows.add(Row.of(c.id(), served.flatMap(WeekPlan.Served::recipe).map(week.called::recipe).orElse("NOTHING PLANNED"),
                    percent(c.share()), Integer.toString(event.portions(c)),
                    served.map(s -> Integer.toString(s.portions())).orElse(""),
                    dish.flatMap(Recipe::sale).map(s -> CookAmounts.of(s.portion())).orElse(""), ""));
        }
        return new Block.Table(List.of(Column.words("Course", 13), Column.words("Dish", 33), Column.figure("of heads", 10),
                Column.figure("Asked", 9), Column.figure("Made", 9), Column.figure("Portion", 11), Column.blank("Left", 10)), rows);
    }

    private static void statements(CookWeek week, Seasons.Event event, List<Block> blocks) {
        for (Seasons.Course c : event.menu()) {
            slot(week, event, c).flatMap(WeekPlan.Served::recipe).filter(week.context.book().recipes()::containsKey)
                    .ifPresent(r -> {
                        Map<String, String> swaps = new TreeMap<>();
                        Optional.ofNullable(week.context.plan().swaps().get(r)).ifPresent(swaps::putAll);
                        blocks.add(new Block.Text(week.called.recipe(r) + ": "
                                + DishStatement.planned(week.context.book(), r, swaps).sentence()));
                    });
        }
        blocks.add(new Block.Text(Caution.staff(week.kitchen())));
    }

    private static void timing(CookWeek week, Seasons.Event event, List<Making> makings, List<Block> blocks) {
        List<Making> dishes = makings.stream().filter(m -> m.service().isPresent() && m.day().equals(event.date())).toList();
        if (event.service().isEmpty()) {
            blocks.add(new Block.Text("The book states no hour of service (service: in seasons/events.yaml)."));
            return;
        }
        LocalDateTime service = event.date().atTime(event.service().get());
        List<Row> rows = new ArrayList<>();
        for (Timing.Step s : Timing.before(week, service, dishes)) {
            rows.add(Row.of(CookWeek.BOX, clock(s.begin(), service), s.making().recipe().name() + ", step " + s.number(),
                    CookAmounts.minutes(s.minutes()), s.station().isEmpty() ? "" : week.called.station(s.station())));
        }
        rows.add(Row.of(CookWeek.BOX, clock(service.minusMinutes(Timing.READY_BEFORE), service), "All food ready, hot food held hot",
                CookWeek.minutes(Timing.READY_BEFORE), ""));
        rows.add(Row.strong(CookWeek.BOX, When.clock(event.service().get()), "Service", "", ""));
        blocks.add(new Block.Text("Latest start of each step with one pair of hands a making; more hands or an earlier start"
                + " where two of them meet. Ready half an hour before service."));
        blocks.add(new Block.Table(List.of(Column.mark("", 4), Column.words("Begin by", 12), Column.words("What", 56),
                Column.figure("Takes", 13), Column.words("Where", 14)), rows));
    }

    private static String clock(LocalDateTime time, LocalDateTime service) {
        return (time.toLocalDate().equals(service.toLocalDate()) ? "" : When.day(time.toLocalDate()) + ", ")
                + When.clock(time.toLocalTime());
    }

    private static Block batches(CookWeek week, EventTrace trace, List<EventTrace.Shared> shared) {
        List<Row> rows = new ArrayList<>();
        for (EventTrace.Shared s : shared) {
            Making m = s.making();
            rows.add(Row.of(When.day(m.day()), m.recipe().name(), PrepSheets.howMuch(m), s.withOthers()
                    ? percent(s.share()) : "all", s.withOthers() ? others(week, trace, m) : ""));
        }
        return new Block.Table(List.of(Column.words("Made", 13), Column.words("Batch", 28), Column.words("How much", 17),
                Column.figure("For it", 9), Column.words("Shared with", 42)), rows);
    }

    /** The other places that the batch serves in the end. */
    private static String others(CookWeek week, EventTrace trace, Making making) {
        return week.tracing.slotsOf(making).keySet().stream().filter(slot -> !trace.isIts(slot))
                .map(slot -> week.context.plan().menu().stream().filter(s -> s.slot().equals(slot)).findFirst().orElseThrow())
                .map(s -> s.recipe().map(week.called::recipe).orElse("") + " (" + When.day(s.days().get(0)) + ")")
                .distinct().collect(Collectors.joining(", "));
    }

    private static Block brought(CookWeek week, EventTrace trace) {
        List<Row> rows = new ArrayList<>();
        for (EventTrace.Brought b : trace.brought()) {
            rows.add(Row.of(week.called.item(b.item()), CookAmounts.mass(b.event()),
                    b.delivery().map(d -> When.day(d)).orElse("on hand"),
                    b.vendors().stream().map(week.called::vendor).collect(Collectors.joining(", "))));
        }
        return new Block.Table(List.of(Column.words("Item", 34), Column.figure("For it, as bought", 20), Column.words("Comes", 14),
                Column.words("From", 34)), rows);
    }
}
