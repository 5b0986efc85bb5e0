package croftboard.plan.work;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.measure.Cents;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** What the plan makes the kitchen do, day by day and station by station. */
public final class PrepWork {
    /** Where recipes stand whose steps occupy nobody. */
    private static final Kitchen.Station NOBODY = new Kitchen.Station(Making.NOBODY, "No station", 0, Cents.ZERO);
    private final Book book;
    private final WeekPlan plan;

    public PrepWork(Book book, WeekPlan plan) {
        this.book = book;
        this.plan = plan;
    }

    /**
     * @param hands regular minutes of all cooks there
     * @param used minutes, overtime included
     * @param received deliveries taken in, by vendor id
     */
    public record Bench(Kitchen.Station station, long hands, long used, List<Making> makings, List<String> received) { }

    /** Something that is thawed or cut before the day of its making. */
    public record Ahead(Making.Item item, Making making) { }

    public record Day(LocalDate date, List<Bench> benches, List<Ahead> ahead) { }

    /** Every day on which something is made, taken in or got ready. */
    public List<Day> days() {
        TreeMap<LocalDate, List<Making>> made = new TreeMap<>();
        Makings.of(book, plan).forEach(m -> made.computeIfAbsent(m.day(), k -> new ArrayList<>()).add(m));
        TreeMap<LocalDate, List<Ahead>> ahead = new TreeMap<>();
        made.values().forEach(ms -> ms.forEach(m -> m.items().stream().filter(i -> i.ahead() > 0).forEach(i ->
                ahead.computeIfAbsent(m.day().minusDays(i.ahead()), k -> new ArrayList<>()).add(new Ahead(i, m)))));
        TreeMap<LocalDate, List<String>> received = new TreeMap<>();
        plan.orders().forEach(o -> received.computeIfAbsent(o.delivery(), k -> new ArrayList<>()).add(o.vendor()));
        TreeMap<LocalDate, Boolean> all = new TreeMap<>();
        List.of(made.keySet(), ahead.keySet(), received.keySet()).forEach(s -> s.forEach(d -> all.put(d, true)));
        return all.keySet().stream().map(d -> new Day(d, benches(d, made.getOrDefault(d, List.of()),
                received.getOrDefault(d, List.of())), ahead.getOrDefault(d, List.of()))).toList();
    }

    private List<Bench> benches(LocalDate day, List<Making> makings, List<String> received) {
        List<Bench> benches = new ArrayList<>();
        List<Kitchen.Station> stations = new ArrayList<>(book.kitchen().stations());
        stations.add(NOBODY);
        for (Kitchen.Station station : stations) {
            List<Making> here = makings.stream().filter(m -> m.stations().contains(station.id())).toList();
            Optional<Kitchen.Receiving> dock = book.kitchen().receiving().filter(r -> r.station().equals(station.id()));
            List<String> taken = dock.isPresent() ? received : List.of();
            if (!here.isEmpty() || !taken.isEmpty()) {
                long used = here.stream().mapToLong(m -> m.minutesAt(station.id())).sum()
                        + (long) taken.size() * dock.map(Kitchen.Receiving::minutesPerDelivery).orElse(0);
                benches.add(new Bench(station, book.kitchen().handsMinutes(station.id(), day.getDayOfWeek()), used, here,
                        taken));
            }
        }
        return benches;
    }
}
