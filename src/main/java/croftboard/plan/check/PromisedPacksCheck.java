package croftboard.plan.check;

import croftboard.book.Ingredient;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Packs that must be taken: commitments, on the first delivery of the week that carries them, and staples counted below
 * their par, back to it in whole packs of the cheapest offer. No other staple is bought.
 */
final class PromisedPacksCheck {
    private final Subject of;
    private final Counted counted;
    private final Report report;
    private int promised;

    PromisedPacksCheck(Subject of, Counted counted, Report report) {
        this.of = of;
        this.counted = counted;
        this.report = report;
    }

    void run() {
        for (Offered.Pack pack : of.offered().packs()) {
            if (!staple(pack.offer().item()) && !changed(pack)) {
                int least = Math.min(pack.packs(), Math.max(0, committed(pack) - ordered(pack)));
                promised += least > 0 ? 1 : 0;
                taken(pack, least);
            }
        }
        if (of.revised().isEmpty()) {
            of.book().ingredients().values().stream().filter(Ingredient::isStaple).forEach(this::staple);
        }
        report.count(promised, "packs promised or back to par");
    }

    /** In a plan changed under way: what is past its cut-off, and what the changes speak of, is looked at with the orders. */
    private boolean changed(Offered.Pack pack) {
        return of.revised().map(r -> r.fixed(pack.vendor().deliveries().stream()
                .filter(d -> d.day() == pack.delivery().getDayOfWeek()).findFirst().orElseThrow().cutOffFor(pack.delivery()),
                pack.delivery()) || new ChangedSupply(r, of.offered()).speaksOf(pack.vendor().id(), pack.offer().item())).orElse(false);
    }

    private boolean staple(String item) {
        return of.book().ingredient(item).isStaple();
    }

    private Optional<WeekPlan.OrderLine> line(Offered.Pack pack) {
        return of.plan().orders().stream().filter(o -> o.vendor().equals(pack.vendor().id()))
                .filter(o -> o.delivery().equals(pack.delivery())).flatMap(o -> o.lines().stream())
                .filter(l -> l.item().equals(pack.offer().item()) && l.pack().equals(pack.offer().pack())).findFirst();
    }

    private void taken(Offered.Pack pack, int least) {
        Optional<WeekPlan.OrderLine> line = line(pack);
        int packs = line.map(WeekPlan.OrderLine::packs).orElse(0);
        String what = "orders: " + pack.offer().pack() + " of " + pack.offer().item() + " from " + pack.vendor().id()
                + " for " + Say.day(pack.delivery());
        report.findIf(packs < least, what + ": " + packs + " packs, where " + least + " are promised");
        line.ifPresent(l -> report.same(what + ": marked as promised", l.promised(), least > 0));
    }

    private int ordered(Offered.Pack pack) {
        return of.given().orders().stream().filter(o -> o.vendor().equals(pack.vendor().id()))
                .filter(o -> o.delivery().equals(pack.delivery()) && o.item().equals(pack.offer().item()))
                .filter(o -> o.pack().equals(pack.offer().pack())).mapToInt(Given.Ordered::packs).sum();
    }

    private int committed(Offered.Pack pack) {
        IsoWeek week = of.plan().week();
        boolean here = IsoWeek.of(pack.delivery()).equals(week) && first(pack.vendor(), pack.offer(), week)
                .equals(Optional.of(pack.delivery()));
        return !here ? 0 : pack.vendor().commitments().stream()
                .filter(c -> c.item().equals(pack.offer().item()) && c.pack().equals(pack.offer().pack()))
                .filter(c -> c.weeks().holds(week)).mapToInt(Vendor.Commitment::packs).sum();
    }

    private Optional<LocalDate> first(Vendor vendor, Vendor.Offer offer, IsoWeek week) {
        return week.monday().datesUntil(week.monday().plusDays(7))
                .filter(d -> of.offered().whyNot(vendor, d).isEmpty())
                .filter(d -> offer.on().isEmpty() || offer.on().contains(d.getDayOfWeek())).findFirst();
    }

    private void staple(Ingredient staple) {
        List<WeekPlan.OrderLine> lines = of.plan().orders().stream().flatMap(o -> o.lines().stream())
                .filter(l -> l.item().equals(staple.id())).toList();
        Ratio par = Weights.held(staple, staple.par().orElseThrow());
        Ratio missing = par.minus(counted.stapleGrams().getOrDefault(staple.id(), par));
        Optional<Long> cheapest = of.offered().packs().stream().filter(p -> p.offer().item().equals(staple.id()))
                .filter(p -> missing.signum() > 0 && packs(p, missing) <= p.packs())
                .map(p -> p.priceFor(packs(p, missing)) * packs(p, missing)).min(Long::compare);
        String what = "orders: " + staple.name() + ", a staple";
        if (cheapest.isEmpty()) {
            report.findIf(!lines.isEmpty(), what + ", is ordered, though it is not counted below its par");
            return;
        }
        promised++;
        if (lines.size() != 1) {
            report.find(what + ", counted below its par: one line brings it back, the plan has " + lines.size());
            return;
        }
        WeekPlan.OrderLine line = lines.get(0);
        long needed = missing.times(1000).over(line.packMg()).ceil();
        report.findIf(line.packs() != needed, what + ": " + line.packs() + " packs, where " + needed
                + " bring it back to par");
        report.sameCents(what + ": cost of bringing it back to par", line.cost(), cheapest.get());
        report.same(what + ": marked as promised", line.promised(), true);
    }

    private int packs(Offered.Pack pack, Ratio grams) {
        return Math.toIntExact(grams.times(1000).over(Weights.mgDown(of.offered().grams(pack.offer()))).ceil());
    }
}
