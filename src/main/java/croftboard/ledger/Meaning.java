package croftboard.ledger;

import croftboard.book.Book;
import croftboard.book.Vendor;
import java.util.Map;
import java.util.Optional;

/** What somebody said that words mean, put into the entries that were booked without it. */
public final class Meaning {
    public static final String NOT_FOOD = "not-food";
    public static final String NOT_OURS = "not-ours";
    private final Book book;
    private final String means;

    /** @param means an id of the book, {@link #NOT_FOOD} or {@link #NOT_OURS} */
    public Meaning(Book book, String means) {
        this.book = book;
        this.means = means;
    }

    /** The entry as it is by this meaning; empty when such an entry cannot mean it. Its stamp is the old one. */
    public Optional<Entry> of(Entry e) {
        boolean item = book.ingredients().containsKey(means);
        boolean recipe = book.recipes().containsKey(means);
        if (e instanceof Receipt r && (item || recipe || means.equals(NOT_FOOD))) {
            return Optional.of(receipt(r));
        }
        if (e instanceof Sale s && (means.equals(NOT_OURS) || recipe && book.recipe(means).sale().isPresent())) {
            boolean ours = !means.equals(NOT_OURS);
            return Optional.of(new Sale(s.stamp(), s.date(), s.hour(), s.code(), s.words(), ours ? Optional.of(means) : Optional.empty(), ours,
                    s.units(), s.cents()));
        }
        if (e instanceof Waste w && (item || recipe)) {
            return Optional.of(new Waste(w.stamp(), w.date(), recipe ? Optional.of(means) : Optional.empty(), recipe ? Optional.empty()
                    : Optional.of(means), w.words(), w.portions(), w.mg(), w.reason(), w.cents(), w.note()));
        }
        return e instanceof StockCount c && (item || recipe) ? Optional.of(new StockCount(c.stamp(), c.date(), Optional.of(means), c.words(),
                c.amount(), c.mg(), c.cents())) : Optional.empty();
    }

    private Receipt receipt(Receipt r) {
        boolean food = !means.equals(NOT_FOOD);
        Optional<Vendor> vendor = Optional.ofNullable(book.vendors().get(r.vendor()));
        Optional<VendorGoods> goods = vendor.map(v -> new VendorGoods(book, v, Map.of()));
        Optional<Vendor.Offer> offer = food ? goods.flatMap(g -> g.offer(means, r.pack().orElse(""), r.price())) : Optional.empty();
        return new Receipt(r.stamp(), r.date(), r.vendor(), r.order(), food ? Receipt.Kind.FOOD : Receipt.Kind.NOT_FOOD, r.words(),
                food ? Optional.of(means) : Optional.empty(), r.pack().or(() -> offer.map(Vendor.Offer::pack)), r.ordered(), r.came(), r.rejected(),
                offer.map(o -> VendorGoods.mg(o, r.came())).orElse(r.mg()), r.price(), r.cents(), r.insteadOf(), r.tenthsF(),
                offer.map(o -> goods.orElseThrow().origin(o)).orElse(r.origin()), r.note());
    }
}
