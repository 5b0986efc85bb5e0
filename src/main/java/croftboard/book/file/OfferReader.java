package croftboard.book.file;

import croftboard.book.Vendor.Break;
import croftboard.book.Vendor.Confidence;
import croftboard.book.Vendor.Expected;
import croftboard.book.Vendor.Offer;
import croftboard.book.Vendor.Whence;
import croftboard.measure.Cents;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One pack that a vendor sells: contents, price, breaks, weeks. */
final class OfferReader {
    static final int MOST_PACKS = 10_000;
    private static final Map<String, Confidence> CONFIDENCE = Words.of(Confidence.values());
    private final Values values;
    private final Quantities quantities;
    private final PlaceReader places;
    private final Notebook notebook;
    private final OrderingReader ordering;

    OfferReader(Values values, Quantities quantities, PlaceReader places) {
        this.values = values;
        this.quantities = quantities;
        this.places = places;
        this.notebook = values.notebook();
        this.ordering = new OrderingReader(values, quantities);
    }

    /** @param days on which the vendor delivers; none when they could not all be read */
    Offer read(Node node, Set<DayOfWeek> days) {
        int before = notebook.faultCount();
        Fields f = Fields.of(notebook, Form.OFFER, "the offer", node.spot(), node);
        String item = f.get("item", values::id);
        notebook.points(Pointer.To.INGREDIENT, item, f.get("item").spot(), "an offer");
        int beforePrice = notebook.faultCount();
        Cents price = f.get("price", n -> quantities.money(n, true));
        boolean priceRead = notebook.faultCount() == beforePrice && f.get("price") instanceof Node.Scalar;
        Offer offer = new Offer(item, f.maybe("as", values::text), f.get("pack", values::text),
                f.get("holds", quantities::amount), price, breaks(f, price, priceRead), on(f, days),
                f.get("grown_at", this::whence),
                f.or("processed_at", new Whence.Nowhere(), this::processed),
                f.maybe("local_part", n -> quantities.share(n, true, 100)), weeks(f),
                f.maybe("number", values::text), ordering.accepted(f));
        notebook.part(offer, "holds", f.get("holds").spot());
        return notebook.wrote(offer, f.get("item").spot(), before);
    }

    private List<Break> breaks(Fields f, Cents price, boolean priceRead) {
        List<Break> breaks = new ArrayList<>();
        int packs = 1;
        Cents last = price;
        boolean known = priceRead;
        for (Node node : f.has("breaks") ? f.list("breaks", values) : List.<Node>of()) {
            int before = notebook.faultCount();
            Fields b = Fields.of(notebook, Form.BREAK, "the price break", node.spot(), node);
            Break next = new Break(b.get("packs", n -> quantities.whole(n, 2, MOST_PACKS)),
                    b.get("price", n -> quantities.money(n, true)));
            if (notebook.faultCount() == before && next.packs() <= packs) {
                notebook.fault(b.get("packs").spot(), "price breaks do not ascend by packs",
                        "put the smaller number first");
            } else if (notebook.faultCount() == before && known && next.price().compareTo(last) >= 0) {
                notebook.fault(b.get("price").spot(), "the price from " + next.packs()
                        + " packs on is not below " + last,
                        "a break lowers the price of all packs");
            }
            known = notebook.faultCount() == before;
            packs = next.packs();
            last = next.price();
            breaks.add(next);
        }
        return List.copyOf(breaks);
    }

    private Set<DayOfWeek> on(Fields f, Set<DayOfWeek> days) {
        if (!f.has("on")) {
            return Set.of();
        }
        Set<DayOfWeek> on = values.days(f.get("on"));
        for (Node item : f.get("on") instanceof Node.Sequence sequence ? sequence.items()
                : List.<Node>of()) {
            if (item instanceof Node.Scalar s && Values.DAYS.containsKey(s.text())
                    && !days.contains(Values.DAYS.get(s.text())) && !days.isEmpty()) {
                notebook.fault(s.spot(), "the vendor does not deliver on " + s.text(),
                        "name one of its delivery days, or add the delivery");
            }
        }
        if (f.isEmptyList("on")) {
            notebook.fault(f.get("on").spot(), "an offer on no day", "leave on out for all delivery days");
        }
        return on;
    }

    private Whence whence(Node node) {
        if (node instanceof Node.Mapping) {
            return new Whence.At(places.read(node));
        }
        return values.value(node, "here, unknown, a vendor or a place", new Whence.Unknown(), s ->
                switch (s.text()) {
            case Words.HERE -> new Whence.Here();
            case Words.UNKNOWN -> new Whence.Unknown();
            default -> {
                String vendor = values.checkedId(s.text(), s.spot());
                notebook.points(Pointer.To.VENDOR, vendor, s.spot(), "an offer");
                yield new Whence.AtVendor(vendor);
            }
        });
    }

    private Whence processed(Node node) {
        boolean none = node instanceof Node.Scalar s && s.text().equals(Words.NONE);
        return none ? new Whence.Nowhere() : whence(node);
    }

    private List<Expected> weeks(Fields f) {
        List<Expected> weeks = new ArrayList<>();
        WeekTable taken = new WeekTable();
        for (Node node : f.list("weeks", values)) {
            int before = notebook.faultCount();
            Fields w = Fields.of(notebook, Form.EXPECTED, "the weeks of the offer", node.spot(), node);
            WeekRange range = new WeekRange(w.get("from", quantities::week), w.get("to", quantities::week));
            boolean rangeRead = notebook.faultCount() == before;
            Expected expected = new Expected(range, w.get("packs", n -> quantities.whole(n, 1, MOST_PACKS)),
                    w.get("confidence", n -> values.word(n, CONFIDENCE, Confidence.HOPE)));
            if (rangeRead) {
                taken.take(range).ifPresent(other -> notebook.fault(node.spot(),
                        range + " overlaps " + other + " of the same offer", "let each week stand once"));
            }
            weeks.add(expected);
        }
        if (f.isEmptyList("weeks")) {
            notebook.fault(f.get("weeks").spot(), "an offer in no week",
                    "write {from: ..., to: ..., packs: ..., confidence: ...}");
        }
        return List.copyOf(weeks);
    }
}
