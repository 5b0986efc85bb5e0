package croftboard.plan.look;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.forecast.DayCurve;
import croftboard.forecast.Observation;
import croftboard.ledger.Ledger;
import croftboard.ledger.Left;
import croftboard.ledger.Quantity;
import croftboard.ledger.Sale;
import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Dishes on lines day by day, put together from production sheets, the register and posted plans. The sheet goes before the
 * register, both before the plan: a sheet tells what was put out and when it ran out; where none came back, the plan tells
 * what was to be put out, and portions not sold on a day are there the next.
 */
public final class SoldDays {
    /** A day with an event for so large a share of what the case expects is no ordinary day. */
    private static final double LARGE_EVENT = 0.25;
    /** Nobody wrote opening hours down: common practice, no source; what the register says soon outweighs it. */
    private static final LocalTime OPENS = LocalTime.of(10, 0);
    private static final LocalTime CLOSES = LocalTime.of(20, 0);
    private static final double OPENING_WEIGHT = 200;
    private final Book book;
    private final Map<Key, Observation> days = new TreeMap<>();
    private final Map<LocalDate, Map<String, Long>> register = new HashMap<>();
    private final Map<LocalDate, Optional<String>> aside = new HashMap<>();
    private final Map<Integer, Long> byHour = new HashMap<>();

    /** A dish on a line on a day. */
    public record Key(LocalDate date, String line, String dish) implements Comparable<Key> {
        @Override
        public int compareTo(Key o) {
            int byDate = date.compareTo(o.date);
            int byLine = byDate != 0 ? byDate : line.compareTo(o.line);
            return byLine != 0 ? byLine : dish.compareTo(o.dish);
        }
    }

    private SoldDays(Book book) {
        this.book = book;
    }

    /** @param posted the plan that people worked from, by week. @param from first day, @param to last day */
    public static SoldDays of(Ledger ledger, Book book, Function<IsoWeek, Optional<WeekPlan>> posted, LocalDate from, LocalDate to) {
        SoldDays made = new SoldDays(book);
        List<Sale> sales = ledger.entries(Sale.class, from, to);
        for (Sale s : sales) {
            s.dish().ifPresent(d -> made.register.computeIfAbsent(s.date(), k -> new HashMap<>()).merge(d, s.units().thousandths(), Long::sum));
        }
        Map<Key, List<Left>> sheets = new TreeMap<>();
        ledger.entries(Left.class, from, to).forEach(l -> sheets.computeIfAbsent(new Key(l.date(), l.line(), l.dish()),
                k -> new ArrayList<>()).add(l));
        sheets.forEach((key, rows) -> made.sheet(key, rows.get(rows.size() - 1)));
        Set<IsoWeek> weeks = new TreeSet<>();
        Set<String> told = made.days.keySet().stream().map(k -> k.date() + " " + k.dish()).collect(Collectors.toSet());
        sales.stream().filter(s -> s.dish().isPresent() && !told.contains(s.date() + " " + s.dish().get()))
                .forEach(s -> weeks.add(IsoWeek.of(s.date())));
        weeks.forEach(w -> posted.apply(w).ifPresent(plan -> made.planned(plan, from, to)));
        made.hours(sales);
        return made;
    }

    /** By day, line and dish. */
    public List<Observation> all() {
        return List.copyOf(days.values());
    }

    public Optional<Observation> on(Key key) {
        return Optional.ofNullable(days.get(key));
    }

    /** When people come: the register's hours on days that did not run out. */
    public DayCurve curve() {
        return DayCurve.seen(byHour, DayCurve.even(OPENS, CLOSES), OPENING_WEIGHT);
    }

    private void sheet(Key key, Left row) {
        Optional<Integer> prepared = row.prepared().map(SoldDays::portions);
        Optional<Integer> left = row.left().map(SoldDays::portions);
        Optional<Integer> sold = row.sold().map(SoldDays::portions).or(() -> registered(key))
                .or(() -> prepared.flatMap(p -> left.map(l -> Math.max(0, p - l))));
        Optional<String> why = aside(key.date());
        if (sold.isEmpty()) {
            days.put(key, new Observation(key.date(), key.line(), key.dish(), prepared.orElse(0), 0, row.ranOut(),
                    Optional.of(why.orElse("nobody wrote what was sold"))));
            return;
        }
        Optional<Integer> there = prepared.or(() -> left.map(l -> sold.get() + l))
                .or(() -> row.ranOut().map(t -> sold.get()))
                .or(() -> row.planned() > 0 ? Optional.of(row.planned()) : Optional.empty());
        if (there.isEmpty() && why.isEmpty()) {
            why = Optional.of("nobody wrote what was put out or left");
        }
        days.put(key, new Observation(key.date(), key.line(), key.dish(), there.orElse(0), sold.get(), row.ranOut(), why));
    }

    private Optional<Integer> registered(Key key) {
        Long units = register.getOrDefault(key.date(), Map.of()).get(key.dish());
        return units == null ? Optional.empty() : Optional.of(portions(new Quantity(units)));
    }

    private static int portions(Quantity units) {
        return (int) Math.max(0, Math.round(units.thousandths() / 1000.0));
    }

    /** Where no sheet came back: what was to be put out less what went on the days before. */
    private void planned(WeekPlan plan, LocalDate from, LocalDate to) {
        Map<String, Long> lines = plan.menu().stream().filter(s -> s.recipe().isPresent()).flatMap(s -> s.days().stream()
                .map(d -> d + " " + s.recipe().get())).collect(Collectors.groupingBy(k -> k, Collectors.counting()));
        for (WeekPlan.Served slot : plan.menu()) {
            if (slot.recipe().isEmpty() || book.kitchen().lines().stream().noneMatch(l -> l.id().equals(slot.line()))) {
                continue;
            }
            LocalDate next = slot.days().get(0);
            for (WeekPlan.Production p : slot.productions()) {
                int there = p.portions();
                for (LocalDate day : slot.days()) {
                    if (!day.isBefore(next) && !day.isAfter(p.lastServed())) {
                        there = Math.max(0, there - onDay(new Key(day, slot.line(), slot.recipe().get()), there, from, to,
                                lines.get(day + " " + slot.recipe().get()) > 1));
                    }
                }
                next = p.lastServed().plusDays(1);
            }
        }
    }

    private int onDay(Key key, int there, LocalDate from, LocalDate to, boolean twice) {
        if (days.containsKey(key)) {
            return days.get(key).sold();
        }
        Optional<Integer> sold = registered(key);
        if (sold.isEmpty() || key.date().isBefore(from) || key.date().isAfter(to)) {
            return 0;
        }
        days.put(key, new Observation(key.date(), key.line(), key.dish(), there, sold.get(), Optional.empty(),
                aside(key.date()).or(() -> twice ? Optional.of("on two lines at once: the register cannot tell them apart") : Optional.empty())));
        return sold.get();
    }

    private Optional<String> aside(LocalDate date) {
        return aside.computeIfAbsent(date, d -> {
            String closed = book.seasons().closures().get(d);
            if (closed != null) {
                return Optional.of("closed: " + closed);
            }
            double expected = book.kitchen().lines().stream().map(Kitchen.ServiceLine::id)
                    .mapToDouble(l -> book.seasons().expected(l, d.getDayOfWeek(), IsoWeek.of(d)).toDouble()).sum();
            return book.seasons().events().stream().filter(e -> e.date().equals(d) && e.guarantee() >= LARGE_EVENT * expected)
                    .map(e -> "event: " + e.name()).findFirst();
        });
    }

    private void hours(List<Sale> sales) {
        Map<LocalDate, Set<String>> out = new HashMap<>();
        days.values().stream().filter(o -> o.soldOut() || o.aside().isPresent())
                .forEach(o -> out.computeIfAbsent(o.date(), d -> new HashSet<>()).add(o.dish()));
        for (Sale s : sales) {
            boolean whole = s.dish().isPresent() && !out.getOrDefault(s.date(), Set.of()).contains(s.dish().get());
            if (whole && s.hour().isPresent() && s.units().signum() > 0) {
                byHour.merge(s.hour().getAsInt(), s.units().thousandths() / 1000, Long::sum);
            }
        }
    }
}
