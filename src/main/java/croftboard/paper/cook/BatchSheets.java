package croftboard.paper.cook;

import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.plan.work.Loads;
import croftboard.plan.work.Making;
import croftboard.plan.work.WorkingOrder;
import croftboard.safety.Advisory;
import croftboard.safety.Caution;
import croftboard.safety.DishStatement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Sheet 5: one making of one recipe, scaled to the day, beside the standard batch. */
public final class BatchSheets implements SheetMaker {
    /** Grams below which a measure says more than a weight: a quarter of an ounce. */
    private static final Ratio PINCH = Unit.OUNCE.base().over(4);

    @Override
    public SheetKind kind() {
        return SheetKind.BATCH;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        CookWeek week = new CookWeek(context);
        List<Sheet> sheets = new ArrayList<>();
        for (LocalDate day : week.days()) {
            Map<String, Integer> times = new HashMap<>();
            for (WorkingOrder.Task t : week.orderOn(day)) {
                int time = times.merge(t.making().recipe().id(), 1, Integer::sum);
                sheets.add(sheet(week, t, "batch-" + day + "-" + t.making().recipe().id() + (time > 1 ? "." + time : "")));
            }
        }
        return sheets;
    }

    private static Sheet sheet(CookWeek week, WorkingOrder.Task task, String id) {
        Making m = task.making();
        Loads loads = Loads.of(week.kitchen(), m);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Fields.of("Make", amount(m), "For", week.purpose(m) + "; needed " + week.neededBy(m),
                "Use by", When.full(m.useBy()), "Made by, at", ""));
        loads(loads, blocks);
        blocks.add(new Block.Heading(2, "What goes in, in this order"));
        blocks.add(goods(week, m, loads));
        blocks.add(new Block.Heading(2, "Steps, as written for one batch"));
        steps(week, m, blocks);
        notes(m.recipe(), blocks);
        temperatures(week, m, blocks);
        blocks.add(new Block.Heading(2, "When it is done"));
        blocks.add(Block.Fields.of("Yield expected", yields(m), "Yield got", "", "Tasted by, changed", ""));
        blocks.add(new Block.Ticks(List.of("Every pan labelled: " + m.recipe().name() + ", made " + When.day(m.day())
                + ", use by " + When.day(m.useBy()))));
        statement(week, m, blocks);
        return new Sheet(SheetKind.BATCH, id, m.recipe().name(), List.of(under(week, m)), blocks, BatchData.of(week, m, loads),
                Sheet.Look.BIG, week.behind(List.of(m)));
    }

    private static String under(CookWeek week, Making m) {
        return "Batch sheet, " + When.full(m.day()) + m.stations().stream().filter(s -> !s.isEmpty())
                .map(s -> ", " + week.called.station(s)).collect(Collectors.joining());
    }

    private static String amount(Making m) {
        return CookWeek.batches(m.batches()) + ", " + yields(m);
    }

    static String yields(Making m) {
        return CookAmounts.mass(m.grams()) + m.portions().map(p -> ", " + p + " portions of "
                + CookAmounts.of(m.recipe().sale().orElseThrow().portion())).orElse("");
    }

    private static void loads(Loads loads, List<Block> blocks) {
        if (loads.because().isEmpty() || !loads.split() && !loads.tooBig()) {
            return;
        }
        Kitchen.Equipment e = loads.because().get();
        String takes = e.name() + ": " + e.atOnce().orElseThrow() + " " + e.unit() + " at once. ";
        blocks.add(new Block.Notice(takes + (loads.tooBig()
                ? "Even the smallest part of this batch is more: ask before you start."
                : "So it is made in " + loads.loads().size() + " loads: " + sizes(loads) + ".")));
    }

    private static String sizes(Loads loads) {
        return loads.sizes().stream().map(s -> loads.count(s) + " of " + CookWeek.batches(s)).collect(Collectors.joining(", then "));
    }

    private static Block goods(CookWeek week, Making m, Loads loads) {
        List<Column> columns = new ArrayList<>(List.of(Column.mark("", 5), Column.words("Item, cut", 34),
                Column.figure("One batch", 19), Column.figure(CookWeek.batches(m.batches()), 22)));
        if (loads.split()) {
            loads.sizes().forEach(s -> columns.add(Column.figure("Load\n" + CookAmounts.times(s), 20)));
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < m.items().size(); i++) {
            Making.Item item = m.items().get(i);
            List<String> cells = new ArrayList<>(List.of(CookWeek.BOX, name(week, m, item),
                    written(m.recipe().ingredients().get(i)), scaled(item, Ratio.ONE, written(m, i))));
            if (loads.split()) {
                for (Ratio size : loads.sizes()) {
                    cells.add(scaled(item, size.over(m.batches()), written(m, i)));
                }
            }
            rows.add(new Row(cells, Block.Kind.PLAIN));
        }
        return new Block.Table(columns, rows);
    }

    private static boolean written(Making m, int i) {
        return m.recipe().ingredients().get(i).asPurchased() && m.items().get(i).insteadOf().isEmpty();
    }

    private static String written(Recipe.Line line) {
        return CookAmounts.of(line.amount()) + (line.asPurchased() ? " as bought" : "");
    }

    /** As the recipe measures it, with its weight ready to use. */
    private static String scaled(Making.Item item, Ratio part, boolean asBought) {
        Amount amount = item.amount().times(part);
        String ready = CookAmounts.mass(item.ep().times(part));
        boolean weighed = amount.unit().kind() == Unit.Kind.MASS;
        if (asBought) {
            return CookAmounts.of(amount) + " as bought\n(" + ready + " ready)";
        }
        boolean pinch = item.ep().times(part).compareTo(PINCH) < 0;
        return CookAmounts.of(amount) + (weighed || pinch ? "" : "\n= " + ready);
    }

    private static String name(CookWeek week, Making m, Making.Item item) {
        List<String> more = new ArrayList<>();
        item.insteadOf().ifPresent(o -> more.add("INSTEAD OF " + o));
        if (item.component()) {
            more.add(origin(week, m, item));
        }
        item.note().ifPresent(more::add);
        return week.called.item(item.id()) + item.cut().map(c -> ", " + c).orElse("")
                + (more.isEmpty() ? "" : "\n(" + String.join("; ", more) + ")");
    }

    private static String origin(CookWeek week, Making m, Making.Item item) {
        return week.tracing.partsOf(m).stream().filter(u -> u.component().equals(item.id())).map(u -> u.batch()
                .map(b -> b.day().equals(m.day()) ? "made today" : "made " + When.day(b.day()) + ", use by " + When.day(b.useBy()))
                .or(() -> u.counted().map(c -> "counted" + c.made().map(d -> ", made " + When.day(d)).orElse("")))
                .orElse("NOT COVERED")).distinct().collect(Collectors.joining("; "));
    }

    private static void steps(CookWeek week, Making m, List<Block> blocks) {
        int number = 1;
        for (Recipe.Step s : m.recipe().steps()) {
            List<String> facts = new ArrayList<>();
            s.station().ifPresent(st -> facts.add(week.called.station(st)));
            Ratio hands = s.activeMinutes().times(m.batches()).plus(s.perPortionMinutes().times(m.portions().orElse(0)));
            if (hands.signum() > 0) {
                facts.add("hands " + CookAmounts.minutes(hands));
            }
            if (s.unattendedMinutes().signum() > 0) {
                facts.add("by itself " + CookAmounts.minutes(s.unattendedMinutes()));
            }
            for (Kitchen.Equipment e : week.kitchen().equipment()) {
                Ratio units = s.uses().getOrDefault(e.id(), Ratio.ZERO).times(m.batches());
                if (units.signum() > 0) {
                    facts.add(e.name() + " " + CookAmounts.times(units) + " " + e.unit());
                }
            }
            blocks.add(new Block.Text(number++ + ". " + s.text()
                    + (facts.isEmpty() ? "" : "\n    Today: " + String.join("; ", facts) + ".")));
        }
    }

    private static void notes(Recipe recipe, List<Block> blocks) {
        recipe.doneness().ifPresent(w -> blocks.add(new Block.Text("Done when: " + w)));
        recipe.scaling().ifPresent(w -> blocks.add(new Block.Text("Scaling: " + w)));
        recipe.holding().ifPresent(w -> blocks.add(new Block.Text("Holding: " + w)));
        recipe.caution().ifPresent(w -> blocks.add(new Block.Notice("Caution: " + w)));
    }

    private static void temperatures(CookWeek week, Making m, List<Block> blocks) {
        List<Temperatures.Critical> rows = Temperatures.of(week, m);
        Temperatures.garlicInOil(week, m).ifPresent(w -> blocks.add(new Block.Notice(w)));
        if (!rows.isEmpty()) {
            blocks.add(new Block.Heading(2, "Critical temperatures, " + week.code.name()));
            blocks.add(new Block.Table(List.of(Column.words("For", 34), Column.words("Limit", 34), Column.words("Rule", 19),
                    Column.blank("Got", 13), Column.blank("at", 12)), rows.stream()
                    .map(c -> Row.of(c.of(), c.limit(), c.section(), "", "")).toList()));
        }
        if (!week.code.onFile()) {
            blocks.add(new Block.Text(Caution.limits(week.code, week.kitchen())));
        }
    }

    private static void statement(CookWeek week, Making m, List<Block> blocks) {
        String id = m.recipe().id();
        Map<String, String> swaps = new TreeMap<>();
        Optional.ofNullable(week.context.plan().swaps().get(id)).ifPresentOrElse(swaps::putAll,
                () -> week.context.plan().swaps().values().forEach(swaps::putAll));
        if (!week.context.plan().swaps().containsKey(id)) {
            swaps.keySet().removeIf(item -> item.endsWith(DishStatement.EVERY_LINE)); // those speak of a dish's own lines
        }
        blocks.add(new Block.Notice(DishStatement.planned(week.context.book(), id, swaps).sentence()));
        Advisory advisory = Advisory.of(week.context.book(), id);
        if (advisory.needed()) {
            blocks.add(new Block.Notice(advisory.disclosure() + " " + Advisory.reminder()));
        }
        blocks.add(new Block.Text(Caution.staff(week.kitchen())));
    }
}
