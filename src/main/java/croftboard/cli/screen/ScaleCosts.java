package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.need.CheapestPrices;
import croftboard.need.RecipeTree;
import croftboard.need.ScaledRecipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a scaled recipe costs, line by line, from the cheapest offers; exact until each figure is printed. */
final class ScaleCosts {
    private final Book book;
    private final ScaledRecipe scaled;
    private final CheapestPrices prices;
    private final Names names;

    ScaleCosts(Book book, ScaledRecipe scaled, CheapestPrices prices) {
        this.book = book;
        this.scaled = scaled;
        this.prices = prices;
        this.names = new Names(book);
    }

    void print(Page page) {
        page.subheading("Cost");
        List<TextTable.Column> columns = new ArrayList<>(List.of(TextTable.Column.words("item"),
                TextTable.Column.figure("all of it")));
        scaled.portions().ifPresent(p -> columns.add(TextTable.Column.figure("a portion")));
        columns.add(TextTable.Column.words("price from"));
        TextTable table = new TextTable(columns.toArray(TextTable.Column[]::new));
        Ratio all = Ratio.ZERO;
        for (ScaledRecipe.Line line : scaled.lines()) {
            Ratio cents = cents(line);
            all = all.plus(cents);
            row(table, names.item(line.written().item()), cents, from(line));
        }
        row(table, "together", all, "");
        page.table(table);
        page.say("Every figure is rounded by itself; the sum is that of exact figures. Whole packs, waste and hands are"
                + " not counted.");
        unknown(page);
        price(page, all);
    }

    private void unknown(Page page) {
        List<String> none = new RecipeTree(book).purchased(scaled.recipe()).keySet().stream()
                .filter(i -> !book.ingredient(i).free() && prices.of(i).isEmpty()).map(names::item).toList();
        if (!none.isEmpty()) {
            page.say("NO PRICE is known for " + String.join(", ", none) + ": counted as nothing.");
        }
    }

    private void row(TextTable table, String what, Ratio cents, String from) {
        List<String> cells = new ArrayList<>(List.of(what, new Cents(cents.round()).toString()));
        scaled.portions().ifPresent(p -> cells.add(tenths(cents.over(p))));
        cells.add(from);
        table.row(cells.toArray(String[]::new));
    }

    /** {@code $1.518}: a portion's lines are too small for whole cents. */
    private static String tenths(Ratio cents) {
        return "$" + cents.over(100).toDecimal(3).toPlainString();
    }

    private Ratio cents(ScaledRecipe.Line line) {
        if (!line.isRecipe()) {
            return prices.cents(line.written().item(), line.ap());
        }
        Recipe part = book.recipe(line.written().item());
        return prices.batchCents(part).times(line.ep()).over(part.makes().base());
    }

    private String from(ScaledRecipe.Line line) {
        if (line.isRecipe()) {
            return "its own items";
        }
        Ingredient ingredient = book.ingredient(line.written().item());
        Optional<CheapestPrices.Price> price = prices.of(ingredient.id());
        return ingredient.free() ? "never bought" : price.map(p -> names.vendor(p.vendor()) + ", " + p.pack()
                + (p.ofWeek() ? "" : " (not offered this week)")).orElse("NO PRICE: nobody sells it");
    }

    private void price(Page page, Ratio cents) {
        scaled.recipe().sale().ifPresent(sale -> scaled.portions().ifPresent(p -> page.say("Price of a portion "
                + sale.price() + ": food is " + cents.over(p).times(100).over(sale.price().value()).toDecimal(1)
                + " % of it.")));
    }
}
