package croftboard.paper.cook;

import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.plan.work.Making;
import croftboard.plan.work.PartUse;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * When each step must begin at the latest, back from the hour of service: one pair of hands at each making, steps one after
 * another, parts that are made on the day of service done before what they go into, hot food ready half an hour before
 * (common practice, no source). Rounded down to five minutes.
 */
final class Timing {
    static final int READY_BEFORE = 30;
    private static final int ROUND = 5;

    /** @param minutes that it takes, hands and clock together */
    record Step(LocalDateTime begin, Making making, int number, String text, String station, Ratio minutes) { }

    private final CookWeek week;
    private final Map<Making, LocalDateTime> done = new IdentityHashMap<>();

    private Timing(CookWeek week) {
        this.week = week;
    }

    /** Of makings of one day, by time. @param dishes what is served then */
    static List<Step> before(CookWeek week, LocalDateTime service, List<Making> dishes) {
        Timing timing = new Timing(week);
        dishes.forEach(d -> timing.finish(d, service.minusMinutes(READY_BEFORE)));
        List<Step> steps = new ArrayList<>();
        timing.done.forEach((m, end) -> steps.addAll(timing.steps(m, end)));
        steps.sort(Comparator.comparing(Step::begin).thenComparing(s -> s.making.recipe().name())
                .thenComparing(s -> s.making.recipe().id()).thenComparingInt(Step::number));
        return steps;
    }

    private void finish(Making making, LocalDateTime end) {
        if (done.containsKey(making) && !end.isBefore(done.get(making))) {
            return;
        }
        done.put(making, end);
        LocalDateTime begin = steps(making, end).stream().map(Step::begin).min(Comparator.naturalOrder()).orElse(end);
        week.tracing.partsOf(making).stream().map(PartUse::batch).flatMap(b -> b.stream())
                .filter(b -> b.day().equals(making.day())).forEach(b -> finish(b, begin));
    }

    private List<Step> steps(Making making, LocalDateTime end) {
        List<Step> steps = new ArrayList<>();
        LocalDateTime next = end;
        List<Recipe.Step> written = making.recipe().steps();
        for (int i = written.size() - 1; i >= 0; i--) {
            Recipe.Step s = written.get(i);
            Ratio minutes = s.activeMinutes().times(making.batches()).plus(s.perPortionMinutes()
                    .times(making.portions().orElse(0))).plus(s.unattendedMinutes());
            LocalDateTime begin = next.minusMinutes(minutes.ceil());
            begin = begin.minusMinutes(begin.getMinute() % ROUND);
            steps.add(0, new Step(begin, making, i + 1, s.text(), s.station().orElse(""), minutes));
            next = begin;
        }
        return steps;
    }
}
