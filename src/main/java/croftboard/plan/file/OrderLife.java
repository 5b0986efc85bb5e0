package croftboard.plan.file;

import croftboard.plan.WeekPlan;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What has become of a week's orders: drafted until they are sent, then confirmed. @param steps oldest first */
public record OrderLife(List<Step> steps) {
    private static final Pattern LATE = Pattern.compile("(\\S+) late ([a-z]{3}) until ([a-z]{3})");

    public enum State { SENT, CONFIRMED }

    /**
     * One step.
     *
     * @param version of the plan whose order it was
     * @param at in the kitchen's zone
     * @param total of the order then, cents
     * @param reply file in the week's folder that holds the vendor's own words
     */
    public record Step(String vendor, LocalDate delivery, State state, int version, LocalDateTime at, long total,
            Optional<String> reply) { }

    /**
     * Orders that may not come as a plan says. None of them is delivered yet.
     *
     * @param notSent past the cut-off and never sent: nothing comes. A draft's, or a posted plan's in a week in which orders
     *     are recorded
     * @param notRecorded past the cut-off in a posted plan, in a week of which nobody has recorded any order
     * @param changed sent, and then changed while that could still be told to the vendor: what was sent comes
     */
    public record Doubts(List<WeekPlan.Order> notSent, List<WeekPlan.Order> notRecorded, List<WeekPlan.Order> changed) {
        public static final Doubts NONE = new Doubts(List.of(), List.of(), List.of());
    }

    /** The last step; empty: drafted. */
    public Optional<Step> of(String vendor, LocalDate delivery) {
        return steps.stream().filter(s -> s.vendor().equals(vendor) && s.delivery().equals(delivery)).reduce((a, b) -> b);
    }

    /**
     * An order past its cut-off that nobody has sent brings nothing. Where no order of the week was ever recorded, posting is
     * all that is known of a plan's orders: then they are in doubt, not lost.
     *
     * @param posted people work from this version
     * @param now in the kitchen's zone
     */
    public Doubts doubts(WeekPlan plan, boolean posted, LocalDateTime now) {
        Predicate<WeekPlan.Order> working = o -> posted || plan.inputs().revision()
                .map(r -> o.cutOff().isBefore(r.now())).orElse(false);
        List<WeekPlan.Order> past = plan.orders().stream().filter(o -> o.cutOff().isBefore(now) && step(plan, o).isEmpty())
                .filter(o -> !working.test(o) || !o.delivery().isBefore(now.toLocalDate())).toList();
        return new Doubts(past.stream().filter(o -> !working.test(o) || !steps.isEmpty()).toList(),
                past.stream().filter(o -> working.test(o) && steps.isEmpty()).toList(),
                plan.orders().stream().filter(o -> posted && !o.delivery().isBefore(now.toLocalDate())
                        && openWhenChanged(plan, o) && step(plan, o).map(s -> s.total() != o.total()).orElse(false)).toList());
    }

    private static boolean openWhenChanged(WeekPlan plan, WeekPlan.Order order) {
        return plan.inputs().revision().map(r -> !order.cutOff().isBefore(r.now())).orElse(true);
    }

    /** What comes late was sent for the day for which it was ordered. */
    private Optional<Step> step(WeekPlan plan, WeekPlan.Order order) {
        Stream<LocalDate> first = plan.inputs().revision().stream().flatMap(r -> r.changes().stream()).map(LATE::matcher)
                .filter(Matcher::matches).filter(m -> m.group(1).equals(order.vendor())
                        && m.group(3).equals(word(order.delivery().getDayOfWeek())))
                .map(m -> back(order.delivery(), m.group(2)));
        return Stream.concat(Stream.of(order.delivery()), first).flatMap(d -> of(order.vendor(), d).stream()).findFirst();
    }

    private static LocalDate back(LocalDate from, String day) {
        LocalDate at = from;
        while (!word(at.getDayOfWeek()).equals(day) && at.isAfter(from.minusDays(7))) {
            at = at.minusDays(1);
        }
        return at;
    }

    private static String word(DayOfWeek day) {
        return day.name().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    static Out form(Step s) {
        return new Out().text("vendor", s.vendor()).word("delivery", s.delivery()).name("state", s.state())
                .whole("version", s.version()).word("at", s.at()).whole("totalCents", s.total()).maybe("reply", s.reply());
    }

    static Step row(In in) throws Unreadable {
        return new Step(in.text("vendor"), in.date("delivery"), in.name("state", State.class), in.small("version"),
                in.moment("at"), in.number("totalCents"), in.maybeText("reply"));
    }
}
