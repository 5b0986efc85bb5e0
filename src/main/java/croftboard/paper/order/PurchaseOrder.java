package croftboard.paper.order;

import croftboard.book.Book;
import croftboard.book.Contact;
import croftboard.book.Kitchen;
import croftboard.book.Vendor;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.measure.Place;
import croftboard.measure.WeekRange;
import croftboard.paper.Called;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One order to one vendor for one delivery, with every word that any form of it needs: the sheet, the order file, the
 * e-mail.
 *
 * @param number ours: {@code 2027-W33/hollow-brook/0816}, the same in every version of the plan
 * @param version of the plan: a later one replaces an earlier one
 * @param toMinimum what the order must come to, after other weeks' orders on the delivery
 */
public record PurchaseOrder(OrderKey key, String number, String version, boolean posted, boolean notSent, Party buyer,
        Party seller, Optional<String> customer, LocalDateTime cutOff, Optional<Vendor.Window> window, ZoneId zone,
        LocalDateTime printed, List<Line> lines, long total, long fee, long minimum, long toMinimum, List<String> notes) {

    /** @param place of the town, when the address says nothing */
    public record Party(String id, String name, Place place, Contact contact) { }

    /**
     * @param article as the vendor calls it
     * @param ours as the kitchen calls it
     * @param grams a pack weighs as purchased, milligrams
     * @param accept acceptable substitutions
     */
    public record Line(String item, String article, String ours, Optional<String> number, String pack, int packs,
            long packMg, long price, long cost, List<Vendor.Accepted> accept) { }

    public LocalDate delivery() {
        return key.delivery();
    }

    /** What is to be paid: goods and delivery fee. */
    public long payable() {
        return total + fee;
    }

    public boolean minimumMet() {
        return total >= toMinimum;
    }

    /** Fit for a file name: {@code order-hollow-brook-2027-08-16}. */
    public String id() {
        return "order-" + key.vendor() + "-" + key.delivery();
    }

    /** All orders of a plan that the context wants, soonest cut-off first. A day is a delivery day. */
    public static List<PurchaseOrder> all(PaperContext context) {
        return context.plan().orders().stream()
                .filter(o -> context.filters().wants(o.delivery()) && context.filters().wantsVendor(o.vendor()))
                .sorted(Comparator.comparing(WeekPlan.Order::cutOff).thenComparing(WeekPlan.Order::delivery)
                        .thenComparing(WeekPlan.Order::vendor))
                .map(o -> of(context, o)).toList();
    }

    static PurchaseOrder of(PaperContext context, WeekPlan.Order order) {
        Book book = context.book();
        Kitchen kitchen = book.kitchen();
        OrderKey key = OrderKey.of(order);
        Optional<Vendor> vendor = Optional.ofNullable(book.vendors().get(order.vendor()));
        Vendor.Ordering ordering = vendor.map(Vendor::ordering).orElse(Vendor.Ordering.NONE);
        Party buyer = new Party("kitchen", kitchen.name(), kitchen.place(), kitchen.paperwork().contact());
        Party seller = new Party(order.vendor(), context.called().vendor(order.vendor()),
                vendor.map(Vendor::place).orElse(new Place("", "", 0, 0)), ordering.contact());
        return new PurchaseOrder(key, number(context.plan().week(), key), context.planName(), context.posted(),
                context.notSent().contains(key), buyer, seller, ordering.customer(), order.cutOff(),
                vendor.flatMap(v -> window(v, order.delivery())), kitchen.zone(), context.printed(),
                order.lines().stream().map(l -> line(context, key, l)).toList(), order.total(), order.fee(),
                order.minimum(), order.toMinimum(),
                Stream.of(kitchen.paperwork().orderNote(), ordering.note()).flatMap(Optional::stream).toList());
    }

    private static String number(IsoWeek week, OrderKey key) {
        return week + "/" + key.vendor() + "/" + key.delivery().toString().substring(5).replace("-", "");
    }

    private static Optional<Vendor.Window> window(Vendor vendor, LocalDate delivery) {
        return vendor.deliveries().stream().filter(d -> d.day() == delivery.getDayOfWeek()).findFirst()
                .flatMap(Vendor.Delivery::window);
    }

    private static Line line(PaperContext context, OrderKey key, WeekPlan.OrderLine line) {
        Book book = context.book();
        Called called = context.called();
        Optional<Vendor.Offer> offer = offer(book, key, line);
        return new Line(line.item(), offer.flatMap(Vendor.Offer::as).orElse(called.item(line.item())),
                called.item(line.item()), offer.flatMap(Vendor.Offer::number), line.pack(), line.packs(), line.packMg(),
                line.price(), line.cost(), offer.map(Vendor.Offer::accept).orElse(List.of()));
    }

    /** The vendor's offer of that pack in the delivery's week; else of any week. */
    private static Optional<Vendor.Offer> offer(Book book, OrderKey key, WeekPlan.OrderLine line) {
        Optional<Vendor> vendor = Optional.ofNullable(book.vendors().get(key.vendor()));
        List<Vendor.Offer> same = vendor.map(v -> v.offers().stream()
                .filter(o -> o.item().equals(line.item()) && o.pack().equals(line.pack())).toList()).orElse(List.of());
        IsoWeek week = IsoWeek.of(key.delivery());
        return same.stream().filter(o -> o.weeks().stream().map(Vendor.Expected::weeks).anyMatch((WeekRange w) -> w.holds(week)))
                .findFirst().or(() -> same.stream().findFirst());
    }

    /** {@code at most 2 packs, each $18.00 or less}. */
    public static String limits(Vendor.Accepted accepted, Line line) {
        int packs = Math.min(accepted.atMost().orElse(line.packs()), line.packs());
        return "at most " + packs + (packs == 1 ? " pack, " : " packs, each ")
                + accepted.price().orElse(new Cents(line.price())) + " or less";
    }
}
