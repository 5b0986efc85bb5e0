package croftboard.ledger.share;

import croftboard.book.LocalCheck.Answer;
import croftboard.book.LocalCheck;
import croftboard.book.LocalRules.Definition;
import croftboard.book.Vendor;
import croftboard.ledger.Receipt;
import croftboard.measure.IsoWeek;
import croftboard.measure.Place;
import croftboard.measure.WeekRange;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Sorts the food money that is not local by its cause, from what the book's vendors near by offer and when. */
public final class Causes {
    private final Map<String, List<WeekRange>> near = new HashMap<>();

    public Causes(Map<String, Vendor> vendors, Place store, Definition definition) {
        LocalCheck check = new LocalCheck(vendors, store, definition);
        for (Vendor vendor : vendors.values()) {
            for (Vendor.Offer offer : vendor.offers()) {
                if (check.of(vendor, offer).answer() == Answer.LOCAL) {
                    offer.weeks().forEach(w -> near.computeIfAbsent(offer.item(), k -> new ArrayList<>()).add(w.weeks()));
                }
            }
        }
    }

    /** @param cents of all such lines. @param items cents by ingredient, or by the vendor's own words */
    public record Part(long cents, Map<String, Long> items) { }

    /** All causes that occur; their cents are all money of the lines that is not local or not classified. */
    public Map<Cause, Part> of(Collection<Counted> lines) {
        Map<Cause, Part> parts = new EnumMap<>(Cause.class);
        for (Counted line : lines) {
            if (line.answer() != Answer.LOCAL) {
                Receipt r = line.receipt();
                Part part = parts.getOrDefault(cause(line), new Part(0, new TreeMap<>()));
                part.items.merge(r.item().orElse(r.words()), r.cents(), Long::sum);
                parts.put(cause(line), new Part(part.cents + r.cents(), part.items));
            }
        }
        return parts;
    }

    public Cause cause(Counted line) {
        if (line.answer() == Answer.UNCLASSIFIED) {
            return Cause.UNKNOWN;
        }
        List<WeekRange> weeks = line.receipt().item().map(i -> near.getOrDefault(i, List.of())).orElse(List.of());
        if (!weeks.isEmpty()) {
            IsoWeek week = IsoWeek.of(line.receipt().date());
            return weeks.stream().anyMatch(w -> w.holds(week)) ? Cause.NOT_ENOUGH : Cause.OUT_OF_SEASON;
        }
        return line.receipt().origin().localPart().isPresent() ? Cause.MIXED : Cause.NOBODY_NEAR;
    }
}
