package croftboard.paper.served;

import croftboard.paper.PaperContext;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What the case has, day by day, in the order of the kitchen's lines; events are not on offer there. */
final class OnOffer {
    private final PaperContext context;

    OnOffer(PaperContext context) {
        this.context = context;
    }

    /** A slot of the case with a dish in it. */
    record Slot(WeekPlan.Served served, String dish) { }

    List<Slot> slots() {
        List<String> lines = context.book().kitchen().lines().stream().map(l -> l.id()).toList();
        List<Slot> slots = new ArrayList<>();
        for (WeekPlan.Served s : context.plan().menu()) {
            if (!ofEvent(s) && s.recipe().isPresent()) {
                slots.add(new Slot(s, s.recipe().get()));
            }
        }
        slots.sort(Comparator.comparingInt((Slot s) -> place(lines, s.served().line()))
                .thenComparing(s -> s.served().days().get(0)));
        return slots;
    }

    private static int place(List<String> lines, String line) {
        int at = lines.indexOf(line);
        return at < 0 ? lines.size() : at;
    }

    boolean ofEvent(WeekPlan.Served served) {
        return context.book().seasons().events().stream().anyMatch(e -> served.slot().startsWith(e.id() + "/"));
    }

    /** Days that the filters want. */
    SortedMap<LocalDate, List<Slot>> days() {
        SortedMap<LocalDate, List<Slot>> days = new TreeMap<>();
        for (Slot slot : slots()) {
            slot.served().days().stream().filter(context.filters()::wants)
                    .forEach(d -> days.computeIfAbsent(d, k -> new ArrayList<>()).add(slot));
        }
        return days;
    }

    /** The dishes of the days that the filters want, each once. */
    List<String> dishes() {
        return days().values().stream().flatMap(List::stream).map(Slot::dish).distinct().toList();
    }

    /** The making that a day's portions are from. */
    static Optional<WeekPlan.Production> production(WeekPlan.Served served, LocalDate day) {
        return served.productions().stream().filter(p -> !p.made().isAfter(day) && !p.lastServed().isBefore(day))
                .max(Comparator.comparing(WeekPlan.Production::made));
    }
}
