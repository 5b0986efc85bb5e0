package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.book.Promises;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.WeekProblem;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns a book and a week into the problem that is solved: everything that is given before the search. */
public final class ProblemBuilder {
    /** Surplus keeps when it is still good on the second day after the week. */
    private static final int KEEP_DAY = Calendar.DAYS + 1;
    private static final int FOREVER = 400;
    private final Book book;
    private final Altered altered;
    private final Calendar calendar;
    private final WeekIndex index;
    private final Market market;
    private final RecipeFacts.Reader facts;

    private ProblemBuilder(Book book, IsoWeek week, Given given, Optional<LocalDateTime> now, Altered altered) {
        this.book = book;
        this.altered = altered;
        this.calendar = new Calendar(book, week, altered.notSold());
        this.index = new WeekIndex(book);
        this.market = new Market(book, calendar, index, given, now);
        this.facts = new RecipeFacts.Reader(book, market, index, altered.swaps());
    }

    /**
     * @param keptFaults what was asked to keep and cannot be meant; empty when all is well
     * @param gone the last cut-off that is past, of deliveries that the week could have used
     * @param swaps by dish: ingredients replaced by their declared substitute this week
     */
    public record Built(WeekProblem problem, List<String> keptFaults, Map<String, Map<String, String>> swaps,
            Optional<LocalDateTime> gone) { }

    /**
     * @param kept dish by slot id
     * @param now deliveries whose cut-off is before it are gone; empty: none is
     */
    public static Built build(Book book, IsoWeek week, Map<String, String> kept, Given given,
            Optional<LocalDateTime> now) {
        return build(book, week, kept, given, now, Altered.NOTHING);
    }

    /** @param altered how the week differs from what the book says */
    public static Built build(Book book, IsoWeek week, Map<String, String> kept, Given given,
            Optional<LocalDateTime> now, Altered altered) {
        return new ProblemBuilder(book, week, given, now, altered).build(kept, given, week);
    }

    private Built build(Map<String, String> kept, Given given, IsoWeek week) {
        Stock stock = new Stock(book, calendar, index, given);
        CandidateBuilder candidates = new CandidateBuilder(book, calendar, index, market, stock, facts);
        SlotBuilder slots = new SlotBuilder(book, calendar, index, given, kept, candidates, altered);
        ParOrders par = new ParOrders(book, market, stock, index);
        WeekProblem problem = new WeekProblem(week.toString(), calendar.date(0), Calendar.DAYS, calendar.openDays(),
                calendar.prepDays(), List.copyOf(slots.slots), items(par), ComponentBuilder.all(book, index, facts),
                par.offers(), List.copyOf(market.deliveries), ResourceBuilder.all(book, calendar),
                List.copyOf(stock.items), List.copyOf(stock.components),
                List.copyOf(stock.loose), prices(week), slots.eventCents);
        Map<String, Map<String, String>> swaps = new java.util.TreeMap<>();
        book.recipes().values().stream().filter(r -> r.worthOnly().isEmpty()).forEach(r -> {
            Map<String, String> own = facts.swaps(r.id());
            if (!own.isEmpty()) {
                swaps.put(r.id(), own);
            }
        });
        return new Built(problem, List.copyOf(slots.keptFaults), swaps, market.gone());
    }

    private List<WeekProblem.Item> items(ParOrders par) {
        Ratio wastePerMg = Ratio.of(book.kitchen().wastePerPound().value()).over(Unit.POUND.base()).over(1000);
        List<WeekProblem.Item> items = new ArrayList<>();
        for (Ingredient i : book.ingredients().values()) {
            if (i.free()) {
                continue;
            }
            Ratio share = i.keepWorth().orElse(book.kitchen().surplusWorth().getOrDefault(i.storage(), Ratio.ZERO));
            Ratio kept = i.isStaple() ? par.centsPerMg(i.id())
                    : market.centsPerGram(i.id()).over(1000).times(share);
            items.add(new WeekProblem.Item(i.id(), i.name(), i.isStaple() ? FOREVER : i.keepsDays(), KEEP_DAY, kept,
                    wastePerMg));
        }
        return items;
    }

    private WeekProblem.Prices prices(IsoWeek week) {
        Kitchen kitchen = book.kitchen();
        Promises p = kitchen.promises();
        List<WeekProblem.CoverageRule> coverage = p.coverage().stream()
                .map(c -> new WeekProblem.CoverageRule(c.id(), c.atLeast(), c.price().value())).toList();
        List<WeekProblem.VarietyRule> variety = p.variety().stream()
                .map(v -> new WeekProblem.VarietyRule(v.of().ordinal(), v.within() == Promises.Within.NEXT_DAY,
                        v.atMost(), v.price().value())).toList();
        Ratio target = kitchen.local().isPresent() ? book.seasons().targetFor(week) : Ratio.ZERO;
        return new WeekProblem.Prices(kitchen.gapDays(), coverage, variety, target, p.localShare(),
                p.foodCost().map(Promises.FoodCost::atMost).orElse(Ratio.ONE),
                p.foodCost().map(Promises.FoodCost::price).orElse(Ratio.ZERO), p.evennessPerMinute(),
                kitchen.receiving().map(r -> index.station(r.station())).orElse(-1),
                kitchen.receiving().map(Kitchen.Receiving::minutesPerDelivery).orElse(0));
    }
}
