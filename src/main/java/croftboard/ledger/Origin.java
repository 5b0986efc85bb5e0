package croftboard.ledger;

import croftboard.book.Vendor;
import croftboard.book.Vendor.Whence;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import java.util.Map;
import java.util.Optional;

/**
 * Where food comes from, as the book said when it was booked: the ledger's share does not move when a vendor's file is
 * edited later. Places are resolved: only {@code At}, {@code Nowhere} (raw) and {@code Unknown} occur.
 *
 * @param localPart mixed food only: share of its ingredients that is local
 */
public record Origin(Whence grown, Whence made, Optional<Ratio> localPart) {
    public static final Origin UNKNOWN = new Origin(new Whence.Unknown(), new Whence.Unknown(), Optional.empty());

    /** Of an offer in the book. */
    public static Origin of(Vendor vendor, Vendor.Offer offer, Map<String, Vendor> vendors) {
        return new Origin(resolved(vendor, offer.grownAt(), vendors), resolved(vendor, offer.processedAt(), vendors),
                offer.localPart());
    }

    private static Whence resolved(Vendor vendor, Whence whence, Map<String, Vendor> vendors) {
        if (whence instanceof Whence.Here) {
            return new Whence.At(vendor.place());
        }
        return whence instanceof Whence.AtVendor other ? new Whence.At(vendors.get(other.vendor()).place()) : whence;
    }

    /** {@code unknown}, {@code raw}, or {@code Quillby, NY, 42.5, -74.25}. */
    public static String text(Whence whence) {
        if (whence instanceof Whence.At at) {
            Place p = at.place();
            return p.town() + ", " + p.state() + ", " + p.latitude() + ", " + p.longitude();
        }
        return whence instanceof Whence.Nowhere ? "raw" : "unknown";
    }

    /** The reverse of {@link #text}; empty when it is no such text. */
    public static Optional<Whence> parse(String text) {
        if (text.equals("raw") || text.equals("unknown")) {
            return Optional.of(text.equals("raw") ? new Whence.Nowhere() : new Whence.Unknown());
        }
        String[] parts = text.split(", ");
        if (parts.length < 4) {
            return Optional.empty();
        }
        try {
            int n = parts.length;
            String town = String.join(", ", java.util.Arrays.copyOf(parts, n - 3));
            return Optional.of(new Whence.At(new Place(town, parts[n - 3], Double.parseDouble(parts[n - 2]),
                    Double.parseDouble(parts[n - 1]))));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
