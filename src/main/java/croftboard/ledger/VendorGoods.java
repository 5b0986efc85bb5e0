package croftboard.ledger;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one vendor sells by the book, found by the vendor's own words. */
public final class VendorGoods {
    private static final int MG = 1000;
    private final Book book;
    private final Vendor vendor;
    private final Matching matching = new Matching();

    /** @param learned what this vendor's words were said to mean */
    public VendorGoods(Book book, Vendor vendor, Map<String, String> learned) {
        this.book = book;
        this.vendor = vendor;
        for (Vendor.Offer offer : vendor.offers()) {
            offer.as().ifPresent(as -> matching.name(offer.item(), as));
            offer.number().ifPresent(number -> matching.name(offer.item(), number));
            name(offer.item());
        }
        if (vendor.offers().isEmpty()) {
            book.ingredients().keySet().forEach(this::name);
        }
        learned.forEach(matching::learned);
    }

    private void name(String item) {
        matching.name(item, item);
        if (book.ingredients().containsKey(item)) {
            matching.name(item, book.ingredient(item).name());
        } else if (book.recipes().containsKey(item)) {
            matching.name(item, book.recipe(item).name());
        }
    }

    public Matching matching() {
        return matching;
    }

    /** The offer of an item: the one of that pack, else the one of that price, else the only one. */
    public Optional<Vendor.Offer> offer(String item, String pack, long price) {
        List<Vendor.Offer> all = vendor.offers().stream().filter(o -> o.item().equals(item)).toList();
        String plain = Matching.plain(pack);
        return all.stream().filter(o -> Matching.plain(o.pack()).equals(plain)).findFirst()
                .or(() -> all.stream().filter(o -> o.price().value() == price).findFirst())
                .or(() -> all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty());
    }

    /** As purchased, of so many packs; 0 when the pack has no weight. */
    public static long mg(Vendor.Offer offer, Quantity packs) {
        if (offer.holds().unit().kind() != Unit.Kind.MASS) {
            return 0;
        }
        Ratio grams = offer.holds().base().times(packs.thousandths());
        return grams.times(MG).over(Ratio.of(1000, 1)).floor();
    }

    public Origin origin(Vendor.Offer offer) {
        return Origin.of(vendor, offer, book.vendors());
    }

    public Vendor vendor() {
        return vendor;
    }
}
