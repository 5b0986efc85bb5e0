package croftboard.need;

import croftboard.book.Book;
import croftboard.book.ListedOffer;
import croftboard.book.Recipe;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cheapest list price of every ingredient for one pack, in exact cents a gram as purchased: of the offers of one
 * week, or where the week has none, of the year.
 */
public final class CheapestPrices {
    private final Book book;
    private final IsoWeek week;
    private final RecipeTree tree;
    private final Map<String, Optional<Price>> known = new LinkedHashMap<>();

    public CheapestPrices(Book book, IsoWeek week) {
        this.book = book;
        this.week = week;
        this.tree = new RecipeTree(book);
    }

    /** @param ofWeek false: nobody offers it in the week; the price is one of another time of the year */
    public record Price(Ratio centsPerGram, String vendor, String pack, boolean ofWeek) { }

    /** Empty when nobody sells it, or it is never bought. */
    public Optional<Price> of(String ingredient) {
        return known.computeIfAbsent(ingredient, this::find);
    }

    private Optional<Price> find(String item) {
        Price best = null;
        for (Vendor vendor : book.vendors().values()) {
            for (Vendor.Offer offer : vendor.offers()) {
                if (offer.item().equals(item)) {
                    Price price = price(vendor, offer);
                    best = best == null || better(price, best) ? price : best;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean better(Price a, Price b) {
        return a.ofWeek != b.ofWeek ? a.ofWeek : a.centsPerGram.compareTo(b.centsPerGram) < 0;
    }

    private Price price(Vendor vendor, Vendor.Offer offer) {
        Ratio grams = tree.purchasedGrams(book.ingredient(offer.item()), offer.holds());
        List<ListedOffer> list = book.lists().getOrDefault(week, List.of()).stream()
                .filter(row -> row.vendor().equals(vendor.id())).toList();
        Optional<Long> listed = list.stream().filter(row -> row.item().equals(offer.item())
                && row.pack().equals(offer.pack()) && row.packs() > 0).map(row -> row.price().value()).min(Long::compare);
        boolean expected = list.isEmpty() && offer.weeks().stream().anyMatch(w -> w.weeks().holds(week) && w.packs() > 0);
        long cents = listed.orElse(offer.price().value());
        return new Price(Ratio.of(cents).over(grams), vendor.id(), offer.pack(), listed.isPresent() || expected);
    }

    /** Exact cents of one standard batch through the whole tree; what nobody sells counts nothing. */
    public Ratio batchCents(Recipe recipe) {
        Ratio cents = Ratio.ZERO;
        for (Map.Entry<String, Ratio> e : tree.purchased(recipe).entrySet()) {
            cents = cents.plus(cents(e.getKey(), e.getValue()));
        }
        return cents;
    }

    /** Exact cents of so many grams as purchased; zero when nobody sells it. */
    public Ratio cents(String ingredient, Ratio apGrams) {
        return of(ingredient).map(p -> p.centsPerGram().times(apGrams)).orElse(Ratio.ZERO);
    }
}
