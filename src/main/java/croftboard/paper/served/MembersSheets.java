package croftboard.paper.served;

import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import croftboard.paper.Block;
import croftboard.paper.Data;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * Sheet 9: what the case has this week, day by day, each dish with the farms that deliver for it: once with everything, fit for
 * a newsletter, and once as a poster.
 */
public final class MembersSheets implements SheetMaker {
    private static final int SOON_WEEKS = 2;

    @Override
    public SheetKind kind() {
        return SheetKind.MEMBERS;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        SortedMap<LocalDate, List<OnOffer.Slot>> days = new OnOffer(context).days();
        if (days.isEmpty() || context.filters().vendor().isPresent()) {
            return List.of();
        }
        Origins origins = new Origins(context);
        String week = context.plan().week().toString().toLowerCase(Locale.ROOT)
                + context.filters().day().map(d -> "-" + d).orElse("");
        String title = "This week's case";
        String under = context.book().kitchen().name() + ", " + When.full(days.firstKey())
                + (days.size() > 1 ? " to " + When.full(days.lastKey()) : "");
        return List.of(
                new Sheet(kind(), "members-" + week, title, List.of(under), letter(context, origins, days), data(context, origins, days),
                        Sheet.Look.PLAIN, orders(origins, days)),
                new Sheet(kind(), "members-poster-" + week, title, List.of(under,
                        "What each dish contains stands on its card at the case."), poster(context, origins, days),
                        data(context, origins, days), Sheet.Look.PLAIN.onOnePage(), orders(origins, days)));
    }

    private static List<Block> letter(PaperContext context, Origins origins, SortedMap<LocalDate, List<OnOffer.Slot>> days) {
        List<Block> blocks = new ArrayList<>();
        season(context).ifPresent(s -> blocks.add(new Block.Text(s)));
        Map<String, LocalDate> told = new LinkedHashMap<>();
        days.forEach((day, slots) -> {
            blocks.add(new Block.Heading(1, When.full(day)));
            slots.forEach(slot -> dish(context, origins, slot, day, told, blocks));
        });
        blocks.add(new Block.Notice(DishFacts.caution() + " Vegan says nothing about allergens. Ask at the counter: the card"
                + " beside the dish of the day is what holds."));
        blocks.add(new Block.Text("Farms are those whose deliveries are on order for the dish. If a farm falls short, the card"
                + " changes."));
        return blocks;
    }

    /** In full the first time; again on a later day only if something behind it is another. */
    private static void dish(PaperContext context, Origins origins, OnOffer.Slot slot, LocalDate day,
            Map<String, LocalDate> told, List<Block> blocks) {
        DishFacts dish = DishFacts.of(context, slot.dish());
        Optional<String> farms = origins.of(slot.served(), day).sentence();
        blocks.add(new Block.Heading(3, dish.name() + price(dish)));
        LocalDate before = told.putIfAbsent(slot.dish() + " " + farms.orElse(""), day);
        if (before != null) {
            blocks.add(new Block.Text("As on " + weekday(before) + "."));
            return;
        }
        String contains = dish.contains() + dish.advised().map(a -> " " + a).orElse("")
                + (dish.diet().isPresent() ? " Vegan by recipe." : "");
        blocks.add(new Block.Text(farms.map(f -> f + "\n").orElse("") + contains));
    }

    private static String price(DishFacts dish) {
        return dish.recipe().flatMap(Recipe::sale).map(s -> ", " + s.price()).orElse("");
    }

    private static List<Block> poster(PaperContext context, Origins origins, SortedMap<LocalDate, List<OnOffer.Slot>> days) {
        List<Block> blocks = new ArrayList<>();
        List<List<Block>> columns = List.of(new ArrayList<>(), new ArrayList<>());
        Map<OnOffer.Slot, List<LocalDate>> all = runs(days);
        List<OnOffer.Slot> several = all.keySet().stream().filter(s -> all.get(s).size() > 1).toList();
        int n = 0;
        for (Map.Entry<LocalDate, List<OnOffer.Slot>> day : days.entrySet()) {
            List<String> dishes = day.getValue().stream().filter(s -> !several.contains(s))
                    .map(s -> "\u2022 " + DishFacts.of(context, s.dish()).name()).toList();
            if (!dishes.isEmpty()) {
                List<Block> column = columns.get(2 * n++ < days.size() ? 0 : 1);
                column.add(new Block.Heading(3, When.full(day.getKey()).replaceFirst(", \\d+$", "")));
                column.add(new Block.Text(String.join("\n", dishes)));
            }
        }
        Set<String> farms = new TreeSet<>();
        days.forEach((day, slots) -> slots.forEach(s -> farms.addAll(origins.of(s.served(), day).growers().keySet())));
        if (!farms.isEmpty()) {
            columns.get(0).add(new Block.Heading(3, "On order from the farms"));
            columns.get(0).add(new Block.Text(String.join(", ", farms) + "."));
        }
        blocks.add(new Block.Columns(columns));
        if (!several.isEmpty()) {
            blocks.add(new Block.Heading(3, "Several days"));
            Map<String, String> runs = new LinkedHashMap<>();
            several.forEach(s -> runs.merge(DishFacts.of(context, s.dish()).name(), weekday(all.get(s).get(0)) + " to "
                    + weekday(all.get(s).get(all.get(s).size() - 1)), (one, other) -> one + ", " + other));
            blocks.add(new Block.Text(String.join("\n", runs.entrySet().stream().map(e -> "\u2022 " + e.getKey() + " ("
                    + e.getValue() + ")").toList())));
        }
        return blocks;
    }

    private static String weekday(LocalDate day) {
        return day.getDayOfWeek().getDisplayName(java.time.format.TextStyle.FULL, Locale.ENGLISH);
    }

    private static Map<OnOffer.Slot, List<LocalDate>> runs(SortedMap<LocalDate, List<OnOffer.Slot>> days) {
        Map<OnOffer.Slot, List<LocalDate>> runs = new LinkedHashMap<>();
        days.forEach((day, slots) -> slots.forEach(s -> runs.computeIfAbsent(s, k -> new ArrayList<>()).add(day)));
        return runs;
    }

    /** What of the region's calendar is in season and on order from local fields, and what ends soon. */
    static Optional<String> season(PaperContext context) {
        IsoWeek week = context.plan().week();
        Set<String> now = new TreeSet<>();
        Set<String> ending = new TreeSet<>();
        for (Seasons.Crop crop : context.book().seasons().crops()) {
            if (crop.weeks().holds(week) && ordered(context, crop.item())) {
                String name = context.called().item(crop.item());
                now.add(name);
                if (!crop.weeks().holds(week.plusWeeks(SOON_WEEKS))) {
                    ending.add(name);
                }
            }
        }
        return now.isEmpty() ? Optional.empty() : Optional.of("In season and on order from local fields: "
                + String.join(", ", now) + "." + (ending.isEmpty() ? "" : " Soon over: " + String.join(", ", ending) + "."));
    }

    private static boolean ordered(PaperContext context, String item) {
        return context.plan().orders().stream().filter(o -> !context.notSent().contains(OrderKey.of(o)))
                .flatMap(o -> o.lines().stream())
                .anyMatch(l -> l.item().equals(item) && l.packs() > 0 && l.locality() == WeekProblem.Locality.LOCAL);
    }

    private static Set<OrderKey> orders(Origins origins, SortedMap<LocalDate, List<OnOffer.Slot>> days) {
        Set<OrderKey> orders = new TreeSet<>();
        days.forEach((day, slots) -> slots.forEach(s -> orders.addAll(origins.of(s.served(), day).orders())));
        return orders;
    }

    private static Data data(PaperContext context, Origins origins, SortedMap<LocalDate, List<OnOffer.Slot>> days) {
        Data.Building data = Data.of("day", "line", "dish", "name", "price_usd", "grown_by", "made_by", "contains");
        days.forEach((day, slots) -> slots.forEach(s -> {
            DishFacts dish = DishFacts.of(context, s.dish());
            Origins.Behind behind = origins.of(s.served(), day);
            data.row(day, s.served().line(), s.dish(), dish.name(),
                    dish.recipe().flatMap(Recipe::sale).map(x -> Labels.dollars(x.price())).orElse(""),
                    String.join("; ", behind.growers().keySet()), String.join("; ", behind.makers().keySet()), dish.contains());
        }));
        return data.done();
    }
}
