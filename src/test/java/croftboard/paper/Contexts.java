package croftboard.paper;

import croftboard.book.Book;
import croftboard.book.Contact;
import croftboard.book.Vendor;
import croftboard.cli.SamplePlan;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What sheets are made from, in tests. */
public final class Contexts {
    public static final LocalDateTime PRINTED = LocalDateTime.of(2027, 8, 12, 6, 5);

    /** Markup, a formula, marks that turn the reading direction, control characters, 300 letters without a blank. */
    public static final String HOSTILE = "=<b>&amp;\"x'\u202Egnp\u2066\u200F \u0007</td><script>alert(1)</script> ]]> {{x}} "
            + "long".repeat(75) + " end\u0000";

    private Contexts() { }

    /** The hand-made plan of the small kitchen, posted. */
    public static PaperContext sample() {
        Book book = SamplePlan.book();
        return of(book, SamplePlan.complete(book));
    }

    public static PaperContext of(Book book, WeekPlan plan) {
        return new PaperContext(book, plan, 1, true, PRINTED, PaperContext.Filters.NONE, Set.of());
    }

    public static PaperContext only(PaperContext c, LocalDate day, String vendor) {
        return new PaperContext(c.book(), c.plan(), c.version(), c.posted(), c.printed(),
                new PaperContext.Filters(Optional.ofNullable(day), Optional.ofNullable(vendor)), c.notSent());
    }

    public static PaperContext notSent(PaperContext c, Set<OrderKey> keys) {
        return new PaperContext(c.book(), c.plan(), c.version(), c.posted(), c.printed(), c.filters(), keys);
    }

    public static PaperContext draft(PaperContext c) {
        return new PaperContext(c.book(), c.plan(), c.version(), false, c.printed(), c.filters(), c.notSent());
    }

    /** Every name of the small kitchen's vendors and goods hostile, and 40 lines of notes on every order. */
    public static PaperContext hostile() {
        Book book = SamplePlan.book();
        Map<String, Vendor> vendors = new TreeMap<>();
        book.vendors().forEach((id, v) -> vendors.put(id, hostile(v)));
        Book hostile = new Book(book.kitchen(), book.ingredients(), book.recipes(), vendors, book.seasons(), book.lists(), book.onHand(),
                book.fingerprint());
        return of(hostile, SamplePlan.complete(book));
    }

    private static Vendor hostile(Vendor v) {
        Contact contact = new Contact(Optional.of(HOSTILE), List.of(HOSTILE, "=1+1"), Optional.of("+1 607 555 0100"),
                Optional.of("a@b.example"));
        List<Vendor.Offer> offers = v.offers().stream().map(o -> new Vendor.Offer(o.item(), Optional.of(HOSTILE), o.pack(),
                o.holds(), o.price(), o.breaks(), o.on(), o.grownAt(), o.processedAt(), o.localPart(), o.weeks(),
                Optional.of("=HYPERLINK(1)"), List.of(new Vendor.Accepted(HOSTILE, Optional.of(1), Optional.empty())))).toList();
        return new Vendor(v.id(), HOSTILE, v.kind(), v.place(), v.deliveries(), v.minimum(), v.fee(), v.mayBuy(), offers,
                v.commitments(), v.priorities(), new Vendor.Ordering(contact, Optional.of("@cmd"),
                Optional.of("note line\n".repeat(40) + "last note line")));
    }
}
