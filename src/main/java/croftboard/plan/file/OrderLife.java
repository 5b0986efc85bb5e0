package croftboard.plan.file;

import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** What has become of a week's orders: drafted until they are sent, then confirmed. @param steps oldest first */
public record OrderLife(List<Step> steps) {
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

    /** The last step; empty: drafted. */
    public Optional<Step> of(String vendor, LocalDate delivery) {
        return steps.stream().filter(s -> s.vendor().equals(vendor) && s.delivery().equals(delivery)).reduce((a, b) -> b);
    }

    /** Orders that are past their cut-off, not yet delivered and were never sent: nothing comes of them. */
    public List<WeekPlan.Order> notSent(WeekPlan posted, LocalDateTime now) {
        return posted.orders().stream().filter(o -> o.cutOff().isBefore(now) && !o.delivery().isBefore(now.toLocalDate()))
                .filter(o -> of(o.vendor(), o.delivery()).isEmpty()).toList();
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
