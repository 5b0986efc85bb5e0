package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.forecast.Demand;
import croftboard.forecast.Newsvendor;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One dish on given days as numbers: productions, portions, expected sales, needs, uses. */
final class CandidateBuilder {
    private final Book book;
    private final Calendar calendar;
    private final WeekIndex index;
    private final Market market;
    private final Stock stock;
    private final RecipeFacts.Reader facts;
    private final Map<String, Demand> demands = new HashMap<>();
    private final Map<String, Ratio> portionCents = new HashMap<>();
    private final int[] lives;

    CandidateBuilder(Book book, Calendar calendar, WeekIndex index, Market market, Stock stock,
            RecipeFacts.Reader facts) {
        this.book = book;
        this.calendar = calendar;
        this.index = index;
        this.market = market;
        this.stock = stock;
        this.facts = facts;
        this.lives = book.ingredients().values().stream().filter(i -> !i.free()).mapToInt(Ingredient::keepsDays).toArray();
    }

    Map<String, String> swaps(String recipe) {
        return facts.swaps(recipe);
    }

    /**
     * Empty when the dish cannot stand there: too short a life, or something that nobody sells; never empty when forced.
     *
     * @param madeBefore batches by day of making, where they are no longer open
     */
    Optional<WeekProblem.Candidate> forLine(Recipe dish, Kitchen.ServiceLine line, int[] days, long covers,
            boolean forced, Map<LocalDate, Ratio> madeBefore) {
        if (dish.worthOnly().isPresent()) {
            return Optional.of(WorthOnlyCandidate.of(dish, days, index));
        }
        Optional<List<int[]>> parts = Productions.split(dish, Lives.days(book, dish), days, calendar);
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        List<Made> made = new ArrayList<>();
        for (int[] part : parts.get()) {
            made.add(sold(dish, line, part, madeBefore));
        }
        return built(dish, made, covers, forced);
    }

    /** An event's course: so many portions, paid by the head and not by the portion. */
    Optional<WeekProblem.Candidate> forEvent(Recipe dish, int day, int portions, boolean forced) {
        int on = calendar.prepDayAtOrBefore(day - dish.leadDays());
        if (dish.worthOnly().isPresent() || on < 0 || on + Lives.days(book, dish) - 1 < day) {
            return Optional.empty();
        }
        Ratio batches = Ratio.of(portions).over(dish.portionsPerBatch()).ceilTo(dish.batchStep());
        return built(dish, List.of(new Made(on, day, batches, portionsOf(dish, batches), 0, 0)), 0, forced);
    }

    /** One production. */
    private record Made(int day, int last, Ratio batches, int portions, long sales, long left) { }

    /** @param part production day, then the service days it covers */
    private Made sold(Recipe dish, Kitchen.ServiceLine line, int[] part, Map<LocalDate, Ratio> madeBefore) {
        Recipe.Sale sale = dish.sale().orElseThrow();
        Demand demand = demandOver(line, part, sale.draw());
        double price = sale.price().value();
        double food = portionCents.computeIfAbsent(dish.id(), id -> facts.portionCents(dish)).toDouble();
        double brings = book.kitchen().leftWorth().toDouble() * price;
        double missed = price - food + book.kitchen().goodwill().toDouble() * price;
        int wanted = Math.max(1, Newsvendor.quantity(demand, Newsvendor.ratio(missed, food - brings)));
        Ratio batches = madeBefore.getOrDefault(calendar.date(part[0]),
                Ratio.of(wanted).over(dish.portionsPerBatch()).ceilTo(dish.batchStep()));
        int portions = portionsOf(dish, batches);
        double sold = demand.expectedSales(portions);
        return new Made(part[0], part[part.length - 1], batches, portions, Math.round(price * sold),
                Math.round(brings * (portions - sold)));
    }

    private static int portionsOf(Recipe dish, Ratio batches) {
        return Math.toIntExact(batches.times(dish.portionsPerBatch()).floor());
    }

    private Demand demandOver(Kitchen.ServiceLine line, int[] part, Ratio draw) {
        return demands.computeIfAbsent(line.id() + " " + java.util.Arrays.toString(part) + " " + draw, k -> {
            Demand sum = demandOn(line, part[1], draw);
            for (int i = 2; i < part.length; i++) {
                sum = sum.plus(demandOn(line, part[i], draw));
            }
            return sum;
        });
    }

    private Demand demandOn(Kitchen.ServiceLine line, int day, Ratio draw) {
        Seasons.LineDemand d = book.seasons().demand().get(line.id());
        Ratio mean = d.mean().getOrDefault(calendar.weekday(day), Ratio.ZERO).times(draw)
                .times(book.seasons().demandFactorFor(calendar.week()));
        return Demand.ofDay(mean.toDouble(), d.cv().toDouble());
    }

    private Optional<WeekProblem.Candidate> built(Recipe dish, List<Made> made, long covers, boolean forced) {
        RecipeFacts own = facts.of(dish.id());
        Map<Integer, Map<Integer, Long>> needs = new TreeMap<>();
        List<WeekProblem.Use> uses = new ArrayList<>();
        List<WeekProblem.Demand> parts = new ArrayList<>();
        List<WeekProblem.LooseNeed> loose = new ArrayList<>();
        LooseNeeds through = new LooseNeeds(book, index, facts);
        long staples = 0;
        long looseStaples = 0;
        long sales = 0;
        long left = 0;
        int portions = 0;
        List<WeekProblem.Production> productions = new ArrayList<>();
        for (Made m : made) {
            for (RecipeFacts.ItemNeed n : own.needs()) {
                int day = Math.max(0, m.day - n.ahead());
                long mg = n.grams().times(m.batches).times(1000).ceil();
                needs.computeIfAbsent(index.item.get(n.item()), k -> new TreeMap<>()).merge(day, mg, Long::sum);
            }
            own.parts().forEach((part, grams) -> parts.add(new WeekProblem.Demand(index.component.get(part), m.day, m.last,
                    grams.times(m.batches).times(1000).ceil())));
            uses.addAll(Uses.of(own, m.batches, m.portions, m.day, m.last, index, book));
            staples += own.stapleCents().times(m.batches).round();
            looseStaples += through.add(dish.id(), m.batches, m.day, m.day, m.last, loose);
            sales += m.sales;
            left += m.left;
            portions += m.portions;
            productions.add(new WeekProblem.Production(m.day, m.last, m.day + Lives.days(book, dish) - 1, m.batches,
                    m.portions));
        }
        if (!forced && !(buyable(loose) && partsLive(parts))) {
            return Optional.empty();
        }
        List<WeekProblem.Need> flat = new ArrayList<>();
        needs.forEach((item, byDay) -> byDay.forEach((day, mg) -> flat.add(new WeekProblem.Need(item, day, mg))));
        Recipe.Sale sale = dish.sale().orElseThrow();
        return Optional.of(new WeekProblem.Candidate(index.dish.get(dish.id()), dish.id(), portions, sales, left, staples,
                flat, uses, parts, loose, looseStaples, covers, index.main.get(sale.main()),
                index.method.get(sale.method()), index.cuisine.get(sale.cuisine()), productions));
    }

    /** Every need can be met by some delivery or stock, whatever else is planned. */
    private boolean buyable(List<WeekProblem.LooseNeed> needs) {
        return needs.stream().allMatch(n -> {
            return market.reachable(n.item(), lives[n.item()], n.from(), n.to()) || stock.items.stream().anyMatch(
                    s -> s.item() == n.item() && s.from() <= n.to() && s.until() >= n.from())
                    || stock.loose.stream().anyMatch(s -> s.item() == n.item());
        });
    }

    /** Every component can be made on a prep day so that it lives as long as the dish is served. */
    private boolean partsLive(List<WeekProblem.Demand> parts) {
        return parts.stream().allMatch(d -> {
            Recipe part = book.recipe(index.components.get(d.component()));
            int day = calendar.prepDayAtOrBefore(d.useDay() - part.leadDays());
            return day >= 0 && day + Lives.days(book, part) - 1 >= d.lastDay();
        });
    }
}
