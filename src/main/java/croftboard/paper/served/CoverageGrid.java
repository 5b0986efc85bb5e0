package croftboard.paper.served;

import croftboard.book.Kitchen;
import croftboard.book.Promises;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.Data;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.safety.Caution;
import croftboard.safety.DishStatement;
import croftboard.safety.DishStatement.Known;
import croftboard.safety.Grains;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Sheet 8, for the staff only: what each dish of a day lists, and who finds something there. Worded "lists no". */
public final class CoverageGrid implements SheetMaker {
    private static final Set<String> NUTS = Set.of("almond", "black-walnut", "brazil-nut", "california-walnut", "cashew",
            "hazelnut", "heartnut", "macadamia", "pecan", "pine-nut", "pistachio", "walnut");
    private static final List<String> GROUPS = List.of("milk", "egg", "fish", "shellfish", "tree nuts", "wheat", "peanut",
            "soy", "sesame");
    private static final String LISTED = "YES";
    private static final String NOT_LISTED = "no";
    private static final String OPEN = "?";

    @Override
    public SheetKind kind() {
        return SheetKind.COVERAGE;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        if (context.filters().vendor().isPresent()) {
            return List.of();
        }
        List<Sheet> sheets = new ArrayList<>();
        new OnOffer(context).days().forEach((day, slots) -> sheets.add(sheet(context, day, slots)));
        return sheets;
    }

    private Sheet sheet(PaperContext context, LocalDate day, List<OnOffer.Slot> slots) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Notice("For the staff only, not for the case. YES: the recipe lists it. no: the recipe lists none"
                + " of it, which is no promise that none is there. ?: a supplier does not state it; never say no."));
        Map<String, DishFacts> dishes = new LinkedHashMap<>();
        slots.forEach(s -> dishes.put(s.dish(), DishFacts.of(context, s.dish())));
        blocks.add(grid(dishes));
        blocks.add(new Block.Heading(1, "Who finds something today"));
        blocks.add(promises(context.book().kitchen(), slots, dishes));
        List<DishFacts> open = dishes.values().stream().filter(d -> !d.complete()).toList();
        if (!open.isEmpty()) {
            blocks.add(new Block.Text("Not stated: " + String.join("; ", open.stream().map(d -> d.name() + ": "
                    + String.join(", ", d.statement().notStated())).toList()) + "."));
        }
        blocks.add(new Block.Text(Caution.staff(context.book().kitchen())));
        return new Sheet(kind(), "coverage-" + day, "Coverage, " + When.full(day), List.of("What each recipe lists"), blocks,
                data(day, dishes), Sheet.Look.PLAIN.wide());
    }

    private static Block grid(Map<String, DishFacts> dishes) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("Dish", 44)));
        GROUPS.forEach(g -> columns.add(Column.mark(g.replace(' ', '\n'), 8)));
        columns.add(Column.mark("wheat,\nrye,\nbarley", 9));
        columns.add(Column.mark("vegan", 8));
        columns.add(Column.mark("no meat\nor fish", 9));
        List<Row> rows = new ArrayList<>();
        for (DishFacts d : dishes.values()) {
            List<String> cells = new ArrayList<>(List.of(d.name()));
            cells.addAll(answers(d));
            rows.add(new Row(cells, Block.Kind.PLAIN));
        }
        return new Block.Table(columns, rows);
    }

    private static List<String> answers(DishFacts dish) {
        List<String> answers = new ArrayList<>();
        GROUPS.forEach(g -> answers.add(said(listed(dish.statement(), g))));
        answers.add(said(dish.ingredients().isEmpty() ? Known.UNKNOWN : Grains.listed(dish.ingredients())));
        answers.add(diet(dish.statement().vegan(), dish));
        answers.add(diet(dish.statement().vegetarian(), dish));
        return answers;
    }

    private static Known listed(DishStatement statement, String group) {
        if (!group.equals("tree nuts")) {
            return statement.lists(group);
        }
        return NUTS.stream().anyMatch(statement.contains()::contains) ? Known.YES
                : statement.notStated().isEmpty() ? Known.NO : Known.UNKNOWN;
    }

    private static String said(Known listed) {
        return listed == Known.YES ? LISTED : listed == Known.NO ? NOT_LISTED : OPEN;
    }

    /** What is not stated may be of animal origin: the plan counts the dish by its origins, a word to a guest waits. */
    private static String diet(Known diet, DishFacts dish) {
        return diet == Known.NO ? "-" : diet == Known.YES && dish.complete() ? "yes" : OPEN;
    }

    private static Block promises(Kitchen kitchen, List<OnOffer.Slot> slots, Map<String, DishFacts> dishes) {
        List<Row> rows = new ArrayList<>();
        for (Promises.Coverage promise : kitchen.promises().coverage()) {
            List<String> kept = slots.stream().filter(s -> promise.course().isEmpty()
                    || kitchen.lines().stream().anyMatch(l -> l.id().equals(s.served().line())
                            && l.course().equals(promise.course().get())))
                    .map(s -> dishes.get(s.dish())).filter(d -> !d.ingredients().isEmpty() && d.statement().keeps(promise))
                    .map(DishFacts::name).distinct().toList();
            rows.add(Row.of(promise.say(), kept.size() + " (" + promise.atLeast() + " promised)", kept.isEmpty() ? "nothing"
                    : String.join("; ", kept)));
        }
        return new Block.Table(List.of(Column.words("By recipe", 24), Column.mark("today", 13), Column.words("Dishes", 63)),
                rows);
    }

    private static Data data(LocalDate day, Map<String, DishFacts> dishes) {
        List<String> header = new ArrayList<>(List.of("day", "dish", "name"));
        GROUPS.forEach(g -> header.add("lists_" + g.replace(' ', '_')));
        header.addAll(List.of("lists_wheat_rye_barley", "vegan_by_recipe", "vegetarian_by_recipe", "not_stated"));
        List<List<String>> rows = dishes.values().stream().map(d -> {
            List<String> row = new ArrayList<>(List.of(day.toString(), d.id(), d.name()));
            row.addAll(answers(d).stream().map(CoverageGrid::machine).toList());
            row.add(d.statement().notStated().stream().collect(Collectors.joining("; ")));
            return row;
        }).toList();
        return new Data(header, rows);
    }

    private static String machine(String answer) {
        return switch (answer) {
            case LISTED, "yes" -> "yes";
            case OPEN -> "not stated";
            default -> "no";
        };
    }
}
