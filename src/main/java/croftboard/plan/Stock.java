package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.OnHand;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import croftboard.need.WeekProblem;
import croftboard.safety.UseBy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Counted stock as dated lots. What carries no date is left out; what was frozen is planned to be thawed on the day
 * before the week, and the days used before freezing count, the day of making or delivery among them.
 */
final class Stock {
    private static final int THAWED_ON = Calendar.MONDAY - 1;
    private final Book book;
    private final Calendar calendar;
    private final WeekIndex index;
    private final RecipeTree tree;
    final List<WeekProblem.ItemStock> items = new ArrayList<>();
    final List<WeekProblem.ComponentStock> components = new ArrayList<>();
    final List<WeekProblem.ItemStock> loose = new ArrayList<>();
    /** AP grams counted of each staple. */
    final Map<String, Ratio> countedStaples = new TreeMap<>();

    Stock(Book book, Calendar calendar, WeekIndex index, Given given) {
        this.book = book;
        this.calendar = calendar;
        this.index = index;
        this.tree = new RecipeTree(book);
        for (OnHand row : book.onHand()) {
            if (book.recipes().containsKey(row.item())) {
                component(row, book.recipe(row.item()));
            } else {
                ingredient(row, book.ingredient(row.item()));
            }
        }
        for (Given.Lot lot : given.lots()) {
            items.add(new WeekProblem.ItemStock(index.item.get(lot.item()), Math.max(0, calendar.day(lot.from())),
                    calendar.day(lot.until()), lot.mg()));
        }
    }

    private void ingredient(OnHand row, Ingredient ingredient) {
        Ratio grams = tree.purchasedGrams(ingredient, row.amount());
        if (ingredient.isStaple()) {
            countedStaples.merge(ingredient.id(), grams, Ratio::plus);
            return;
        }
        Optional<LocalDate> since = row.received().or(row::opened).or(row::made);
        if (since.isEmpty() || ingredient.free()) {
            return;
        }
        lot(since.get(), ingredient.keepsDays(), row).map(l -> opened(l, ingredient, row)).ifPresent(l -> items.add(
                new WeekProblem.ItemStock(index.item.get(ingredient.id()), l.from, l.until, grams.times(1000).floor())));
    }

    /** An opened package that needs cold is good for seven days, the day of opening included, and never longer than unopened. */
    private Days opened(Days lot, Ingredient ingredient, OnHand row) {
        if (row.opened().isEmpty() || ingredient.tcs() == Ingredient.Tcs.NO
                || ingredient.storage() != Ingredient.Storage.WALK_IN || row.frozen().isPresent()) {
            return lot;
        }
        LocalDate last = UseBy.opened(row.opened().get(), calendar.date(lot.until));
        return new Days(lot.from, calendar.day(last));
    }

    private void component(OnHand row, Recipe recipe) {
        Integer number = index.component.get(recipe.id());
        if (number == null || row.made().isEmpty() || row.amount().unit().kind() == croftboard.measure.Unit.Kind.COUNT) {
            return;
        }
        Ratio grams = gramsOf(row.amount(), recipe);
        lot(row.made().get(), recipe.lifeDays() - 1, row).ifPresent(l -> {
            components.add(new WeekProblem.ComponentStock(number, l.from, l.until, grams.times(1000).floor()));
            Ratio batches = grams.over(recipe.makes().base());
            tree.purchased(recipe).forEach((item, perBatch) -> {
                if (index.item.containsKey(item) && !book.ingredient(item).isStaple()) {
                    loose.add(new WeekProblem.ItemStock(index.item.get(item), 0, Calendar.DAYS - 1,
                            perBatch.times(batches).times(1000).ceil()));
                }
            });
        });
    }

    private static Ratio gramsOf(Amount amount, Recipe recipe) {
        return amount.unit().kind() == croftboard.measure.Unit.Kind.MASS ? amount.base()
                : amount.base().over(croftboard.measure.Unit.CUP.base())
                        .times(recipe.cup().map(Amount::base).orElse(Ratio.ZERO));
    }

    private record Days(int from, int until) { }

    /** @param lifeDays last usable day is {@code since} + lifeDays */
    private Optional<Days> lot(LocalDate since, int lifeDays, OnHand row) {
        int from = Math.max(0, calendar.day(since));
        int until = calendar.day(since) + lifeDays;
        if (row.frozen().isPresent()) {
            int used = Math.toIntExact(java.time.temporal.ChronoUnit.DAYS.between(since, row.frozen().get()));
            int thawed = row.thawed().map(calendar::day).orElse(THAWED_ON);
            from = Math.max(0, thawed);
            until = thawed + lifeDays - used - 1;
        }
        return until < Calendar.MONDAY - 1 || from >= Calendar.DAYS ? Optional.empty()
                : Optional.of(new Days(from, until));
    }
}
