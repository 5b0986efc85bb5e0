package croftboard.plan.file;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What posted plans of other weeks mean for a week: deliveries may come up to a week before a plan's Monday, so the
 * plans of the week before and of the week after share deliveries with it and leave surplus; dishes count over two weeks
 * before. Sorted, so that the same plans give the same facts.
 */
final class Neighbours {
    private static final int DAYS_BEFORE = 7;
    private final IsoWeek week;
    private final Book book;
    private final List<Given.Ordered> orders = new ArrayList<>();
    private final List<Given.Lot> lots = new ArrayList<>();
    private final List<Given.Served> served = new ArrayList<>();

    private Neighbours(IsoWeek week, Book book) {
        this.week = week;
        this.book = book;
    }

    static Given given(IsoWeek week, Book book, Function<IsoWeek, Optional<WeekPlan>> posted) {
        Neighbours facts = new Neighbours(week, book);
        for (int away : new int[] {-2, -1, 1}) {
            posted.apply(week.plusWeeks(away)).ifPresent(plan -> {
                facts.dishes(plan);
                if (away != -2) {
                    facts.orders(plan);
                    facts.surplus(plan);
                }
            });
        }
        return facts.sorted();
    }

    private Given sorted() {
        orders.sort(Comparator.comparing(Given.Ordered::delivery).thenComparing(Given.Ordered::vendor)
                .thenComparing(Given.Ordered::item).thenComparing(Given.Ordered::pack)
                .thenComparing(Given.Ordered::packs).thenComparing(Given.Ordered::cents));
        lots.sort(Comparator.comparing(Given.Lot::item).thenComparing(Given.Lot::from)
                .thenComparing(Given.Lot::mg));
        served.sort(Comparator.comparing(Given.Served::start).thenComparing(Given.Served::recipe));
        return new Given(List.copyOf(orders), List.copyOf(lots), List.copyOf(served));
    }

    /** Dishes of lines; standing dishes and events take no part in the gap. */
    private void dishes(WeekPlan plan) {
        for (WeekPlan.Served row : plan.menu()) {
            LocalDate start = row.days().get(0);
            String day = start.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
            boolean line = row.slot().equals(day + "/" + row.line()) && book.kitchen().lines().stream()
                    .anyMatch(l -> l.id().equals(row.line()) && l.standing().isEmpty());
            if (line) {
                row.recipe().ifPresent(r -> served.add(new Given.Served(r, start)));
            }
        }
    }

    private boolean shared(LocalDate delivery) {
        LocalDate first = week.monday().minusDays(DAYS_BEFORE);
        return !delivery.isBefore(first) && delivery.isBefore(week.monday().plusWeeks(1));
    }

    private void orders(WeekPlan plan) {
        for (WeekPlan.Order order : plan.orders()) {
            if (shared(order.delivery())) {
                order.lines().forEach(l -> orders.add(new Given.Ordered(order.vendor(), order.delivery(), l.item(),
                        l.pack(), l.packs(), l.cost())));
            }
        }
    }

    /** What was bought of an item on a day and is used on no day of that plan. Staples go to the shelf. */
    private void surplus(WeekPlan plan) {
        Map<String, Map<LocalDate, Long>> left = new TreeMap<>();
        for (WeekPlan.Order order : plan.orders()) {
            order.lines().forEach(l -> left.computeIfAbsent(l.item(), i -> new TreeMap<>())
                    .merge(order.delivery(), l.packs() * l.packMg(), Long::sum));
        }
        plan.flows().forEach(f -> f.delivery().ifPresent(d -> left.computeIfAbsent(f.item(), i -> new TreeMap<>())
                .merge(d, -f.mg(), Long::sum)));
        left.forEach((item, byDay) -> byDay.forEach((day, mg) -> lot(item, day, mg)));
    }

    private void lot(String item, LocalDate delivery, long mg) {
        Ingredient known = book.ingredients().get(item);
        if (mg <= 0 || known == null || known.isStaple() || counted(item, delivery)) {
            return;
        }
        LocalDate until = delivery.plusDays(known.keepsDays());
        boolean useful = !until.isBefore(week.monday().minusDays(1)) && delivery.isBefore(week.monday().plusWeeks(1));
        if (useful) {
            lots.add(new Given.Lot(item, delivery, until, mg));
        }
    }

    /** What the kitchen has counted since that delivery stands in its own count and is not taken twice. */
    private boolean counted(String item, LocalDate delivery) {
        return book.onHand().stream().anyMatch(r -> r.item().equals(item) && r.received().equals(Optional.of(delivery)));
    }
}
