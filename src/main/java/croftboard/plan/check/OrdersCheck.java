package croftboard.plan.check;

import croftboard.book.Vendor;
import croftboard.plan.WeekPlan;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Orders: the vendor delivers then and can still be told, every line is on its list or calendar, and the money adds up. */
final class OrdersCheck {
    private final Subject of;
    private final Report report;
    private int lines;

    OrdersCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        Set<List<Object>> seen = new HashSet<>();
        for (WeekPlan.Order order : of.plan().orders()) {
            String where = "orders: " + order.vendor() + " for " + Say.day(order.delivery());
            report.findIf(!seen.add(List.of(order.vendor(), order.delivery())), where + " stands there twice");
            Vendor vendor = of.book().vendors().get(order.vendor());
            if (vendor == null) {
                report.find(where + ": the book has no such vendor");
            } else {
                order(order, vendor, where);
            }
        }
        report.count(of.plan().orders().size(), "orders");
        report.count(lines, "order lines");
    }

    private void order(WeekPlan.Order order, Vendor vendor, String where) {
        of.offered().whyNot(vendor, order.delivery()).ifPresent(why -> report.find(where + ": " + why));
        Optional<Vendor.Delivery> delivery = Offered.delivery(vendor, order.delivery());
        delivery.ifPresent(d -> report.same(where + ": cut-off", order.cutOff(), d.cutOffFor(order.delivery())));
        report.findIf(order.lines().isEmpty(), where + ": it has no line");
        Set<List<Object>> seen = new HashSet<>();
        long total = 0;
        for (WeekPlan.OrderLine line : order.lines()) {
            String what = where + ": " + line.pack() + " of " + line.item();
            report.findIf(!seen.add(List.of(line.item(), line.pack())), what + " stands there twice");
            of.offered().find(vendor.id(), order.delivery(), line.item(), line.pack()).ifPresentOrElse(
                    pack -> line(line, pack, what), () -> report.find(what + " is not to be had on that delivery"));
            report.sameCents(what + ", " + line.packs() + " at " + Say.money(line.price()), line.cost(),
                    Math.multiplyExact(line.price(), (long) line.packs()));
            total += line.cost();
            lines++;
        }
        money(order, vendor, total, where);
    }

    private void line(WeekPlan.OrderLine line, Offered.Pack pack, String what) {
        report.findIf(line.packs() < 1, what + ": " + line.packs() + " packs are no order");
        report.findIf(line.packs() > pack.packs(), what + ": " + line.packs() + " packs, where " + pack.packs()
                + (pack.listed() ? " are on the list" : " are expected by the calendar"));
        report.sameCents(what + ": price of a pack when " + line.packs() + " are bought", line.price(),
                pack.priceFor(line.packs()));
        report.sameMass(what + ": contents", line.packMg(), Weights.mgDown(of.offered().grams(pack.offer())));
        report.same(what + ": rests on this week's list", line.onList(), pack.listed());
    }

    private void money(WeekPlan.Order order, Vendor vendor, long total, String where) {
        report.sameCents(where + ": total", order.total(), total);
        long already = of.offered().alreadyOrdered(vendor.id(), order.delivery());
        long toMinimum = Math.max(0, vendor.minimum().value() - already);
        report.sameCents(where + ": minimum", order.minimum(), vendor.minimum().value());
        report.sameCents(where + ": missing to the minimum after other plans' orders", order.toMinimum(), toMinimum);
        report.sameCents(where + ": fee", order.fee(), already > 0 ? 0 : vendor.fee().value());
        if (total < toMinimum) {
            report.broken("the order of " + vendor.name() + " for " + Say.day(order.delivery()) + " is " + Say.money(total)
                    + ", below " + Say.money(toMinimum), vendor.name(), Say.day(order.delivery()), "minimum");
        }
    }
}
