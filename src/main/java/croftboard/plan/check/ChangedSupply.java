package croftboard.plan.check;

import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What vendors bring under changed facts, as the changes say it: of orders that stood, and of packs still to be had. */
final class ChangedSupply {
    private final Revised revised;
    private final Offered offered;

    ChangedSupply(Revised revised, Offered offered) {
        this.revised = revised;
        this.offered = offered;
    }

    /** What comes of an order of the base, line by line, in whole packs; the price may have changed. */
    record Comes(String item, String pack, int packs, long price) { }

    /** Orders of the base that could not be changed any more, as they come, by vendor and day. */
    List<Comes> fixedLines(String vendor, LocalDate delivery) {
        List<Comes> all = new ArrayList<>();
        for (WeekPlan.Order order : revised.base().orders()) {
            if (order.vendor().equals(vendor) && (revised.fixed(order) || late(order)) && comesOn(order).equals(Optional.of(delivery))) {
                order.lines().forEach(l -> {
                    int packs = packs(order, l);
                    if (packs > 0) {
                        all.add(new Comes(l.item(), l.pack(), packs, price(order, l, packs)));
                    }
                });
            }
        }
        return all;
    }

    /** What comes late comes as it was ordered, also before its cut-off. */
    private boolean late(WeekPlan.Order order) {
        return revised.changes().stream().anyMatch(c -> c instanceof Change.Late late && late.vendor().equals(order.vendor())
                && late.day() == order.delivery().getDayOfWeek());
    }

    /** Empty: nothing comes of it. */
    private Optional<LocalDate> comesOn(WeekPlan.Order order) {
        LocalDate day = order.delivery();
        for (Change c : revised.changes()) {
            if (c instanceof Change.VendorOut out && out.vendor().equals(order.vendor()) && !revised.over(order.delivery())
                    && out.day().map(d -> d == order.delivery().getDayOfWeek()).orElse(true)
                    || c instanceof Change.NotSent not && not.vendor().equals(order.vendor())
                            && not.day() == order.delivery().getDayOfWeek()) {
                return Optional.empty();
            }
            if (c instanceof Change.Late late && late.vendor().equals(order.vendor())
                    && late.day() == order.delivery().getDayOfWeek()) {
                day = order.delivery().plusDays(Math.floorMod(late.until().getValue() - late.day().getValue(), 7));
            }
        }
        return Optional.of(day);
    }

    private int packs(WeekPlan.Order order, WeekPlan.OrderLine line) {
        for (Change c : revised.changes()) {
            if (c instanceof Change.ItemOut out && out.item().equals(line.item()) && !revised.over(order.delivery())) {
                return 0;
            }
            if (got(c, order, line)) {
                return Math.min(((Change.Got) c).packs(), line.packs());
            }
        }
        return line.packs();
    }

    private static boolean got(Change c, WeekPlan.Order order, WeekPlan.OrderLine line) {
        return c instanceof Change.Got got && got.vendor().equals(order.vendor()) && got.item().equals(line.item())
                && got.day().map(d -> d == order.delivery().getDayOfWeek()).orElse(true);
    }

    /** Fewer packs than ordered may fall below a price break. */
    private long price(WeekPlan.Order order, WeekPlan.OrderLine line, int packs) {
        long own = packs == line.packs() ? line.price() : offered.find(order.vendor(), order.delivery(), line.item(),
                line.pack()).map(p -> p.priceFor(packs)).orElse(line.price());
        return revised.over(order.delivery()) ? own : newPrice(order.vendor(), line.item()).orElse(own);
    }

    Optional<Long> newPrice(String vendor, String item) {
        return revised.changes().stream().filter(c -> c instanceof Change.Price p && p.vendor().equals(vendor)
                && p.item().equals(item)).map(c -> ((Change.Price) c).price().value()).findFirst();
    }

    /** Whether any of the changes speaks of that vendor's packs of the item. */
    boolean speaksOf(String vendor, String item) {
        return revised.changes().stream().anyMatch(c -> c instanceof Change.Got g && g.vendor().equals(vendor)
                && g.item().equals(item) || c instanceof Change.ItemOut i && i.item().equals(item)
                || c instanceof Change.VendorOut o && o.vendor().equals(vendor)
                || c instanceof Change.Late l && l.vendor().equals(vendor)
                || c instanceof Change.NotSent n && n.vendor().equals(vendor)
                || c instanceof Change.Buy b && b.vendor().equals(vendor) && b.item().equals(item)
                || c instanceof Change.Take t && t.vendor().equals(vendor) && t.item().equals(item)
                || c instanceof Change.More m && m.vendor().equals(vendor) && m.item().equals(item));
    }

    /** Packs above what was announced, at their own price. */
    Optional<Change.More> more(String vendor, String item, LocalDate delivery) {
        return revised.changes().stream().map(c -> c instanceof Change.Take t
                        ? new Change.More(t.vendor(), t.item(), t.packs(), t.price(), t.day()) : c)
                .filter(c -> c instanceof Change.More m && m.vendor().equals(vendor)
                && m.item().equals(item) && revised.inWeek(m.day()).equals(delivery)).map(Change.More.class::cast).findFirst();
    }

    /** Whether the vendor still brings the item on a delivery that was open. */
    boolean open(String vendor, String item, LocalDate delivery) {
        return revised.changes().stream().noneMatch(c -> c instanceof Change.ItemOut i && i.item().equals(item)
                || c instanceof Change.VendorOut o && o.vendor().equals(vendor)
                        && o.day().map(d -> d == delivery.getDayOfWeek()).orElse(true)
                || c instanceof Change.NotSent n && n.vendor().equals(vendor) && n.day() == delivery.getDayOfWeek());
    }
}
