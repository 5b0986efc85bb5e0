package croftboard.book;

import croftboard.measure.Place;
import java.util.Map;
import java.util.Optional;

/**
 * Whether an offer is local under one definition: the one function that decides it, for plans and for the ledger.
 * Unknown never counts as local. Straight-line miles within 10 % of the limit are unclassified, as the road may differ.
 */
public final class LocalCheck {
    private static final double BAND = 0.10;
    private final Map<String, Vendor> vendors;
    private final Place store;
    private final LocalRules.Definition definition;

    public LocalCheck(Map<String, Vendor> vendors, Place store, LocalRules.Definition definition) {
        this.vendors = vendors;
        this.store = store;
        this.definition = definition;
    }

    public enum Answer { LOCAL, NOT_LOCAL, UNCLASSIFIED }

    /** @param why one clause for people, for example {@code grown in Quillby NY, 21 miles} */
    public record Verdict(Answer answer, String why) { }

    public Verdict of(Vendor vendor, Vendor.Offer offer) {
        Verdict grown = at(vendor, offer.grownAt(), "grown");
        Verdict made = offer.processedAt() instanceof Vendor.Whence.Nowhere ? grown
                : at(vendor, offer.processedAt(), "made");
        if (offer.localPart().isPresent()) {
            return mixed(offer, made);
        }
        if (grown.answer == Answer.NOT_LOCAL || made.answer == Answer.LOCAL) {
            return grown;
        }
        return made.answer == Answer.NOT_LOCAL ? made : grown.answer == Answer.UNCLASSIFIED ? grown : made;
    }

    /** Mixed food: made locally, and more than the definition's share of its ingredients local. */
    private Verdict mixed(Vendor.Offer offer, Verdict made) {
        String part = offer.localPart().orElseThrow().times(100).toDecimal(0) + " % of ingredients local";
        boolean enough = offer.localPart().orElseThrow().compareTo(definition.mixed()) > 0;
        return enough ? new Verdict(made.answer, made.why + ", " + part) : new Verdict(Answer.NOT_LOCAL, part);
    }

    private Verdict at(Vendor vendor, Vendor.Whence whence, String verb) {
        if (whence instanceof Vendor.Whence.Unknown) {
            return new Verdict(Answer.UNCLASSIFIED, "where it was " + verb + " is not known");
        }
        return at(placeOf(vendor, whence), verb);
    }

    private Place placeOf(Vendor vendor, Vendor.Whence whence) {
        if (whence instanceof Vendor.Whence.At at) {
            return at.place();
        }
        return whence instanceof Vendor.Whence.AtVendor other ? vendors.get(other.vendor()).place() : vendor.place();
    }

    private Verdict at(Place place, String verb) {
        long miles = Math.round(store.milesTo(place));
        String where = verb + " in " + place.town() + " " + place.state() + ", " + miles + " miles straight line";
        if (definition.states().contains(place.state())) {
            return new Verdict(Answer.LOCAL, where);
        }
        Optional<Integer> limit = definition.miles();
        if (limit.isEmpty()) {
            return new Verdict(Answer.NOT_LOCAL, where);
        }
        double exact = store.milesTo(place);
        if (Math.abs(exact - limit.get()) <= BAND * limit.get()) {
            return new Verdict(Answer.UNCLASSIFIED, where + ", too near the limit of " + limit.get());
        }
        return new Verdict(exact < limit.get() ? Answer.LOCAL : Answer.NOT_LOCAL, where);
    }
}
