package croftboard.paper.served;

import croftboard.book.LabelStock;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
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
import croftboard.safety.file.FoodCodes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;

/**
 * Sheet 7: labels of what is packed ahead, a page of label stock for each day of making, one label a portion; and a list of
 * what is printed and what is not, with the reason.
 */
public final class Labels implements SheetMaker {
    @Override
    public SheetKind kind() {
        return SheetKind.LABEL;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        LabelStock stock = context.book().kitchen().paperwork().labels().orElse(PackLabel.SINGLE);
        List<PackLabel> labels = labels(context, stock);
        if (labels.isEmpty()) {
            return List.of();
        }
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(list(context, labels));
        TreeMap<LocalDate, List<PackLabel>> byDay = new TreeMap<>();
        labels.stream().filter(PackLabel::printed)
                .forEach(l -> byDay.computeIfAbsent(l.made().made(), k -> new ArrayList<>()).add(l));
        byDay.forEach((day, ofDay) -> sheets.add(page(context, stock, day, ofDay)));
        return sheets;
    }

    /** In order of making; of dishes on lines that the kitchen packs. */
    static List<PackLabel> labels(PaperContext context, LabelStock stock) {
        Set<String> packed = context.book().kitchen().paperwork().packed();
        FoodCode code = FoodCodes.of(context.book().kitchen().healthCodeEdition());
        TreeMap<LocalDate, List<PackLabel>> labels = new TreeMap<>();
        for (OnOffer.Slot slot : new OnOffer(context).slots()) {
            if (packed.contains(slot.served().line())) {
                for (WeekPlan.Production made : slot.served().productions()) {
                    if (context.filters().wants(made.made()) && context.filters().vendor().isEmpty()) {
                        labels.computeIfAbsent(made.made(), k -> new ArrayList<>()).add(PackLabel.of(context.book(), code,
                                stock, context.plan().complete(), slot.served(), made, DishFacts.of(context, slot.dish())));
                    }
                }
            }
        }
        return labels.values().stream().flatMap(List::stream).toList();
    }

    private static Sheet page(PaperContext context, LabelStock stock, LocalDate day, List<PackLabel> labels) {
        List<List<Block>> cells = new ArrayList<>();
        boolean single = stock.rows() * stock.columns() == 1;
        labels.forEach(l -> cells.addAll(Collections.nCopies(single ? 1 : l.copies(), l.words())));
        return new Sheet(SheetKind.LABEL, "label-" + day, "Labels, " + When.full(day), List.of(),
                List.of(new Block.LabelPage(stock, cells, PackLabel.LEAST_TYPE, PackLabel.MOST_TYPE)), data(labels),
                Sheet.Look.BARE, behind(context, labels));
    }

    private static Set<OrderKey> behind(PaperContext context, List<PackLabel> labels) {
        Origins origins = new Origins(context);
        Set<OrderKey> keys = new java.util.TreeSet<>();
        labels.forEach(l -> keys.addAll(origins.of(l.slot(), l.made().lastServed()).orders()));
        return keys;
    }

    private static Sheet list(PaperContext context, List<PackLabel> labels) {
        List<Block> blocks = new ArrayList<>();
        List<PackLabel> not = labels.stream().filter(l -> !l.printed()).toList();
        blocks.add(new Block.Heading(1, not.isEmpty() ? "Every packed dish has its label" : "Not printed"));
        not.forEach(l -> {
            blocks.add(new Block.Heading(3, l.dish().name() + ", made " + When.day(l.made().made()) + ", " + l.copies()
                    + " portions"));
            blocks.add(new Block.Text("No label: " + String.join("; ", l.why()) + "."));
            blocks.add(new Block.Text("What is known: " + l.dish().contains()
                    + l.dish().advised().map(a -> " " + a).orElse("")));
        });
        if (!not.isEmpty()) {
            blocks.add(new Block.Notice("What has no label is not packed ahead: sell it from the case, portioned to order, with"
                    + " its card; or get the missing statement from the supplier and write it into the book."));
        }
        blocks.add(new Block.Heading(1, "Printed"));
        List<Row> rows = new ArrayList<>();
        labels.stream().filter(PackLabel::printed).forEach(l -> rows.add(Row.of(When.day(l.made().made()), l.dish().name(),
                Integer.toString(l.copies()), When.day(l.made().useBy()), "")));
        blocks.add(new Block.Table(List.of(Column.words("Made", 14), Column.words("Dish", 44), Column.figure("Labels", 10),
                Column.words("Use by", 14), Column.blank("Stuck on", 12)), rows));
        blocks.add(new Block.Text("The use-by date is the earliest of the dish and its components; a new label never sets it"
                + " back. Weigh each pack where the label leaves a blank. Read one label of every dish aloud before the rest"
                + " are stuck on. After any substitution: throw the labels away and print again."));
        blocks.add(new Block.Text(Caution.staff(context.book().kitchen())));
        return new Sheet(SheetKind.LABEL, "label-list-" + context.plan().week().toString().toLowerCase(Locale.ROOT),
                "Labels, " + context.plan().week(), List.of("For the one who packs: what is printed, what is not, and why"),
                blocks, data(labels), Sheet.Look.PLAIN, behind(context, labels));
    }

    private static Data data(List<PackLabel> labels) {
        Data.Building data = Data.of("made", "line", "dish", "name", "portions", "printed", "why_not", "ingredients",
                "contains", "net_weight_g", "use_by", "price_usd", "number");
        for (PackLabel l : labels) {
            data.row(l.made().made(), l.slot().line(), l.dish().id(), l.dish().name(), l.copies(), l.printed() ? "yes" : "no",
                    String.join("; ", l.why()), l.ingredients(), l.dish().contains(),
                    l.declaredGrams().map(Ratio::floor).map(Object::toString).orElse(""), l.made().useBy(),
                    l.dish().recipe().flatMap(r -> r.sale()).map(s -> dollars(s.price())).orElse(""),
                    l.number().map(PriceNumber::digits).orElse(""));
        }
        return data.done();
    }

    static String dollars(Cents cents) {
        return java.math.BigDecimal.valueOf(cents.value(), 2).toPlainString();
    }
}
