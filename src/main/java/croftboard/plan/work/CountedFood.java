package croftboard.plan.work;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.OnHand;
import croftboard.book.Recipe;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.RecipeTree;
import croftboard.safety.UseBy;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Counted food as a week's plan takes it: dated lots. What carries no date is not used. What was frozen here is thawed on
 * the Sunday before the week unless the count says when.
 */
final class CountedFood {
    /**
     * @param row of the count
     * @param from, until both included
     */
    record Lot(OnHand row, LocalDate from, LocalDate until, long mg) {
        /** Frozen here and, by the count, still in the freezer. */
        boolean frozen() {
            return row.frozen().isPresent() && row.thawed().isEmpty();
        }
    }

    private final Book book;
    private final IsoWeek week;
    private final RecipeTree tree;
    private final List<Lot> lots = new ArrayList<>();

    CountedFood(Book book, IsoWeek week) {
        this.book = book;
        this.week = week;
        this.tree = new RecipeTree(book);
        for (OnHand row : book.onHand()) {
            if (book.recipes().containsKey(row.item())) {
                component(row, book.recipe(row.item()));
            } else {
                ingredient(row, book.ingredient(row.item()));
            }
        }
    }

    /** In the order of the count. */
    List<Lot> of(String item) {
        return lots.stream().filter(l -> l.row.item().equals(item)).toList();
    }

    private void ingredient(OnHand row, Ingredient of) {
        if (!of.isStaple() && !of.free()) {
            long mg = tree.purchasedGrams(of, row.amount()).times(1000).floor();
            row.received().or(row::opened).or(row::made).flatMap(since -> lot(row, since, of.keepsDays(), mg))
                    .map(l -> opened(l, of)).ifPresent(lots::add);
        }
    }

    private static Lot opened(Lot lot, Ingredient of) {
        boolean seven = lot.row.opened().isPresent() && lot.row.frozen().isEmpty() && of.tcs() != Ingredient.Tcs.NO
                && of.storage() == Ingredient.Storage.WALK_IN;
        return seven ? new Lot(lot.row, lot.from, UseBy.opened(lot.row.opened().get(), lot.until), lot.mg) : lot;
    }

    private void component(OnHand row, Recipe of) {
        if (row.made().isPresent() && row.amount().unit().kind() != Unit.Kind.COUNT) {
            Ratio grams = row.amount().unit().kind() == Unit.Kind.MASS ? row.amount().base()
                    : of.cup().map(c -> c.base().times(row.amount().base()).over(Unit.CUP.base())).orElse(Ratio.ZERO);
            lot(row, row.made().get(), of.lifeDays() - 1, grams.times(1000).floor()).ifPresent(lots::add);
        }
    }

    private Optional<Lot> lot(OnHand row, LocalDate since, int lasts, long mg) {
        LocalDate sunday = week.monday().minusDays(1);
        LocalDate from = since;
        LocalDate until = since.plusDays(lasts);
        if (row.frozen().isPresent()) {
            from = row.thawed().orElse(sunday);
            until = from.plusDays(lasts - ChronoUnit.DAYS.between(since, row.frozen().get()) - 1);
        }
        boolean useful = !until.isBefore(sunday) && !from.isAfter(week.monday().plusDays(6));
        return useful ? Optional.of(new Lot(row, from, until, mg)) : Optional.empty();
    }
}
