package croftboard.ledger;

import croftboard.book.Book;
import croftboard.book.Vendor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * What came of an order, when somebody stands at the door with the order in hand: as ordered, but for what they say.
 * Keys are {@code item} or {@code vendor/item}.
 *
 * @param came packs. @param rejected packs sent back. @param instead item that came in its place
 * @param price of a pack, cents. @param tenthsF temperature
 */
public record AtTheDoor(Map<String, Quantity> came, Map<String, Quantity> rejected, Map<String, String> instead,
        Map<String, Long> price, Map<String, Integer> tenthsF) {

    public boolean nothingSaid() {
        return said().isEmpty();
    }

    private Set<String> said() {
        Set<String> said = new TreeSet<>(came.keySet());
        said.addAll(rejected.keySet());
        said.addAll(instead.keySet());
        said.addAll(price.keySet());
        said.addAll(tenthsF.keySet());
        return said;
    }

    /** What is said of things that no order has, or that several vendors' orders have: a sentence each. */
    public List<String> faults(List<SentOrder> orders, Book book) {
        List<String> faults = new ArrayList<>();
        instead.forEach((was, is) -> {
            if (!book.ingredients().containsKey(is) && !book.recipes().containsKey(is)) {
                faults.add("the book has no '" + is + "' that could have come instead of " + was + " -> an id of kitchen/ingredients");
            }
        });
        for (String key : said()) {
            long hits = orders.stream().flatMap(o -> o.lines().stream().filter(l -> key.equals(l.item()) || key.equals(o.vendor() + "/" + l.item())))
                    .count();
            if (hits != 1) {
                faults.add("'" + key + "' is on " + (hits == 0 ? "no order" : hits + " lines") + " -> " + (hits == 0 ? "an item of these orders: "
                        + String.join(", ", orders.stream().flatMap(o -> o.lines().stream().map(Ordered::item)).distinct().sorted().limit(12).toList())
                        : "say the vendor too: VENDOR/" + key + ", and --vendor or --delivery when it comes twice"));
            }
        }
        orders.forEach(o -> o.lines().forEach(l -> of(rejected, o.vendor(), l.item()).filter(back -> back.compareTo(Quantity.of(l.packs())) > 0
                && of(came, o.vendor(), l.item()).isEmpty()).ifPresent(back -> faults.add("'" + l.item() + "': " + back
                + " sent back, ordered were " + l.packs() + " -> say what was kept too: --came " + l.item() + "=0"))));
        return faults;
    }

    private <T> Optional<T> of(Map<String, T> map, String vendor, String item) {
        return Optional.ofNullable(map.get(item)).or(() -> Optional.ofNullable(map.get(vendor + "/" + item)));
    }

    /** One receipt a line, and one for the fee. */
    public List<Entry> receipts(SentOrder order, Book book) {
        List<Entry> all = new ArrayList<>();
        for (Ordered line : order.lines()) {
            all.add(receipt(order, line, all.size() + 1, book));
        }
        if (order.fee() > 0) {
            all.add(new Receipt(Draft.line(all.size() + 1), order.delivery(), order.vendor(), Optional.of(order.order()), Receipt.Kind.FEE,
                    "delivery fee", Optional.empty(), Optional.empty(), Optional.empty(), Quantity.of(1), Quantity.ZERO, 0, order.fee(),
                    order.fee(), Optional.empty(), OptionalInt.empty(), Origin.UNKNOWN, ""));
        }
        return all;
    }

    private Receipt receipt(SentOrder order, Ordered line, int number, Book book) {
        Vendor vendor = book.vendor(order.vendor());
        Optional<String> other = of(instead, vendor.id(), line.item());
        Quantity ordered = Quantity.of(line.packs());
        Quantity back = of(rejected, vendor.id(), line.item()).orElse(Quantity.ZERO);
        Quantity in = of(came, vendor.id(), line.item()).orElse(ordered.minus(back));
        long each = of(price, vendor.id(), line.item()).orElse(line.price());
        boolean asOrdered = in.equals(ordered) && each == line.price();
        String item = other.orElse(line.item());
        Optional<Vendor.Offer> offer = vendor.offers().stream().filter(o -> o.item().equals(item)
                && (other.isPresent() || o.pack().equals(line.pack()))).findFirst();
        long mg = other.isPresent() ? offer.map(o -> VendorGoods.mg(o, in)).orElse(0L)
                : Math.multiplyExact(line.packMg(), in.thousandths()) / 1000;
        return new Receipt(Draft.line(number), order.delivery(), vendor.id(), Optional.of(order.order()), Receipt.Kind.FOOD, line.item(),
                Optional.of(item), Optional.of(line.pack()), Optional.of(ordered), in, back, mg, each,
                asOrdered ? line.cents() : Math.multiplyExact(each, in.thousandths()) / 1000, other.map(o -> line.item()),
                of(tenthsF, vendor.id(), line.item()).map(OptionalInt::of).orElse(OptionalInt.empty()),
                offer.map(o -> Origin.of(vendor, o, book.vendors())).orElse(Origin.UNKNOWN), "");
    }
}
