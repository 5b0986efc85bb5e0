package croftboard.plan.check;

import croftboard.book.Ingredient;
import croftboard.plan.Given;
import croftboard.plan.Rotation;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One ingredient through all weeks of a rotation, lot by lot: what a week buys or finds is used up soonest expiry first. */
final class WeeksLeft {
    /** @param bought in the rotation: it counts in its money */
    private record Lot(LocalDate from, LocalDate until, boolean bought, long[] mg) { }

    private final Ingredient item;
    private final Report report;
    private List<Lot> lots = new ArrayList<>();
    private long shelf;

    WeeksLeft(Ingredient item, Report report) {
        this.item = item;
        this.report = report;
    }

    /** @param found counted before the first week, or handed over by plans outside */
    void begin(List<Counted.Lot> found) {
        found.forEach(l -> lots.add(new Lot(l.from(), l.until(), false, new long[] {l.mg()})));
    }

    void week(Rotation.Week week, boolean first) {
        if (!first) {
            handedOn(week);
        }
        Map<LocalDate, Lot> own = new TreeMap<>();
        for (WeekPlan.Order order : week.plan().orders()) {
            for (WeekPlan.OrderLine line : order.lines()) {
                if (line.item().equals(item.id())) {
                    long mg = Math.multiplyExact(line.packs(), line.packMg());
                    shelf += item.isStaple() ? mg : 0;
                    own.computeIfAbsent(order.delivery(), d -> new Lot(d, d.plusDays(item.keepsDays()), true, new long[1]))
                            .mg()[0] += item.isStaple() ? 0 : mg;
                }
            }
        }
        List<Lot> stock = new ArrayList<>(lots);
        stock.sort(Comparator.comparing(Lot::until));
        Map<LocalDate, Long> need = new TreeMap<>();
        week.plan().needs().stream().filter(n -> n.item().equals(item.id())).forEach(n -> need.merge(n.day(), n.mg(), Long::sum));
        for (Lot lot : stock) {
            need.replaceAll((day, mg) -> used(lot, day, mg));
        }
        need.replaceAll((day, mg) -> {
            long left = mg;
            for (Lot lot : own.values()) {
                left = used(lot, day, left);
            }
            return left;
        });
        lots.addAll(own.values());
        lots.removeIf(l -> l.mg()[0] == 0);
    }

    private static long used(Lot lot, LocalDate day, long mg) {
        if (day.isBefore(lot.from()) || day.isAfter(lot.until())) {
            return mg;
        }
        long take = Math.min(mg, lot.mg()[0]);
        lot.mg()[0] -= take;
        return mg - take;
    }

    /** What a week is said to find is what the weeks before have left, lot by lot. */
    private void handedOn(Rotation.Week week) {
        Map<LocalDate, Long> said = new TreeMap<>();
        week.given().lots().stream().filter(l -> l.item().equals(item.id())).forEach(l -> said.merge(l.until(), l.mg(), Long::sum));
        Map<LocalDate, Long> there = new TreeMap<>();
        lots.forEach(l -> there.merge(l.until(), l.mg()[0], Long::sum));
        LocalDate since = week.plan().week().monday().minusDays(7);
        there.keySet().removeIf(until -> until.isBefore(since));
        report.findIf(!said.equals(there), week.plan().week() + ": " + item.name() + " left by earlier weeks is said to be "
                + said + " mg by last day, and is " + there);
        for (Given.Lot l : week.given().lots()) {
            boolean early = l.item().equals(item.id()) && lots.stream().filter(o -> o.until().equals(l.until()))
                    .noneMatch(o -> !o.from().isAfter(l.from()));
            report.findIf(early, week.plan().week() + ": " + item.name() + " is said to be there from " + l.from()
                    + ", before it comes");
        }
    }

    /** Bought, not used, and good on that day. */
    long kept(LocalDate day) {
        return shelf + lots.stream().filter(l -> l.bought() && !l.until().isBefore(day)).mapToLong(l -> l.mg()[0]).sum();
    }

    /** Bought, not used, and gone by that day. */
    long wasted(LocalDate day) {
        return lots.stream().filter(l -> l.bought() && l.until().isBefore(day)).mapToLong(l -> l.mg()[0]).sum();
    }
}
