package croftboard.plan.work;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An order in which one day's makings can be taken by the hands and equipment there are.
 *
 * <p>A making waits for the parts of it that are made on the same day. Of those that wait for nothing, first come the ones
 * after which the clock must run for an hour or more without hands (their own time in oven, kettle or chiller and that of
 * what waits for them today), the longest first; then what is served or used today; then what is for later days. A making
 * that wants the oven, kettle or chiller that the one before it has just filled gives way to the next of its kind that does
 * not.
 */
public final class WorkingOrder {
    /** From so many minutes without hands on, a making is started first. */
    public static final int LONG = 60;

    /** Three, two and one dots on paper. */
    public enum Urgency {
        /** The clock must run long, or something else made today waits for it. */
        FIRST(3),
        /** Served or used today. */
        TODAY(2),
        /** For a later day. */
        LATER(1);

        private final int dots;

        Urgency(int dots) {
            this.dots = dots;
        }

        public int dots() {
            return dots;
        }
    }

    /**
     * @param waiting minutes that the clock runs without hands after it was begun, to the end of all that waits for it today
     */
    public record Task(Making making, Urgency urgency, LocalDate neededOn, Ratio waiting) { }

    private final Tracing tracing;
    private final Set<String> held = new HashSet<>();
    private final Map<Making, Ratio> waiting = new IdentityHashMap<>();

    /** @param held ids of equipment that is taken for days, such as shelves: never a reason to give way */
    public WorkingOrder(Tracing tracing, Set<String> held) {
        this.tracing = tracing;
        this.held.addAll(held);
    }

    /** The makings of that day, in order. */
    public List<Task> of(LocalDate day) {
        List<Making> left = new ArrayList<>(tracing.makings().stream().filter(m -> m.day().equals(day)).toList());
        List<Task> order = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Task> ready = left.stream().filter(m -> tracing.partsOf(m).stream()
                    .noneMatch(u -> u.batch().filter(b -> isIn(left, b)).isPresent())).map(this::task)
                    .sorted(BY_RULE).toList();
            Task next = next(ready, order);
            order.add(next);
            left.removeIf(m -> m == next.making);
        }
        return order;
    }

    private static boolean isIn(List<Making> makings, Making one) {
        return makings.stream().anyMatch(m -> m == one);
    }

    private static final Comparator<Task> BY_RULE = Comparator.comparing((Task t) -> kind(t))
            .thenComparing(Task::waiting, Comparator.reverseOrder()).thenComparing(Task::neededOn)
            .thenComparing(t -> t.making.recipe().name()).thenComparing(t -> t.making.recipe().id());

    private static int kind(Task task) {
        boolean goesOn = task.waiting.compareTo(Ratio.of(LONG)) >= 0;
        return goesOn ? 0 : task.neededOn.isAfter(task.making.day()) ? 2 : 1;
    }

    /** The first by the rule, or the next of its kind that does not want what the one before it has filled. */
    private Task next(List<Task> ready, List<Task> before) {
        Task first = ready.get(0);
        if (before.isEmpty()) {
            return first;
        }
        Set<String> busy = equipment(before.get(before.size() - 1).making);
        return ready.stream().filter(t -> kind(t) == kind(first))
                .filter(t -> equipment(t.making).stream().noneMatch(busy::contains)).findFirst().orElse(first);
    }

    private Set<String> equipment(Making making) {
        Set<String> used = new HashSet<>();
        making.recipe().steps().forEach(s -> used.addAll(s.uses().keySet()));
        used.removeAll(held);
        return used;
    }

    /** How urgent a making is, when it is needed, and how long the clock runs after it. */
    public Task task(Making making) {
        Ratio clock = waiting(making);
        LocalDate needed = tracing.neededOn(making);
        boolean awaited = !usersToday(making).isEmpty();
        Urgency urgency = awaited || clock.compareTo(Ratio.of(LONG)) >= 0 ? Urgency.FIRST
                : needed.isAfter(making.day()) ? Urgency.LATER : Urgency.TODAY;
        return new Task(making, urgency, needed, clock);
    }

    private List<Making> usersToday(Making making) {
        return tracing.usersOf(making).stream().map(PartUse::user).filter(u -> u.day().equals(making.day())).toList();
    }

    private Ratio waiting(Making making) {
        Ratio known = waiting.get(making);
        if (known == null) {
            known = usersToday(making).stream().map(this::waiting).reduce(Ratio.ZERO, Ratio::max).plus(making.unattended());
            waiting.put(making, known);
        }
        return known;
    }
}
