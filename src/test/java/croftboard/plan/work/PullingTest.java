package croftboard.plan.work;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PullingTest {
    @ParameterizedTest
    @MethodSource("croftboard.plan.work.TracingTest#weeks")
    void whatIsFetched_isThePlansNeed_ofEveryItemAndDay(TracingTest.Case week) {
        Map<String, Long> fetched = new TreeMap<>();
        pulls(week).filter(p -> week.book().ingredients().containsKey(p.item())).forEach(p ->
                fetched.merge(p.item() + " " + needed(week.book(), p), p.mg(), Long::sum));
        Map<String, Long> needs = new TreeMap<>();
        week.plan().needs().forEach(n -> needs.put(n.item() + " " + n.day(), n.mg()));
        assertThat(fetched).isEqualTo(needs);
    }

    /** The plan needs what is frozen here on the day it is used, frozen goods on the day they are taken out. */
    private static LocalDate needed(Book book, Pull pull) {
        boolean ice = pull.source() instanceof Pull.Counted c && c.row().frozen().isPresent() && c.row().thawed().isEmpty()
                && book.ingredient(pull.item()).thawDays() == 0;
        return ice ? pull.readyOn() : pull.day();
    }

    private static java.util.stream.Stream<Pull> pulls(TracingTest.Case week) {
        return new Pulling(week.book(), week.plan(), new Tracing(week.book(), week.plan())).pulls().stream();
    }

    @ParameterizedTest
    @MethodSource("croftboard.plan.work.TracingTest#weeks")
    void packsOpened_areNoMoreThanCame_andNothingIsTakenAfterItsDate(TracingTest.Case week) {
        Map<String, Integer> opened = new TreeMap<>();
        pulls(week).forEach(p -> {
            p.useBy().ifPresent(d -> assertThat(d).as(p.item()).isAfterOrEqualTo(p.day()));
            if (p.source() instanceof Pull.Delivered d) {
                assertThat(d.on()).isBeforeOrEqualTo(p.day());
                assertThat(d.openedOn().isPresent() || !d.opens().isEmpty()).isTrue();
                d.opens().forEach(o -> opened.merge(p.item() + " " + d.on() + " " + o.pack(), o.count(), Integer::sum));
            }
        });
        Map<String, Integer> came = new TreeMap<>();
        for (WeekPlan.Order o : week.plan().orders()) {
            o.lines().forEach(l -> came.merge(l.item() + " " + o.delivery() + " " + l.pack(), l.packs(), Integer::sum));
        }
        opened.forEach((pack, count) -> assertThat(count).as(pack).isLessThanOrEqualTo(came.get(pack)));
    }
}
