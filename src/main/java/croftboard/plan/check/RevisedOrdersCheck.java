package croftboard.plan.check;

import croftboard.book.Vendor;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Orders of a plan that was changed under way: what was past its cut-off comes as it was sent or as the changes say, and
 * whatever else is ordered can still be ordered, is to be had and reaches its minimum.
 */
final class RevisedOrdersCheck {
    private final Subject of;
    private final Revised revised;
    private final ChangedSupply supply;
    private final Report report;
    private int lines;

    RevisedOrdersCheck(Subject of, Revised revised, Report report) {
        this.of = of;
        this.revised = revised;
        this.supply = new ChangedSupply(revised, of.offered());
        this.report = report;
    }

    void run() {
        for (WeekPlan.Order order : of.plan().orders()) {
            String where = "orders: " + order.vendor() + " for " + Say.day(order.delivery());
            Vendor vendor = of.book().vendors().get(order.vendor());
            if (vendor == null) {
                report.find(where + ": the book has no such vendor");
                continue;
            }
            report.findIf(order.lines().isEmpty(), where + ": it has no line");
            List<ChangedSupply.Comes> fixed = new ArrayList<>(supply.fixedLines(order.vendor(), order.delivery()));
            boolean closed = revised.fixed(order.cutOff(), order.delivery());
            order.lines().forEach(l -> line(order, l, fixed, closed, vendor, where));
            fixed.forEach(f -> report.find(where + ": " + f.packs() + " " + f.pack() + " of " + f.item()
                    + " come of it, which are left out"));
            money(order, vendor, closed, where);
        }
        nothingForgotten();
        report.count(of.plan().orders().size(), "orders");
        report.count(lines, "order lines");
    }

    private void line(WeekPlan.Order order, WeekPlan.OrderLine line, List<ChangedSupply.Comes> fixed, boolean closed,
            Vendor vendor, String where) {
        lines++;
        String what = where + ": " + line.pack() + " of " + line.item();
        report.sameCents(what + ", " + line.packs() + " at " + Say.money(line.price()), line.cost(),
                Math.multiplyExact(line.price(), (long) line.packs()));
        ChangedSupply.Comes as = new ChangedSupply.Comes(line.item(), line.pack(), line.packs(), line.price());
        if (fixed.remove(as)) {
            return;
        }
        Optional<Change.More> more = supply.more(order.vendor(), line.item(), order.delivery());
        if (more.isPresent() && line.price() == more.get().price().value() && line.packs() <= more.get().packs()) {
            return;
        }
        if (closed) {
            report.find(what + ": " + line.packs() + " packs do not come of an order that could no longer be changed");
            return;
        }
        open(order, line, vendor, what);
    }

    private void open(WeekPlan.Order order, WeekPlan.OrderLine line, Vendor vendor, String what) {
        Optional<Offered.Pack> pack = of.offered().find(vendor.id(), order.delivery(), line.item(), line.pack());
        if (pack.isEmpty() || !supply.open(vendor.id(), line.item(), order.delivery())) {
            report.find(what + " is not to be had on that delivery");
            return;
        }
        report.findIf(line.packs() < 1 || line.packs() > pack.get().packs(), what + ": " + line.packs() + " packs, where "
                + pack.get().packs() + " are to be had");
        report.sameCents(what + ": price of a pack", line.price(), supply.newPrice(vendor.id(), line.item())
                .orElse(pack.get().priceFor(line.packs())));
        report.sameMass(what + ": contents", line.packMg(), Weights.mgDown(of.offered().grams(pack.get().offer())));
    }

    private void money(WeekPlan.Order order, Vendor vendor, boolean closed, String where) {
        long total = order.lines().stream().mapToLong(WeekPlan.OrderLine::cost).sum();
        report.sameCents(where + ": total", order.total(), total);
        long already = of.offered().alreadyOrdered(vendor.id(), order.delivery());
        long toMinimum = Math.max(0, vendor.minimum().value() - already);
        report.sameCents(where + ": fee", order.fee(), already > 0 ? 0 : vendor.fee().value());
        boolean spoken = order.lines().stream().anyMatch(l -> supply.speaksOf(order.vendor(), l.item()));
        if (!closed && !spoken && total < toMinimum) {
            report.broken("the order of " + vendor.name() + " for " + Say.day(order.delivery()) + " is " + Say.money(total)
                    + ", below " + Say.money(toMinimum), vendor.name(), Say.day(order.delivery()), "minimum");
        }
    }

    /** Orders that could no longer be changed are all there, with everything that comes of them. */
    private void nothingForgotten() {
        Set<List<Object>> there = new HashSet<>();
        of.plan().orders().forEach(o -> there.add(List.of(o.vendor(), o.delivery())));
        List<LocalDate> days = of.days().all();
        of.book().vendors().keySet().forEach(v -> days.forEach(d -> {
            if (!there.contains(List.<Object>of(v, d)) && !supply.fixedLines(v, d).isEmpty()) {
                report.find("orders: what comes from " + v + " on " + Say.day(d) + " is left out");
            }
        }));
    }
}
