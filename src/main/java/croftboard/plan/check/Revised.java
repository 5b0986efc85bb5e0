package croftboard.plan.check;

import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A plan that people worked from when it was changed: what was done by then must be in the new one as it was.
 *
 * @param base the version that was changed
 * @param now when, in the kitchen's zone. Until noon what stands on that day's list was still open
 * @param changes the facts that differ
 */
public record Revised(WeekPlan base, LocalDateTime now, List<Change> changes) {

    /** Whether that day was over: nothing made or delivered then can be changed any more. */
    boolean over(LocalDate day) {
        LocalDate today = now.toLocalDate();
        return day.isBefore(today) || day.equals(today) && now.getHour() >= 12;
    }

    LocalDate inWeek(DayOfWeek day) {
        return base.week().monday().plusDays(day.getValue() - 1L);
    }

    Set<LocalDate> notSold() {
        Set<LocalDate> days = new HashSet<>();
        changes.forEach(c -> {
            if (c instanceof Change.DayClosed closed) {
                days.add(inWeek(closed.day()));
            }
        });
        return days;
    }

    Optional<WeekPlan.Served> row(String slot) {
        return base.menu().stream().filter(r -> r.slot().equals(slot)).findFirst();
    }

    /** What stood there and was made or served in part; empty: the slot was open. */
    Optional<WeekPlan.Served> done(String slot) {
        return row(slot).filter(r -> r.days().stream().anyMatch(this::over)
                || r.productions().stream().anyMatch(p -> over(p.made())));
    }

    /** The base's production of that slot and day, if it was made. */
    Optional<WeekPlan.Production> made(String slot, LocalDate day) {
        return row(slot).stream().flatMap(r -> r.productions().stream())
                .filter(p -> p.made().equals(day) && over(p.made())).findFirst();
    }

    /** Whether a batch of the recipe made that day is lost. */
    boolean lost(String recipe, LocalDate made) {
        return changes.stream().anyMatch(c -> c instanceof Change.BatchLost lost && lost.recipe().equals(recipe)
                && lost.day() == made.getDayOfWeek() && over(made));
    }

    /** The first day of a row on which its lost food would still have been sold; empty: nothing of it is lost. */
    Optional<LocalDate> lostFrom(WeekPlan.Served row) {
        return row.productions().stream().filter(p -> row.recipe().isPresent() && lost(row.recipe().get(), p.made()))
                .findFirst().map(p -> row.days().stream().filter(d -> !over(d)).findFirst()
                        .orElse(p.lastServed().plusDays(1)));
    }

    /** An order that could no longer be changed, or had come. */
    boolean fixed(WeekPlan.Order order) {
        return fixed(order.cutOff(), order.delivery());
    }

    boolean fixed(LocalDateTime cutOff, LocalDate delivery) {
        return cutOff.isBefore(now) || over(delivery);
    }
}
