package croftboard.book.file;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Kitchen.ServiceLine;
import croftboard.book.OnHand;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is allowed in a faultless book, but deserves a look. */
final class Remarks {
    private static final Ratio LEEWAY = Ratio.of(3, 100);
    private final Notebook notebook;
    private final Book book;

    Remarks(Notebook notebook, Book book) {
        this.notebook = notebook;
        this.book = book;
    }

    void look() {
        Set<String> used = new HashSet<>();
        book.recipes().values().forEach(r -> r.ingredients().forEach(l -> used.add(l.item())));
        Set<String> courses = new HashSet<>();
        book.seasons().events().forEach(e -> e.menu().forEach(c -> courses.add(c.course())));
        for (ServiceLine line : book.kitchen().lines()) {
            courses.add(line.id());
            courses.add(line.course());
        }
        Weigher weigher = new Weigher(book.ingredients(), book.recipes());
        for (Recipe recipe : book.recipes().values()) {
            recipe.sale().ifPresent(s -> fits(recipe, s, courses));
            if (!recipe.isDish() && !used.contains(recipe.id())) {
                notebook.warn(notebook.spotOf(recipe), "no recipe uses the component [" + recipe.id()
                        + "]");
            }
            weight(recipe, weigher);
            garlicInOil(recipe, weigher);
        }
        statements();
        for (OnHand counted : book.onHand()) {
            if (counted.received().or(counted::made).or(counted::opened).or(counted::frozen)
                    .or(counted::thawed).isEmpty()) {
                notebook.warn(notebook.spotOf(counted), "[" + counted.item()
                        + "] is counted without any date: not usable in ready-to-eat food");
            }
        }
    }

    private void fits(Recipe recipe, Recipe.Sale sale, Set<String> courses) {
        List<String> strange = sale.fits().stream().filter(f -> !courses.contains(f)).toList();
        String words = String.join(", ", strange);
        Optional<String> meant = strange.isEmpty() ? Optional.empty() : notebook.nearest()
                .of(strange.get(0), courses);
        String hint = meant.map(m -> "; did you mean [" + m + "]?").orElse("");
        if (strange.size() == sale.fits().size()) {
            notebook.warn(notebook.spotOf(sale), "no line fits [" + recipe.id() + "]: " + words + hint);
        } else if (!strange.isEmpty()) {
            notebook.warn(notebook.spotOf(sale), "[" + recipe.id() + "] fits " + words
                    + ", which is no course or line" + hint);
        }
    }

    private void weight(Recipe recipe, Weigher weigher) {
        Ratio sum = Ratio.ZERO;
        for (Recipe.Line line : recipe.ingredients()) {
            Optional<Ratio> grams = weigher.grams(line);
            if (grams.isEmpty()) {
                return;
            }
            sum = sum.plus(grams.get());
        }
        Ratio ready = sum.times(Ratio.ONE.minus(recipe.loss()));
        Ratio makes = recipe.makes().base();
        Ratio off = ready.compareTo(makes) > 0 ? ready.minus(makes) : makes.minus(ready);
        if (recipe.worthOnly().isEmpty() && off.compareTo(makes.times(LEEWAY)) > 0) {
            notebook.warn(notebook.spotOf(recipe), "[" + recipe.id() + "] makes " + shown(recipe.makes())
                    + ", but its ingredients"
                    + " less " + percent(recipe.loss()) + " loss weigh "
                    + shown(inUnitOf(ready, recipe.makes().unit())));
        }
    }

    /** More oil than everything else together, with garlic in it, and longer kept than garlic in oil may be. */
    private void garlicInOil(Recipe recipe, Weigher weigher) {
        Ratio all = Ratio.ZERO;
        Ratio oil = Ratio.ZERO;
        boolean garlic = false;
        for (Recipe.Line line : recipe.ingredients()) {
            Ratio grams = weigher.grams(line).orElse(Ratio.ZERO);
            List<String> words = List.of(line.item().split("-"));
            all = all.plus(grams);
            oil = words.contains("oil") ? oil.plus(grams) : oil;
            garlic |= words.contains("garlic");
        }
        if (garlic && !recipe.care().garlicInOil() && recipe.lifeDays() > CareReader.GARLIC_IN_OIL_DAYS
                && oil.times(2).compareTo(all) > 0) {
            notebook.warn(notebook.spotOf(recipe), "[" + recipe.id() + "] looks like garlic in oil with a life of "
                    + recipe.lifeDays() + " days: if it is, write garlic_in_oil: yes and at most 4 days");
        }
    }

    private static Amount inUnitOf(Ratio grams, Unit unit) {
        return new Amount(grams, Unit.GRAM).in(unit);
    }

    private static String shown(Amount amount) {
        return amount.value().toDecimal(2).stripTrailingZeros().toPlainString() + " " + amount.unit();
    }

    private static String percent(Ratio share) {
        return share.times(100).toDecimal(1).stripTrailingZeros().toPlainString() + "%";
    }

    /** One line for all of them: the statement is printed as "not stated" wherever they are used. */
    private void statements() {
        List<Ingredient> unstated = book.ingredients().values().stream()
                .filter(i -> !i.allergens().othersKnown()).toList();
        if (!unstated.isEmpty()) {
            notebook.warn(notebook.spotOf(unstated.get(0), "allergens"), "allergens not fully stated: "
                    + String.join(", ",
                    unstated.stream().map(Ingredient::id).toList()));
        }
    }
}
