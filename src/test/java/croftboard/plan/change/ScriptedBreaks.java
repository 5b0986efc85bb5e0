package croftboard.plan.change;

import croftboard.plan.WeekPlan;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Ten breaks of a plan, written from its own orders and dishes: one of every kind that a week knows. */
public final class ScriptedBreaks {
    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat");
    private final WeekPlan plan;
    private final LocalDateTime now;

    private ScriptedBreaks(WeekPlan plan, LocalDateTime now) {
        this.plan = plan;
        this.now = now;
    }

    private record Line(String vendor, String item, int packs, String day, long cost) {
        String offer() {
            return vendor + "/" + item;
        }
    }

    /** Sentences of each. @param now on the Tuesday of the plan's week */
    public static List<List<String>> of(WeekPlan plan, LocalDateTime now) {
        ScriptedBreaks b = new ScriptedBreaks(plan, now);
        List<Line> lines = b.lines();
        return List.of(
                List.of(lines.get(0).offer() + " got " + lines.get(0).packs() / 2 + " " + lines.get(0).day()),
                List.of(lines.get(1).offer() + " got 1 " + lines.get(1).day(), lines.get(2).offer() + " got 1 " + lines.get(2).day()),
                List.of(lines.get(3).vendor() + " out"),
                List.of("item " + lines.get(0).item() + " out"),
                List.of(late(lines)),
                List.of("closed thu"),
                List.of("cook cook-1 out wed"),
                List.of("equipment flat-top out fri"),
                List.of("batch " + b.dishMade() + " mon lost"),
                List.of(lines.get(0).offer() + " price $99.00"));
    }

    private List<Line> lines() {
        List<Line> all = new ArrayList<>();
        plan.orders().stream().filter(o -> o.delivery().isAfter(now.toLocalDate())).forEach(o -> o.lines().stream()
                .filter(l -> l.packs() > 1).forEach(l -> all.add(new Line(o.vendor(), l.item(), l.packs(),
                        ChangeSentence.day(o.delivery().getDayOfWeek()), l.cost()))));
        all.sort(Comparator.comparingLong((Line l) -> -l.cost()).thenComparing(Line::offer));
        return all;
    }

    private static String late(List<Line> lines) {
        Line line = lines.stream().filter(l -> !l.day().equals("sat")).findFirst().orElseThrow();
        return line.vendor() + " late " + line.day() + " until " + DAYS.get(DAYS.indexOf(line.day()) + 1);
    }

    private String dishMade() {
        return plan.menu().stream().filter(r -> r.days().size() > 1 && r.slot().startsWith("mon")).findFirst()
                .flatMap(WeekPlan.Served::recipe).orElseThrow();
    }
}
