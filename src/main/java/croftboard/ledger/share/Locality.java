package croftboard.ledger.share;

import croftboard.book.LocalCheck;
import croftboard.book.LocalCheck.Answer;
import croftboard.book.LocalCheck.Verdict;
import croftboard.book.LocalRules.Definition;
import croftboard.book.Vendor;
import croftboard.book.Vendor.Whence;
import croftboard.ledger.Origin;
import croftboard.ledger.Receipt;
import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Asks the one function that decides what is local, for origins as they were frozen in the ledger. */
final class Locality {
    private static final Amount PACK = new Amount(Ratio.ONE, Unit.named("lb").orElseThrow());
    private final LocalCheck check;
    private final Map<String, Vendor> vendors;
    private final Vendor nobody;
    private final Map<Origin, Verdict> verdicts = new HashMap<>();
    private final Map<Origin, Near> nears = new HashMap<>();
    private final Map<String, Answer> sellers = new HashMap<>();

    Locality(Map<String, Vendor> vendors, Place store, Definition definition) {
        this.vendors = vendors;
        this.check = new LocalCheck(vendors, store, definition);
        this.nobody = new Vendor("", "", Vendor.Kind.DISTRIBUTOR, store, List.of(), Cents.ZERO, Cents.ZERO, Optional.empty(),
                List.of(), List.of(), List.of());
    }

    Counted count(Receipt receipt) {
        Verdict verdict = verdicts.computeIfAbsent(receipt.origin(), this::verdict);
        Near near = nears.computeIfAbsent(receipt.origin(), this::near);
        return new Counted(receipt, verdict.answer(), receipt.unmatched() ? "not matched to an ingredient; " + verdict.why()
                : verdict.why(), near == Near.FAR ? bySeller(receipt.vendor()) : near);
    }

    private Verdict verdict(Origin origin) {
        return verdict(origin.grown(), origin.made(), origin.localPart());
    }

    /** Places in an origin are resolved, so that the vendor's own is never asked for. */
    private Verdict verdict(Whence grown, Whence made, Optional<Ratio> part) {
        return check.of(nobody, new Vendor.Offer("", Optional.empty(), "", PACK, Cents.ZERO, List.of(), Set.of(), grown, made,
                part, List.of()));
    }

    private Answer place(Whence whence) {
        return verdict(whence, new Whence.Nowhere(), Optional.empty()).answer();
    }

    private Near near(Origin origin) {
        Answer grown = place(origin.grown());
        boolean processed = !(origin.made() instanceof Whence.Nowhere);
        Answer made = processed ? place(origin.made()) : grown;
        if (grown == Answer.LOCAL && origin.localPart().isEmpty()) {
            return Near.GROWN;
        }
        if (made == Answer.LOCAL) {
            return Near.MADE;
        }
        return grown == Answer.NOT_LOCAL || made == Answer.NOT_LOCAL ? Near.FAR : Near.UNKNOWN;
    }

    private Near bySeller(String id) {
        Answer seller = sellers.computeIfAbsent(id, v -> vendors.containsKey(v)
                ? place(new Whence.At(vendors.get(v).place())) : Answer.UNCLASSIFIED);
        return seller == Answer.LOCAL ? Near.SOLD : Near.FAR;
    }
}
