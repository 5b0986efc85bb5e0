package croftboard.paper.cook;

import croftboard.book.Kitchen;
import croftboard.book.Seasons;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.paper.Called;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.When;
import croftboard.plan.work.Making;
import croftboard.plan.work.PartUse;
import croftboard.plan.work.Tracing;
import croftboard.plan.work.WorkingOrder;
import croftboard.safety.FoodCode;
import croftboard.safety.file.FoodCodes;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** One week seen from the bench, and the words that its sheets share. */
final class CookWeek {
    static final String BOX = "\u2610";
    final PaperContext context;
    final Called called;
    final Tracing tracing;
    final WorkingOrder order;
    final FoodCode code;
    private final Map<LocalDate, List<WorkingOrder.Task>> orders = new HashMap<>();
    private final Map<String, List<PrepLines.Line>> prepLines = new HashMap<>();

    CookWeek(PaperContext context) {
        this.context = context;
        called = context.called();
        tracing = new Tracing(context.book(), context.plan());
        Set<String> held = context.book().kitchen().equipment().stream().filter(Kitchen.Equipment::held)
                .map(Kitchen.Equipment::id).collect(Collectors.toSet());
        order = new WorkingOrder(tracing, held);
        code = FoodCodes.of(context.book().kitchen().healthCodeEdition());
    }

    Kitchen kitchen() {
        return context.book().kitchen();
    }

    /** That day's makings in working order. */
    List<WorkingOrder.Task> orderOn(LocalDate day) {
        return orders.computeIfAbsent(day, order::of);
    }

    /** What that station cuts and weighs that day. */
    List<PrepLines.Line> prepLines(LocalDate day, String station) {
        return prepLines.computeIfAbsent(day + " " + station, k -> new PrepLines(this).of(day, station));
    }

    /** Days on which something is made, those that are wanted. */
    Set<LocalDate> days() {
        return tracing.makings().stream().map(Making::day).filter(context.filters()::wants)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    Optional<Seasons.Event> event(Making making) {
        return making.service().flatMap(s -> event(s.slot()));
    }

    Optional<Seasons.Event> event(String slot) {
        String id = slot.substring(0, Math.max(0, slot.indexOf('/')));
        return context.book().seasons().events().stream().filter(e -> e.id().equals(id)).findFirst();
    }

    /** {@code Hot main 1}, {@code Members' harvest meal, main}. */
    String place(String slot, String line) {
        return event(slot).map(e -> e.name() + ", " + line).orElseGet(() -> called.line(line));
    }

    /** {@code 1-1/4 batches}. */
    static String batches(Ratio batches) {
        return CookAmounts.times(batches) + (batches.compareTo(Ratio.ONE) > 0 ? " batches" : " batch");
    }

    /** What a making is for: the place in the offer, or the dishes and components that it goes into, with their days. */
    String purpose(Making making) {
        if (making.service().isPresent()) {
            Making.Service s = making.service().get();
            return place(s.slot(), s.line());
        }
        return users(tracing.usersOf(making).stream().map(PartUse::user).toList(), making.day());
    }

    /** {@code Lentil bake, Penne bake (Fri 20 Aug)}: each once, the day where it is not the one meant. */
    String users(Collection<Making> users, LocalDate day) {
        Set<String> words = new LinkedHashSet<>();
        users.forEach(u -> words.add(u.recipe().name() + (u.day().equals(day) ? "" : " (" + When.day(u.day()) + ")")));
        return String.join(", ", words);
    }

    /** {@code today}, {@code today, 6 pm}, {@code Fri 20 Aug}. */
    String neededBy(Making making) {
        LocalDate needed = tracing.neededOn(making);
        String clock = event(making).flatMap(Seasons.Event::service).map(t -> ", " + When.clock(t)).orElse("");
        return (needed.equals(making.day()) ? "today" : When.day(needed)) + clock;
    }

    static String dots(WorkingOrder.Urgency urgency) {
        return "\u25cf".repeat(urgency.dots());
    }

    static String minutes(long minutes) {
        return CookAmounts.minutes(Ratio.of(minutes));
    }

    static String grams(Ratio grams) {
        return grams.toDecimal(3).stripTrailingZeros().toPlainString();
    }

    static String grams(long mg) {
        return BigDecimal.valueOf(mg, 3).stripTrailingZeros().toPlainString();
    }

    static String mass(long mg) {
        return CookAmounts.mass(Ratio.of(mg, 1000));
    }

    /** The orders that bring what these makings take themselves. */
    Set<OrderKey> behind(Collection<Making> makings) {
        Set<String> taken = new HashSet<>();
        tracing.items().stream().filter(u -> isIn(makings, u.user())).forEach(u -> taken.add(u.item() + " " + u.day()));
        return context.behind(f -> taken.contains(f.item() + " " + f.day()));
    }

    static boolean isIn(Collection<Making> makings, Making one) {
        return makings.stream().anyMatch(m -> m == one);
    }

    List<Making> on(LocalDate day) {
        List<Making> all = new ArrayList<>(tracing.makings());
        all.removeIf(m -> !m.day().equals(day));
        return all;
    }
}
