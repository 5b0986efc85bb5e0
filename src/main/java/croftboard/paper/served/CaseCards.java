package croftboard.paper.served;

import croftboard.book.LabelStock;
import croftboard.book.Recipe;
import croftboard.measure.CookAmounts;
import croftboard.paper.Block;
import croftboard.paper.Data;
import croftboard.paper.LabelFit;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Sheet 8: a card at the case for each dish: price, what it contains and what is not stated, the caution, the farms behind it.
 * Four to a page, to be cut; a dish that says too much for a quarter has a page of its own.
 */
public final class CaseCards implements SheetMaker {
    static final int LEAST_TYPE = 11;
    static final int MOST_TYPE = 15;
    /** Quarters of the paper, less an edge that printers leave white. */
    private static final LabelStock LETTER = new LabelStock(2, 2, 9_000, 9_000, 90_000, 121_700, 107_950, 139_700);
    private static final LabelStock A4 = new LabelStock(2, 2, 9_000, 9_000, 87_000, 130_500, 105_000, 148_500);

    @Override
    public SheetKind kind() {
        return SheetKind.CASE_CARD;
    }

    /** @param day the first that the filters want */
    private record Card(WeekPlan.Served slot, LocalDate day, DishFacts dish, Origins.Behind behind, List<Block> words) { }

    @Override
    public List<Sheet> make(PaperContext context) {
        if (context.filters().vendor().isPresent()) {
            return List.of();
        }
        LabelStock stock = context.book().kitchen().paper().equals("a4") ? A4 : LETTER;
        TreeMap<LocalDate, List<Card>> byDay = new TreeMap<>();
        cards(context).forEach(c -> byDay.computeIfAbsent(c.day(), k -> new ArrayList<>()).add(c));
        List<Sheet> sheets = new ArrayList<>();
        byDay.forEach((day, cards) -> {
            List<Card> fit = cards.stream().filter(c -> fits(stock, c)).toList();
            if (!fit.isEmpty()) {
                sheets.add(new Sheet(kind(), "case-card-" + day, "Case cards, " + When.full(day), List.of(),
                        List.of(new Block.LabelPage(stock, fit.stream().map(Card::words).toList(), LEAST_TYPE, MOST_TYPE)),
                        data(fit), Sheet.Look.BARE, orders(fit)));
            }
            cards.stream().filter(c -> !fits(stock, c)).forEach(c -> sheets.add(new Sheet(kind(), "case-card-" + day + "-"
                    + c.slot().line(), "Case card", List.of(When.full(day)), c.words(), data(List.of(c)), Sheet.Look.BIG,
                    orders(List.of(c)))));
        });
        return sheets;
    }

    private static boolean fits(LabelStock stock, Card card) {
        return LabelFit.type(stock, card.words(), LEAST_TYPE, MOST_TYPE).isPresent();
    }

    private static List<Card> cards(PaperContext context) {
        Origins origins = new Origins(context);
        List<Card> cards = new ArrayList<>();
        for (OnOffer.Slot slot : new OnOffer(context).slots()) {
            WeekPlan.Served served = slot.served();
            served.days().stream().filter(context.filters()::wants).findFirst().ifPresent(day -> {
                DishFacts dish = DishFacts.of(context, slot.dish());
                Origins.Behind behind = origins.of(served, day);
                cards.add(new Card(served, day, dish, behind, words(context, served, dish, behind)));
            });
        }
        return cards;
    }

    private static List<Block> words(PaperContext context, WeekPlan.Served slot, DishFacts dish, Origins.Behind behind) {
        List<Block> words = new ArrayList<>();
        if (!context.plan().complete()) {
            words.add(new Block.Notice("The plan is not complete: not for the case yet."));
        }
        words.add(new Block.Heading(1, dish.name()));
        dish.recipe().flatMap(Recipe::sale).ifPresent(s -> words.add(new Block.Text(s.price() + " a portion, "
                + CookAmounts.of(s.portion()))));
        words.add(new Block.Notice(dish.contains()));
        dish.advised().ifPresent(a -> words.add(new Block.Heading(3, a)));
        words.add(new Block.Text(DishFacts.caution() + " Ask us."));
        dish.diet().ifPresent(d -> words.add(new Block.Text(d)));
        behind.sentence().ifPresent(s -> words.add(new Block.Heading(3, s)));
        List<LocalDate> days = slot.days();
        words.add(new Block.Text(context.called().line(slot.line()) + " \u00b7 " + When.day(days.get(0))
                + (days.size() > 1 ? " to " + When.day(days.get(days.size() - 1)) : "") + "\n" + context.planName()
                + (context.posted() ? "" : " draft")));
        return List.copyOf(words);
    }

    private static Set<OrderKey> orders(List<Card> cards) {
        Set<OrderKey> orders = new TreeSet<>();
        cards.forEach(c -> orders.addAll(c.behind().orders()));
        return orders;
    }

    private static Data data(List<Card> cards) {
        Data.Building data = Data.of("day", "line", "dish", "name", "price_usd", "contains", "advisory", "vegan_by_recipe",
                "grown_by", "made_by");
        for (Card c : cards) {
            data.row(c.day(), c.slot().line(), c.dish().id(), c.dish().name(),
                    c.dish().recipe().flatMap(Recipe::sale).map(s -> Labels.dollars(s.price())).orElse(""), c.dish().contains(),
                    c.dish().advised().orElse(""), c.dish().diet().isPresent() ? "yes" : "",
                    String.join("; ", c.behind().growers().keySet()), String.join("; ", c.behind().makers().keySet()));
        }
        return data.done();
    }
}
