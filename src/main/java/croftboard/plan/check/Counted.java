package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.OnHand;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.plan.Given;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is on hand, dated. What carries no date is not used. What was frozen is thawed on the Sunday before the week unless
 * the count says when; days used before freezing count.
 */
final class Counted {
    /** @param from, until both included */
    record Lot(String item, LocalDate from, LocalDate until, long mg) { }

    private final Book book;
    private final Days days;
    private final List<Lot> ingredients = new ArrayList<>();
    private final List<Lot> components = new ArrayList<>();
    private final SortedMap<String, Ratio> stapleGrams = new TreeMap<>();

    Counted(Book book, Days days, Given given) {
        this.book = book;
        this.days = days;
        for (OnHand row : book.onHand()) {
            if (book.recipes().containsKey(row.item())) {
                component(row, book.recipe(row.item()));
            } else {
                ingredient(row, book.ingredient(row.item()));
            }
        }
        given.lots().forEach(l -> ingredients.add(new Lot(l.item(), l.from(), l.until(), l.mg())));
    }

    List<Lot> ingredients(String item) {
        return ingredients.stream().filter(l -> l.item().equals(item)).toList();
    }

    /** In the order of the count. */
    List<Lot> components(String recipe) {
        return components.stream().filter(l -> l.item().equals(recipe)).toList();
    }

    /** Grams counted of each staple that was counted. */
    SortedMap<String, Ratio> stapleGrams() {
        return stapleGrams;
    }

    private void ingredient(OnHand row, Ingredient of) {
        Ratio grams = Weights.held(of, row.amount());
        if (of.isStaple()) {
            stapleGrams.merge(of.id(), grams, Ratio::plus);
        } else if (!of.free()) {
            row.received().or(row::opened).or(row::made)
                    .flatMap(since -> lot(row, since, of.keepsDays(), Weights.mgDown(grams)))
                    .map(lot -> opened(lot, row, of)).ifPresent(ingredients::add);
        }
    }

    /** Opened food that needs cold: at most the day of opening and six more. */
    private static Lot opened(Lot lot, OnHand row, Ingredient of) {
        boolean seven = row.opened().isPresent() && row.frozen().isEmpty() && of.tcs() != Ingredient.Tcs.NO
                && of.storage() == Ingredient.Storage.WALK_IN;
        LocalDate last = seven ? row.opened().get().plusDays(6) : lot.until();
        return last.isBefore(lot.until()) ? new Lot(lot.item(), lot.from(), last, lot.mg()) : lot;
    }

    private void component(OnHand row, Recipe of) {
        boolean used = book.recipes().values().stream().flatMap(r -> r.ingredients().stream())
                .anyMatch(l -> l.item().equals(of.id()));
        if (used && row.made().isPresent() && row.amount().unit().kind() != Unit.Kind.COUNT) {
            lot(row, row.made().get(), of.lifeDays() - 1, Weights.mgDown(Weights.component(row.amount(), of)))
                    .ifPresent(components::add);
        }
    }

    private Optional<Lot> lot(OnHand row, LocalDate since, int lasts, long mg) {
        LocalDate sunday = days.monday().minusDays(1);
        LocalDate from = since;
        LocalDate until = since.plusDays(lasts);
        if (row.frozen().isPresent()) {
            from = row.thawed().orElse(sunday);
            until = from.plusDays(lasts - ChronoUnit.DAYS.between(since, row.frozen().get()) - 1);
        }
        boolean useful = !until.isBefore(sunday) && !from.isAfter(days.sunday());
        return useful ? Optional.of(new Lot(row.item(), from, until, mg)) : Optional.empty();
    }
}
