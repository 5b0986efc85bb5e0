package croftboard.paper.served;

import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.Data;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.plan.WeekPlan;
import croftboard.safety.Caution;
import croftboard.safety.FoodCode;
import croftboard.safety.Rule;
import croftboard.safety.file.FoodCodes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Sheet 10: logs to write in, a page a day each: receiving, cooling, hot holding, time as control, waste. The limits are those
 * of the kitchen's edition of the health code; the local authority decides.
 */
public final class Logs implements SheetMaker {
    private static final int LEFTOVERS = 3;
    private static final int TIME_ROWS = 16;
    private static final int SPARE = 2;

    @Override
    public SheetKind kind() {
        return SheetKind.LOG;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        if (context.filters().vendor().isPresent()) {
            return List.of();
        }
        FoodCode code = FoodCodes.of(context.book().kitchen().healthCodeEdition());
        List<Sheet> sheets = new ArrayList<>();
        for (LogDay day : LogDay.of(context)) {
            if (!day.orders().isEmpty()) {
                sheets.add(receiving(context, code, day));
            }
            if (!day.made().isEmpty()) {
                sheets.add(cooling(context, code, day));
            }
            if (!day.served().isEmpty()) {
                sheets.add(holding(context, code, day));
                sheets.add(timeControl(context, code, day));
                sheets.add(waste(context, day));
            }
        }
        return sheets;
    }

    private static Sheet sheet(PaperContext context, FoodCode code, LogDay day, String name, String title, List<Block> blocks,
            Data data, Set<OrderKey> behind) {
        List<Block> all = new ArrayList<>(blocks);
        all.add(new Block.Text(Caution.limits(code, context.book().kitchen())));
        all.add(Block.Fields.of("Read by, at", ""));
        return new Sheet(SheetKind.LOG, "log-" + day.date() + "-" + name, title, List.of(When.full(day.date())), all, data,
                Sheet.Look.PLAIN.onOnePage(), behind);
    }

    private static String say(FoodCode code, Rule... rules) {
        List<String> words = new ArrayList<>();
        for (Rule rule : rules) {
            String say = code.limit(rule).say();
            words.add(Character.toUpperCase(say.charAt(0)) + say.substring(1) + " (" + code.limit(rule).section() + ").");
        }
        return String.join(" ", words);
    }

    private static Sheet receiving(PaperContext context, FoodCode code, LogDay day) {
        List<Row> rows = new ArrayList<>();
        Data.Building data = Data.of("day", "vendor", "item", "pack", "packs", "temperature_f", "taken_or_sent_back", "by");
        Set<OrderKey> keys = new TreeSet<>();
        for (WeekPlan.Order order : day.orders()) {
            keys.add(OrderKey.of(order));
            rows.add(Row.group(context.called().vendor(order.vendor())));
            for (WeekPlan.OrderLine l : order.lines()) {
                rows.add(Row.of(context.called().item(l.item()), l.packs() + " x " + l.pack(), "", "", "", ""));
                data.row(day.date(), order.vendor(), l.item(), l.pack(), l.packs(), "", "", "");
            }
        }
        List<Block> blocks = List.of(new Block.Notice(say(code, Rule.RECEIVING_COLD, Rule.RECEIVING_EGGS, Rule.RECEIVING_HOT)
                + " Frozen food comes frozen. Too warm: send it back, write it down."),
                new Block.Table(List.of(Column.words("Item", 30), Column.words("Packs", 24), Column.blank("Came at", 12),
                        Column.blank("\u00b0F", 9), Column.blank("Taken / sent back, why", 28), Column.blank("By", 9)), rows),
                new Block.Text("Another article than ordered: read its label, write its allergens here, and tell the cook before"
                        + " it is used. Labels and cards printed before do not hold for it."), new Block.Blank(1));
        return sheet(context, code, day, "receiving", "Receiving log", blocks, data.done(), keys);
    }

    private static Sheet cooling(PaperContext context, FoodCode code, LogDay day) {
        List<LogDay.Made> kept = day.made().stream().filter(LogDay.Made::kept).toList();
        List<Row> rows = new ArrayList<>();
        Data.Building data = Data.of("day", "recipe", "name", "amount", "use_by", "warm_by_its_steps",
                "started_at", "started_f", "at_2_h_f", "at_4_h_f", "at_6_h_f", "cold_at", "done_instead", "by");
        group(day, rows, data, "Cooked, warmed or chilled by their steps, then kept cold", kept.stream().filter(LogDay.Made::warm).toList());
        List<LogDay.Made> cold = kept.stream().filter(m -> !m.warm()).toList();
        cold.forEach(m -> data(day, data, m));
        String also = cold.isEmpty() ? "" : "; and these, if anything in them was warm: " + String.join("; ", cold.stream()
                .map(LogDay.Made::name).distinct().toList());
        rows.add(Row.group("Leftovers of hot food, and what else is cooled" + also));
        for (int i = 0; i < LEFTOVERS; i++) {
            rows.add(Row.of("", "", "", "", "", "", "", ""));
        }
        List<Block> blocks = List.of(new Block.Notice(say(code, Rule.COOLING_FIRST_TIME, Rule.COOLING_TIME)
                + " Not at " + code.limit(Rule.COOLING_FIRST).shown() + " after " + code.limit(Rule.COOLING_FIRST_TIME).shown()
                + ": reheat it at once to " + code.limit(Rule.REHEATING).shown() + " and begin again, or throw it away."),
                new Block.Text(say(code, Rule.COOLING_AMBIENT_TIME) + " Shallow pans, lids ajar, ice, blast chiller; split large"
                        + " batches. Measure in the middle. The date mark counts from the day of making: day 1."),
                new Block.Table(List.of(Column.words("Food, amount (\u00b0F in the columns)", 42), Column.words("Use by", 11),
                        Column.blank("Begun", 11), Column.blank("2 h", 9), Column.blank("4 h", 9),
                        Column.blank("6 h", 9), Column.blank("Done instead", 13), Column.blank("By", 7)), rows));
        return sheet(context, code, day, "cooling", "Cooling log", blocks, data.done(), Set.of());
    }

    private static void group(LogDay day, List<Row> rows, Data.Building data, String name, List<LogDay.Made> made) {
        if (!made.isEmpty()) {
            rows.add(Row.group(name));
        }
        for (LogDay.Made m : made) {
            rows.add(Row.of(m.name() + ", " + m.amount(), When.day(m.useBy()), "", "", "", "", "", ""));
            data(day, data, m);
        }
    }

    private static void data(LogDay day, Data.Building data, LogDay.Made m) {
        data.row(day.date(), m.id(), m.name(), m.amount(), m.useBy(), m.warm() ? "yes" : "no", "", "", "", "", "", "", "", "");
    }

    private static Sheet holding(PaperContext context, FoodCode code, LogDay day) {
        List<Row> rows = new ArrayList<>();
        Data.Building data = Data.of("day", "line", "dish", "name", "held", "first_f", "second_f", "third_f", "fourth_f",
                "fifth_f", "done", "by");
        for (boolean hot : new boolean[] {true, false}) {
            rows.add(Row.group(hot ? "Hot: " + code.limit(Rule.HOT_HOLDING).shown() + " or above"
                    : "Cold: " + code.limit(Rule.COLD_HOLDING).shown() + " or below"));
            day.served().stream().filter(s -> day.hot(context, s) == hot).forEach(s -> {
                rows.add(Row.of(DishFacts.of(context, s.dish()).name(), "", "", "", "", "", "", ""));
                data.row(day.date(), s.served().line(), s.dish(), DishFacts.of(context, s.dish()).name(), hot ? "hot" : "cold",
                        "", "", "", "", "", "", "");
            });
            for (int i = 0; i < SPARE; i++) {
                rows.add(Row.of("", "", "", "", "", "", "", ""));
            }
        }
        List<Block> blocks = List.of(new Block.Notice(say(code, Rule.HOT_HOLDING, Rule.COLD_HOLDING)
                + " Reheated for hot holding: " + code.limit(Rule.REHEATING).shown() + " for "
                + code.limit(Rule.REHEATING_HOLD).shown() + ", within " + code.limit(Rule.REHEATING_TIME).shown() + " ("
                + code.limit(Rule.REHEATING).section() + "). Write the hour into the head of each column."), new Block.Table(List.of(Column.words("Food", 36), Column.blank("at\n\u00b0F", 9),
                Column.blank("at\n\u00b0F", 9), Column.blank("at\n\u00b0F", 9), Column.blank("at\n\u00b0F", 9),
                Column.blank("at\n\u00b0F", 9), Column.blank("Not kept: done", 20), Column.blank("By", 8)), rows));
        return sheet(context, code, day, "holding", "Hot and cold holding log", blocks, data.done(), Set.of());
    }

    private static Sheet timeControl(PaperContext context, FoodCode code, LogDay day) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < TIME_ROWS; i++) {
            rows.add(Row.of("", "", "", "", "", "", ""));
        }
        List<Block> blocks = List.of(new Block.Notice("Only with the written procedure for it in the kitchen. "
                + say(code, Rule.TIME_CONTROL, Rule.TIME_CONTROL_LONG, Rule.TIME_CONTROL_LONG_MOST)
                + " The container carries the time to throw away; what carries none is thrown away. Nothing goes back into the"
                + " cold."), new Block.Table(List.of(Column.blank("Food", 30), Column.blank("Out at", 11),
                Column.blank("\u00b0F when out", 11), Column.blank("4 h or 6 h", 11), Column.blank("Away by", 11),
                Column.blank("Sold out / thrown away at", 17), Column.blank("By", 9)), rows));
        return sheet(context, code, day, "time", "Time as control log", blocks, Data.of("day", "food", "out_at", "out_f",
                "plan_hours", "away_by", "ended_at", "by").done(), Set.of());
    }

    private static Sheet waste(PaperContext context, LogDay day) {
        List<Row> rows = new ArrayList<>();
        Data.Building data = Data.of("day", "line", "dish", "name", "planned_portions", "thrown_away", "reason", "by");
        for (OnOffer.Slot s : day.served()) {
            String name = DishFacts.of(context, s.dish()).name();
            String useBy = OnOffer.production(s.served(), day.date()).map(p -> When.day(p.useBy())).orElse("");
            rows.add(Row.of(name, useBy, "", "", "", ""));
            data.row(day.date(), s.served().line(), s.dish(), name, s.served().portions(), "", "", "");
        }
        for (int i = 0; i < LEFTOVERS + SPARE; i++) {
            rows.add(Row.of("", "", "", "", "", ""));
        }
        FoodCode code = FoodCodes.of(context.book().kitchen().healthCodeEdition());
        List<Block> blocks = List.of(new Block.Text("Weigh it or count portions; one line a reason. Reasons: past its date, too"
                + " warm, overcooked, left at closing, trim, dropped, sent back. Past its date, unmarked or marked too long: it is"
                + " thrown away (3-501.18)."), new Block.Table(List.of(Column.words("Food", 38), Column.words("Use by", 13),
                Column.blank("Weight", 12), Column.blank("Portions", 12), Column.blank("Why", 25), Column.blank("By", 9)), rows));
        return sheet(context, code, day, "waste", "Waste log", blocks, data.done(), Set.of());
    }
}
