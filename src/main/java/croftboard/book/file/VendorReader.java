package croftboard.book.file;

import croftboard.book.Vendor;
import croftboard.book.Vendor.Commitment;
import croftboard.book.Vendor.Delivery;
import croftboard.book.Vendor.Kind;
import croftboard.book.Vendor.Offer;
import croftboard.book.Vendor.Span;
import croftboard.measure.Cents;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** {@code farms/VENDOR.yaml}: one vendor, whose id is the file's name. */
final class VendorReader {
    private static final Map<String, Kind> KINDS = Words.of(Kind.values());
    private static final Set<String> RESERVED = Set.of(Words.HERE, Words.UNKNOWN, Words.NONE);
    private final Values values;
    private final Quantities quantities;
    private final PlaceReader places;
    private final OfferReader offers;
    private final Notebook notebook;
    private final OrderingReader ordering;

    VendorReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.places = new PlaceReader(values);
        this.offers = new OfferReader(values, quantities, places);
        this.notebook = values.notebook();
        this.ordering = new OrderingReader(values, quantities);
    }

    void read(String file, Node root, Drafts drafts) {
        int before = notebook.faultCount();
        String id = FileKind.baseName(file);
        Spot whole = Spot.whole(file);
        values.checkedId(id, whole);
        if (RESERVED.contains(id)) {
            notebook.fault(whole, "a vendor cannot be called " + Notebook.show(id), "rename the file");
        }
        Fields f = Fields.of(notebook, Form.VENDOR, "the vendor " + Notebook.show(id),
                root instanceof Node.Mapping ? root.spot() : whole, root);
        List<Delivery> deliveries = deliveries(f);
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        boolean daysRead = f.get("deliveries") instanceof Node.Sequence s && s.items()
                .size() == deliveries.size();
        deliveries.stream().filter(d -> daysRead).forEach(d -> days.add(d.day()));
        List<Offer> offered = f.list("offers", values).stream().map(n -> offers.read(n, days)).toList();
        List<Commitment> commitments = f.has("commitments")
                ? f.list("commitments", values).stream().map(this::commitment).toList() : List.of();
        Vendor vendor = new Vendor(id, f.get("name", values::text),
                f.get("kind", n -> values.word(n, KINDS, Kind.GROWER)),
                f.get("place", places::read), deliveries,
                f.or("minimum", Cents.ZERO, n -> quantities.money(n, true)),
                f.or("fee", Cents.ZERO, n -> quantities.money(n, true)), f.maybe("may_buy", this::span),
                offered,
                commitments, priorities(f), ordering.read(f));
        drafts.vendors.put(id, notebook.wrote(vendor, f.spot(), before));
    }

    private List<Delivery> deliveries(Fields f) {
        List<Delivery> deliveries = new ArrayList<>();
        for (Node node : f.list("deliveries", values)) {
            Fields d = Fields.of(notebook, Form.DELIVERY, "the delivery", node.spot(), node);
            int before = notebook.faultCount();
            DayOfWeek day = d.get("day", values::day);
            boolean read = notebook.faultCount() == before && d.get("day") instanceof Node.Scalar;
            Delivery delivery = values.scalar(d.get("cut_off"), "day and time like fri 12:00")
                    .map(s -> delivery(day, read, s)).orElse(placeholder(day)).within(d.maybe("window", ordering::window));
            if (read && deliveries.stream().anyMatch(o -> o.day() == day)) {
                notebook.fault(d.get("day").spot(), "a second delivery on the same day",
                        "keep one delivery a day");
            }
            if (read) {
                deliveries.add(delivery);
            }
        }
        if (f.isEmptyList("deliveries")) {
            notebook.fault(f.get("deliveries").spot(), "no delivery day",
                    "write at least one {day: ..., cut_off: ...}");
        }
        return List.copyOf(deliveries);
    }

    /** A delivery whose day is known, so that what else names the day is not taken for a fault. */
    private static Delivery placeholder(DayOfWeek day) {
        return new Delivery(day, day.minus(1), LocalTime.NOON);
    }

    private Delivery delivery(DayOfWeek day, boolean dayRead, Node.Scalar cutOff) {
        String[] parts = cutOff.text().length() > 40 ? new String[0] : cutOff.text().strip().split(" +");
        DayOfWeek cutOffDay = parts.length == 2 ? Values.DAYS.get(parts[0]) : null;
        if (cutOffDay == null) {
            notebook.fault(cutOff.spot(), Notebook.show(cutOff.text()) + " is no cut-off",
                    "write day and time, like fri 12:00");
            return placeholder(day);
        }
        if (dayRead && cutOffDay == day) {
            notebook.fault(cutOff.spot(), "the cut-off is not before the delivery: both are on " + parts[0],
                    "name the day before on which the last order is taken");
        }
        return new Delivery(day, cutOffDay, values.clock(parts[1], cutOff.spot()));
    }

    /** {@code 2026-01-01..2028-12-31}. */
    private Span span(Node node) {
        String wanted = "two dates like 2026-01-01..2028-12-31";
        return values.value(node, wanted, new Span(LocalDate.EPOCH, LocalDate.EPOCH), s -> {
            int dots = s.text().indexOf("..");
            if (dots < 0 || s.text().length() > 40) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is no span of dates", "write "
                        + wanted);
                return null;
            }
            int before = notebook.faultCount();
            LocalDate from = values.date(s.text().substring(0, dots).strip(), s.spot());
            LocalDate to = values.date(s.text().substring(dots + 2).strip(), s.at(dots + 2));
            if (notebook.faultCount() == before && to.isBefore(from)) {
                notebook.fault(s.spot(), "the span ends before it begins", "write the earlier date first");
            }
            return new Span(from, to);
        });
    }

    private Commitment commitment(Node node) {
        int before = notebook.faultCount();
        Fields c = Fields.of(notebook, Form.COMMITMENT, "the commitment", node.spot(), node);
        Commitment commitment = new Commitment(c.get("item", values::id), c.get("pack", values::text),
                new WeekRange(c.get("from", quantities::week), c.get("to", quantities::week)),
                c.get("packs", n -> quantities.whole(n, 1, OfferReader.MOST_PACKS)));
        notebook.part(commitment, "pack", c.get("pack").spot());
        return notebook.wrote(commitment, c.get("item").spot(), before);
    }

    private List<String> priorities(Fields f) {
        if (!f.has("priorities")) {
            return List.of();
        }
        Set<String> crops = new LinkedHashSet<>(values.ids(f.get("priorities")));
        for (Node item : f.get("priorities") instanceof Node.Sequence sequence ? sequence.items()
                : List.<Node>of()) {
            if (item instanceof Node.Scalar scalar) {
                notebook.points(Pointer.To.INGREDIENT, scalar.text(), scalar.spot(), "a priority");
            }
        }
        return List.copyOf(crops);
    }
}
