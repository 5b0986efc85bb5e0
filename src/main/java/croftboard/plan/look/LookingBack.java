package croftboard.plan.look;

import croftboard.book.Book;
import croftboard.book.ManagersFigure;
import croftboard.book.Recipe;
import croftboard.forecast.Observation;
import croftboard.ledger.BatchYield;
import croftboard.ledger.Credit;
import croftboard.ledger.Ledger;
import croftboard.ledger.Left;
import croftboard.ledger.Overriding;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.Waste;
import croftboard.ledger.share.MenuMix;
import croftboard.measure.Ratio;
import croftboard.plan.PortionCosts;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Puts a {@link LookBack} together from a plan, the book and the ledger. */
public final class LookingBack {
    private static final int YIELD_WEEKS = 8;
    private final Book book;
    private final WeekPlan plan;
    private final Ledger ledger;
    private final LocalDate from;
    private final LocalDate to;
    private final SoldDays days;

    private LookingBack(Book book, WeekPlan plan, Ledger ledger) {
        this.book = book;
        this.plan = plan;
        this.ledger = ledger;
        this.from = plan.week().monday();
        this.to = from.plusDays(6);
        this.days = SoldDays.of(ledger, book, w -> w.equals(plan.week()) ? Optional.of(plan) : Optional.empty(), from, to);
    }

    public static LookBack of(Book book, WeekPlan plan, Ledger ledger) {
        LookingBack look = new LookingBack(book, plan, ledger);
        return new LookBack(plan, look.runs(), look.money(), look.own(), look.yields(), look.mix());
    }

    private boolean isLine(WeekPlan.Served slot) {
        return book.kitchen().lines().stream().anyMatch(l -> l.id().equals(slot.line()));
    }

    private List<LookBack.Run> runs() {
        List<LookBack.Run> runs = new ArrayList<>();
        plan.menu().stream().filter(s -> isLine(s) && s.recipe().isPresent()).forEach(s -> runs.add(run(s, s.recipe().get())));
        return List.copyOf(runs);
    }

    private LookBack.Run run(WeekPlan.Served slot, String dish) {
        List<Observation> seen = new ArrayList<>();
        int silent = 0;
        for (LocalDate day : slot.days()) {
            Optional<Observation> o = days.on(new SoldDays.Key(day, slot.line(), dish)).filter(k -> k.sold() > 0 || k.prepared() > 0);
            o.ifPresent(seen::add);
            silent += o.isEmpty() ? 1 : 0;
        }
        List<Left> sheets = ledger.entries(Left.class, slot.days().get(0), slot.days().get(slot.days().size() - 1)).stream()
                .filter(l -> l.line().equals(slot.line()) && l.dish().equals(dish)).toList();
        List<Left> put = sheets.stream().filter(l -> l.prepared().isPresent()).toList();
        Optional<LocalTime> ranOut = seen.stream().flatMap(o -> o.ranOut().stream()).findFirst();
        return new LookBack.Run(slot.line(), dish, slot.days().get(0), slot.days().get(slot.days().size() - 1), slot.portions(),
                put.isEmpty() ? Optional.empty() : Optional.of(put.stream().mapToInt(l -> whole(l.prepared().get())).max().orElseThrow()),
                seen.isEmpty() ? Optional.empty() : Optional.of(seen.stream().mapToInt(Observation::sold).sum()),
                sheets.stream().flatMap(l -> l.left().stream()).reduce((a, b) -> b).map(LookingBack::whole),
                (int) seen.stream().filter(Observation::soldOut).count(), ranOut, silent);
    }

    private static int whole(Quantity q) {
        return (int) Math.round(q.thousandths() / 1000.0);
    }

    private LookBack.Money money() {
        List<WeekPlan.Served> served = plan.menu().stream().filter(s -> isLine(s) && s.recipe().isPresent()).toList();
        Map<String, Long> sold = new TreeMap<>();
        ledger.entries(Sale.class, from, to).forEach(s -> s.dish().filter(d -> served.stream().anyMatch(r -> r.recipe().get().equals(d)))
                .ifPresent(d -> sold.merge(d, s.cents(), Long::sum)));
        List<WeekPlan.Served> known = served.stream().filter(s -> sold.containsKey(s.recipe().get())).toList();
        Map<String, Long> came = received();
        List<WeekPlan.Order> there = plan.orders().stream().filter(o -> came.containsKey(reference(o))).toList();
        List<Waste> waste = ledger.entries(Waste.class, from, to);
        return new LookBack.Money(known.stream().mapToLong(WeekPlan.Served::sales).sum(), sum(sold),
                (int) served.stream().map(s -> s.recipe().get()).distinct().filter(d -> !sold.containsKey(d)).count(),
                there.stream().mapToLong(WeekPlan.Order::total).sum(), sum(came), plan.orders().size() - there.size(),
                plan.account().waste(), waste.isEmpty() ? Optional.empty() : Optional.of(waste.stream().mapToLong(Waste::cents).sum()),
                Ratio.of(waste.stream().mapToLong(w -> w.portions().thousandths()).sum(), 1000),
                (int) waste.stream().filter(w -> w.cents() == 0).count());
    }

    private static Optional<Long> sum(Map<String, Long> cents) {
        return cents.isEmpty() ? Optional.empty() : Optional.of(cents.values().stream().mapToLong(c -> c).sum());
    }

    /** As on the paper order. */
    private String reference(WeekPlan.Order order) {
        return String.format(Locale.ROOT, "%s/%s/%02d%02d", plan.week(), order.vendor(), order.delivery().getMonthValue(),
                order.delivery().getDayOfMonth());
    }

    /** Food by order, credits taken off. */
    private Map<String, Long> received() {
        Map<String, Long> cents = new TreeMap<>();
        Map<Long, String> orderOf = new TreeMap<>();
        for (Receipt r : ledger.entries(Receipt.class, from.minusDays(14), to.plusDays(7))) {
            if (r.kind() == Receipt.Kind.FOOD && r.order().filter(o -> o.startsWith(plan.week() + "/")).isPresent()) {
                cents.merge(r.order().get(), r.cents(), Long::sum);
                orderOf.put(r.stamp().id(), r.order().get());
            }
        }
        for (Credit c : ledger.entries(Credit.class, from.minusDays(14), to.plusDays(60))) {
            c.receipt().filter(id -> c.step() == Credit.Step.RECEIVED && orderOf.containsKey(id))
                    .ifPresent(id -> cents.merge(orderOf.get(id), -c.cents(), Long::sum));
        }
        return cents;
    }

    private List<LookBack.Own> own() {
        List<LookBack.Own> own = new ArrayList<>();
        for (ManagersFigure f : book.seasons().overrides()) {
            if (f.week().equals(plan.week())) {
                own.add(own(plan.week().day(f.day()), f.line(), f.insteadOf().map(Ratio::toDouble), f.portions().toDouble(), f.reason()));
            }
        }
        ledger.entries(Overriding.class, from, to).forEach(o -> own.add(own(o.date(), o.line(),
                o.forecast().map(q -> q.thousandths() / 1000.0), o.portions().thousandths() / 1000.0, o.reason())));
        own.sort(Comparator.comparing(LookBack.Own::date).thenComparing(LookBack.Own::line));
        return List.copyOf(own);
    }

    private LookBack.Own own(LocalDate date, String line, Optional<Double> forecast, double set, String reason) {
        List<Observation> seen = days.all().stream().filter(o -> o.date().equals(date) && (line.isEmpty() || o.line().equals(line))).toList();
        return new LookBack.Own(date, line, forecast, set, seen.isEmpty() ? Optional.empty()
                : Optional.of(seen.stream().mapToInt(Observation::sold).sum()), seen.stream().anyMatch(Observation::soldOut), reason);
    }

    private List<LookBack.Yield> yields() {
        Map<String, long[]> sums = new TreeMap<>();
        for (BatchYield y : ledger.entries(BatchYield.class, from.minusWeeks(YIELD_WEEKS - 1), to)) {
            if (y.expectedMg() > 0 && y.gotMg() > 0) {
                long[] sum = sums.computeIfAbsent(y.recipe(), r -> new long[3]);
                sum[0]++;
                sum[1] += y.expectedMg();
                sum[2] += y.gotMg();
            }
        }
        List<LookBack.Yield> yields = new ArrayList<>();
        sums.forEach((recipe, s) -> yields.add(new LookBack.Yield(recipe, (int) s[0], Ratio.of(s[2], s[1]))));
        return List.copyOf(yields);
    }

    /** By the register's money, where it has any of the week's dishes. */
    private Optional<MenuMix> mix() {
        Map<String, long[]> sums = new TreeMap<>();
        ledger.entries(Sale.class, from, to).forEach(s -> s.dish().map(book.recipes()::get).filter(Recipe::isDish).ifPresent(d -> {
            long[] sum = sums.computeIfAbsent(d.id(), k -> new long[2]);
            sum[0] += s.units().thousandths();
            sum[1] += s.cents();
        }));
        PortionCosts costs = new PortionCosts(book, plan.week());
        List<MenuMix.Sold> sold = sums.entrySet().stream().filter(e -> e.getValue()[0] > 0 && book.recipe(e.getKey()).worthOnly().isEmpty())
                .flatMap(e -> Stream.of(new MenuMix.Sold(e.getKey(), e.getValue()[0],
                        Ratio.of(e.getValue()[1] * 1000, e.getValue()[0]).minus(costs.of(book.recipe(e.getKey())))))).toList();
        return sold.isEmpty() ? Optional.empty() : Optional.of(MenuMix.of(sold, MenuMix.USUAL));
    }
}
