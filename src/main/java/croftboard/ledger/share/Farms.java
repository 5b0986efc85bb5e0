package croftboard.ledger.share;

import croftboard.book.LocalCheck.Answer;
import croftboard.book.Vendor.Whence;
import croftboard.book.Vendor;
import croftboard.ledger.Origin;
import croftboard.measure.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Who got the money for local food: farms and makers by name, as far as the book tells them by their places. */
public final class Farms {
    private Farms() { }

    /**
     * @param name of the farm or maker; of a place, when nobody of the book is there
     * @param known a vendor of the book
     * @param miles straight line from the store, rounded
     * @param items cents by ingredient id, or by the vendor's own words
     */
    public record Farm(String name, boolean known, Place place, long miles, long cents, Map<String, Long> items) {
        /** Up to {@code most} items, most money first. */
        public List<String> first(int most) {
            return items.entrySet().stream().sorted(Comparator.comparing((Map.Entry<String, Long> e) -> -e.getValue())
                    .thenComparing(Map.Entry::getKey)).limit(most).map(Map.Entry::getKey).toList();
        }
    }

    /** Local money only, by cents, then name; their sum is the share's local money. */
    public static List<Farm> of(Share share, Place store, Map<String, Vendor> vendors) {
        Map<String, Farm> farms = new HashMap<>();
        for (Counted line : share.lines()) {
            if (line.answer() == Answer.LOCAL) {
                Place place = place(line.receipt().origin(), vendors.get(line.receipt().vendor()), store);
                Optional<Vendor> who = who(place, vendors.get(line.receipt().vendor()), vendors);
                String name = who.map(Vendor::name).orElse("farms in " + place.town() + " " + place.state());
                Farm f = farms.getOrDefault(name, new Farm(name, who.isPresent(), place, Math.round(store.milesTo(place)), 0,
                        new TreeMap<>()));
                f.items.merge(line.receipt().item().orElse(line.receipt().words()), line.receipt().cents(), Long::sum);
                farms.put(name, new Farm(name, f.known, f.place, f.miles, f.cents + line.receipt().cents(), f.items));
            }
        }
        List<Farm> sorted = new ArrayList<>(farms.values());
        sorted.sort(Comparator.comparing((Farm f) -> -f.cents).thenComparing(Farm::name));
        return sorted;
    }

    /** Where it was grown; of mixed food where it was made. */
    static Place place(Origin origin, Vendor vendor, Place otherwise) {
        Whence whence = origin.localPart().isPresent() ? origin.made() : origin.grown();
        return whence instanceof Whence.At at ? at.place() : vendor != null ? vendor.place() : otherwise;
    }

    private static Optional<Vendor> who(Place place, Vendor seller, Map<String, Vendor> vendors) {
        if (seller != null && seller.place().equals(place)) {
            return Optional.of(seller);
        }
        return vendors.values().stream().filter(v -> v.kind() != Vendor.Kind.DISTRIBUTOR && v.place().equals(place)).findFirst()
                .or(() -> Optional.ofNullable(seller).filter(v -> v.kind() != Vendor.Kind.DISTRIBUTOR));
    }
}
