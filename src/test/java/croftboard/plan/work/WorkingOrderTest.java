package croftboard.plan.work;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WorkingOrderTest {
    @ParameterizedTest
    @MethodSource("croftboard.plan.work.TracingTest#weeks")
    void everyMaking_standsOnce_andAfterItsPartsOfTheDay(TracingTest.Case week) {
        Tracing tracing = new Tracing(week.book(), week.plan());
        WorkingOrder order = new WorkingOrder(tracing, Set.of());
        List<Making> all = new ArrayList<>();
        for (LocalDate day : days(tracing)) {
            Map<Making, Integer> place = new IdentityHashMap<>();
            for (WorkingOrder.Task t : order.of(day)) {
                place.put(t.making(), place.size());
                all.add(t.making());
            }
            tracing.parts().stream().filter(u -> u.user().day().equals(day)).forEach(u -> u.batch()
                    .filter(b -> b.day().equals(day))
                    .ifPresent(b -> assertThat(place.get(b)).isLessThan(place.get(u.user()))));
        }
        assertThat(all).hasSameSizeAs(tracing.makings());
    }

    /** Among those that wait for nothing, nobody overtakes a making after which the clock runs longer for an hour or more. */
    @ParameterizedTest
    @MethodSource("croftboard.plan.work.TracingTest#weeks")
    void withoutEquipment_theLongestWaitingIsFirst(TracingTest.Case week) {
        Tracing tracing = new Tracing(week.book(), week.plan());
        Set<String> shelves = new TreeSet<>();
        week.book().kitchen().equipment().forEach(e -> shelves.add(e.id()));
        for (LocalDate day : days(tracing)) {
            List<WorkingOrder.Task> tasks = new WorkingOrder(tracing, shelves).of(day);
            for (int i = 0; i < tasks.size(); i++) {
                for (int j = i + 1; j < tasks.size(); j++) {
                    WorkingOrder.Task later = tasks.get(j);
                    int at = i;
                    boolean ready = tracing.partsOf(later.making()).stream().noneMatch(u -> u.batch().filter(b ->
                            tasks.subList(at, tasks.size()).stream().anyMatch(t -> t.making() == b)).isPresent());
                    if (ready && later.waiting().compareTo(Ratio.of(WorkingOrder.LONG)) >= 0) {
                        assertThat(tasks.get(i).waiting()).isGreaterThanOrEqualTo(later.waiting());
                    }
                }
            }
        }
    }

    private static Set<LocalDate> days(Tracing tracing) {
        Set<LocalDate> days = new TreeSet<>();
        tracing.makings().forEach(m -> days.add(m.day()));
        return days;
    }
}
