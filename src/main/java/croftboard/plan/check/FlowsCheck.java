package croftboard.plan.check;

import croftboard.book.Ingredient;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What is bought and on hand goes where the plan says: flows meet the needs, come from where something is and within its
 * life, and for every item bought + stock used = used + kept + wasted, to the milligram.
 */
final class FlowsCheck {
    /** Surplus keeps when it is still good on the second day after the week. */
    private static final int KEEPS_DAYS_AFTER = 2;
    private final Subject of;
    private final Counted counted;
    private final Report report;
    private final Map<String, Map<LocalDate, Long>> bought = new TreeMap<>();

    FlowsCheck(Subject of, Counted counted, Report report) {
        this.of = of;
        this.counted = counted;
        this.report = report;
    }

    void run() {
        for (WeekPlan.Order order : of.plan().orders()) {
            order.lines().forEach(l -> bought.computeIfAbsent(l.item(), i -> new TreeMap<>())
                    .merge(order.delivery(), Math.multiplyExact(l.packs(), l.packMg()), Math::addExact));
        }
        TreeSet<String> items = new TreeSet<>(bought.keySet());
        of.plan().needs().forEach(n -> items.add(n.item()));
        of.plan().flows().forEach(f -> items.add(f.item()));
        of.plan().surplus().forEach(s -> items.add(s.item()));
        for (String item : items) {
            of.ingredient(item).ifPresentOrElse(this::item,
                    () -> report.find("flows: the book has no ingredient " + item));
        }
        report.count(of.plan().flows().size(), "flows");
        report.count(items.size(), "balances");
    }

    private void item(Ingredient item) {
        meetsNeeds(item);
        withinLife(item);
        fromStock(item);
        surplus(item);
    }

    private void meetsNeeds(Ingredient item) {
        Map<LocalDate, Long> open = new TreeMap<>();
        of.plan().needs().stream().filter(n -> n.item().equals(item.id()))
                .forEach(n -> open.merge(n.day(), n.mg(), Long::sum));
        of.plan().flows().stream().filter(f -> f.item().equals(item.id()))
                .forEach(f -> open.merge(f.day(), -f.mg(), Long::sum));
        open.forEach((day, mg) -> {
            String what = item.name() + " for " + Say.day(day);
            report.findIf(mg < 0, "flows: " + what + ": " + Say.mass(-mg) + " more than is needed");
            if (mg > 0) {
                report.broken(Say.mass(mg) + " of " + what + " comes from nowhere", item.name(), Say.day(day));
            }
        });
    }

    private void withinLife(Ingredient item) {
        Map<LocalDate, Long> left = new TreeMap<>(bought.getOrDefault(item.id(), Map.of()));
        for (WeekPlan.Flow f : of.plan().flows()) {
            if (!f.item().equals(item.id())) {
                continue;
            }
            String what = "flows: " + item.name() + " for " + Say.day(f.day());
            report.findIf(f.mg() <= 0, what + ": " + f.mg() + " mg is no amount");
            if (f.delivery().isPresent()) {
                LocalDate from = f.delivery().get();
                boolean good = !f.day().isBefore(from) && !f.day().isAfter(from.plusDays(item.keepsDays()));
                report.findIf(!good, what + " from the delivery of " + Say.day(from) + ": usable only from then for "
                        + item.keepsDays() + " days");
                left.merge(from, -f.mg(), Long::sum);
            }
        }
        left.forEach((day, mg) -> report.findIf(mg < 0, "flows: " + item.name() + " from the delivery of " + Say.day(day)
                + ": " + Say.mass(-mg) + " more than it brings"));
    }

    /** What flows from stock must fit into the dated lots. */
    private void fromStock(Ingredient item) {
        Transport ways = new Transport();
        var lots = counted.ingredients(item.id());
        lots.forEach(l -> ways.source(l.mg()));
        long wanted = 0;
        for (WeekPlan.Flow f : of.plan().flows()) {
            if (f.item().equals(item.id()) && f.delivery().isEmpty()) {
                wanted += f.mg();
                int demand = ways.demand(f.mg());
                for (int l = 0; l < lots.size(); l++) {
                    if (!f.day().isBefore(lots.get(l).from()) && !f.day().isAfter(lots.get(l).until())) {
                        ways.way(l, demand);
                    }
                }
            }
        }
        long there = ways.met();
        report.findIf(there < wanted, "flows: " + Say.mass(wanted) + " of " + item.name() + " is taken from stock, where only "
                + Say.mass(there) + " is there and good on those days");
    }

    private void surplus(Ingredient item) {
        long kept = 0;
        long wasted = 0;
        for (Map.Entry<LocalDate, Long> e : bought.getOrDefault(item.id(), Map.of()).entrySet()) {
            long used = of.plan().flows().stream().filter(f -> f.item().equals(item.id()))
                    .filter(f -> f.delivery().isPresent() && f.delivery().get().equals(e.getKey()))
                    .mapToLong(WeekPlan.Flow::mg).sum();
            LocalDate good = e.getKey().plusDays(item.keepsDays());
            boolean keeps = item.isStaple() || !good.isBefore(of.days().sunday().plusDays(KEEPS_DAYS_AFTER));
            kept += keeps ? e.getValue() - used : 0;
            wasted += keeps ? 0 : e.getValue() - used;
        }
        Set<String> seen = new HashSet<>();
        WeekPlan.Surplus claimed = new WeekPlan.Surplus(item.id(), 0, 0, 0, 0);
        for (WeekPlan.Surplus s : of.plan().surplus()) {
            if (s.item().equals(item.id())) {
                claimed = s;
                report.findIf(!seen.add(s.item()), "surplus: " + item.name() + " stands there twice");
            }
        }
        String what = "surplus: " + item.name();
        report.sameMass(what + " that keeps", claimed.keptMg(), kept);
        report.sameMass(what + " thrown away", claimed.wastedMg(), wasted);
        report.sameCents(what + ", worth of what keeps", claimed.keptCents(), keptWorth(item, kept));
        Ratio pounds = Ratio.of(wasted).over(1000).over(Unit.POUND.base());
        report.sameCents(what + ", cost of what is thrown away", claimed.wasteCents(),
                pounds.times(of.book().kitchen().wastePerPound().value()).round());
    }

    /** Rounded down, once an item: staples at what they cost, else a share of the cheapest list price. */
    private long keptWorth(Ingredient item, long mg) {
        if (item.isStaple()) {
            return of.plan().orders().stream().flatMap(o -> o.lines().stream()).filter(l -> l.item().equals(item.id()))
                    .mapToLong(WeekPlan.OrderLine::cost).sum();
        }
        Ratio share = item.keepWorth()
                .orElse(of.book().kitchen().surplusWorth().getOrDefault(item.storage(), Ratio.ZERO));
        return of.offered().centsPerGram(item.id()).times(share).times(mg).over(1000).floor();
    }
}
