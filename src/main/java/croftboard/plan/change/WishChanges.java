package croftboard.plan.change;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Dishes that are wanted or not wanted in a slot. */
final class WishChanges {
    private final List<String> faults;

    WishChanges(List<String> faults) {
        this.faults = faults;
    }

    /** @param frozen slots whose dish is made or served */
    WeekProblem apply(WeekProblem p, List<Change> changes, Set<String> frozen) {
        List<WeekProblem.Slot> slots = new ArrayList<>(p.slots());
        for (Change c : changes) {
            if (c instanceof Change.Wanted w) {
                choose(c, slots, w.slot(), w.dish(), true, frozen);
            } else if (c instanceof Change.Unwanted w) {
                choose(c, slots, w.slot(), w.dish(), false, frozen);
            }
        }
        return Problems.withSlots(p, slots);
    }

    private void choose(Change change, List<WeekProblem.Slot> slots, String id, String dish, boolean wanted,
            Set<String> frozen) {
        int at = -1;
        for (int s = 0; s < slots.size(); s++) {
            at = slots.get(s).id().equals(id) ? s : at;
        }
        if (at < 0 || frozen.contains(id)) {
            faults.add("\"" + change.sentence() + "\": " + (at < 0 ? "this week has no slot " + id
                    + " -> one of " + String.join(", ", slots.stream().map(WeekProblem.Slot::id)
                            .filter(s -> !s.equals(ChangedWeek.HOUSE)).toList())
                    : "what stands there is made -> a slot still to come"));
            return;
        }
        WeekProblem.Slot slot = slots.get(at);
        List<WeekProblem.Candidate> may = slot.candidates().stream()
                .filter(c -> c.recipe().equals(dish) == wanted).toList();
        if (wanted && may.isEmpty()) {
            faults.add("\"" + change.sentence() + "\": the dish cannot stand there: out of season, served too near, no longer "
                    + "in time, or something in it that nobody brings -> another dish or another slot");
            return;
        }
        slots.set(at, new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(), slot.emptyCents(),
                !wanted && slot.mayBeEmpty(), may));
    }
}
