package croftboard.ledger.share;

import croftboard.book.Vendor.Whence;
import croftboard.ledger.Origin;
import croftboard.measure.Place;
import java.util.EnumMap;
import java.util.Map;

/** How far food has come, straight line, in bands; {@code UNKNOWN} where the book does not say. */
public enum Miles {
    TO_25("up to 25 miles", 25), TO_50("25 to 50", 50), TO_100("50 to 100", 100), TO_150("100 to 150", 150),
    TO_400("150 to 400", 400), FARTHER("farther", Double.MAX_VALUE), UNKNOWN("not known", 0);

    private final String say;
    private final double most;

    Miles(String say, double most) {
        this.say = say;
        this.most = most;
    }

    /** Cents by band, every band; their sum is all food money. Counted from where food was grown, mixed food from where it was made. */
    public static Map<Miles, Long> of(Share share, Place store) {
        Map<Miles, Long> bands = new EnumMap<>(Miles.class);
        for (Miles band : values()) {
            bands.put(band, 0L);
        }
        share.lines().forEach(l -> bands.merge(band(l.receipt().origin(), store), l.receipt().cents(), Long::sum));
        return bands;
    }

    private static Miles band(Origin origin, Place store) {
        Whence whence = origin.localPart().isPresent() ? origin.made() : origin.grown();
        if (whence instanceof Whence.At at) {
            double miles = store.milesTo(at.place());
            for (Miles band : values()) {
                if (miles <= band.most) {
                    return band;
                }
            }
        }
        return UNKNOWN;
    }

    @Override
    public String toString() {
        return say;
    }
}
