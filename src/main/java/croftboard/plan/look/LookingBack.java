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
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
        Set<String> dishes = new HashSet<>();
        plan.menu().stream().filter(this::isLine).forEach(s -> s.recipe().ifPresent(dishes::add));
        List<Sale> sales = ledger.entries(Sale.class, from, to).stream().filter(s -> s.dish().filter(dishes::contains).isPresent()).toList();
        String prefix = plan.week() + "/";
        List<Receipt> receipts = ledger.entries(Receipt.class, from.minusDays(14), to.plusDays(7)).stream()
                .filter(r -> r.kind() == Receipt.Kind.FOOD && r.order().filter(o -> o.startsWith(prefix)).isPresent()).toList();
        Set<Long> ids = new HashSet<>();
        receipts.forEach(r -> ids.add(r.stamp().id()));
        long credits = ledger.entries(Credit.class, from.minusDays(14), to.plusDays(60)).stream().filter(c -> c.step() == Credit.Step.RECEIVED
                && c.receipt().filter(ids::contains).isPresent()).mapToLong(Credit::cents).sum();
        List<Waste> waste = ledger.entries(Waste.class, from, to);
        return new LookBack.Money(plan.account().sales() - plan.account().eventSales(),
                sales.isEmpty() ? Optional.empty() : Optional.of(sales.stream().mapToLong(Sale::cents).sum()),
                plan.orders().stream().mapToLong(WeekPlan.Order::total).sum(),
                receipts.isEmpty() ? Optional.empty() : Optional.of(receipts.stream().mapToLong(Receipt::cents).sum() - credits),
                plan.account().waste(), waste.isEmpty() ? Optional.empty() : Optional.of(waste.stream().mapToLong(Waste::cents).sum()),
                Ratio.of(waste.stream().mapToLong(w -> w.portions().thousandths()).sum(), 1000),
                (int) waste.stream().filter(w -> w.cents() == 0).count());
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
