package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Vendor;
import croftboard.measure.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.TreeMap;

/** The sheet to count on: a row for each pack of each item, at its lowest price; what no vendor offers has a row without a pack. */
public final class CountSheet {
    private CountSheet() { }

    public static Rows rows(Book book, LocalDate date) {
        Rows rows = new Rows("date", "item", "name", "pack", "pack_grams", "pack_price", "counted_packs", "or_weight");
        for (Ingredient item : book.ingredients().values().stream().sorted(Comparator.comparing(Ingredient::name).thenComparing(Ingredient::id)).toList()) {
            TreeMap<String, Vendor.Offer> packs = new TreeMap<>();
            book.vendors().values().stream().flatMap(v -> v.offers().stream()).filter(o -> o.item().equals(item.id()))
                    .forEach(o -> packs.merge(o.pack(), o, (a, b) -> a.price().compareTo(b.price()) <= 0 ? a : b));
            packs.values().forEach(o -> rows.add(date, item.id(), item.name(), o.pack(), grams(o), BigDecimal.valueOf(o.price().value(), 2), "", ""));
            if (packs.isEmpty()) {
                rows.add(date, item.id(), item.name(), "", "", "", "", "");
            }
        }
        return rows;
    }

    private static Object grams(Vendor.Offer offer) {
        return offer.holds().unit().kind() == Unit.Kind.MASS ? offer.holds().base().toDecimal(1) : "";
    }
}
