package croftboard.plan.work;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.TinyBook;
import croftboard.measure.Ratio;
import croftboard.plan.Given;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TracingTest {
    record Case(String name, Book book, WeekPlan plan) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** Made once: plans are slow to make. */
    private static final class Once {
        static final List<Case> WEEKS = allWeeks().toList();
    }

    static Stream<Case> weeks() {
        return Once.WEEKS.stream();
    }

    private static Stream<Case> allWeeks() {
        return Stream.of(LongStream.range(0, 40).mapToObj(seed -> made("random " + seed, RandomBook.of(seed))),
                LongStream.range(0, 20).mapToObj(seed -> made("tiny " + seed, TinyBook.of(seed))),
                LongStream.range(0, 10).mapToObj(seed -> broken("broken " + seed, RandomBook.of(seed))))
                .flatMap(s -> s);
    }

    private static Case made(String name, Book book) {
        return new Case(name, book, MadePlan.of(book, RandomBook.WEEK));
    }

    private static Case broken(String name, Book book) {
        return new Case(name, book, MadePlan.broken(book, RandomBook.WEEK, Given.NOTHING));
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void itemUses_areThePlansNeeds_toTheMilligram(Case week) {
        Map<String, Long> traced = new TreeMap<>();
        new Tracing(week.book, week.plan).items().forEach(u -> traced.merge(u.item() + " " + u.day(), u.mg(), Long::sum));
        traced.values().removeIf(mg -> mg == 0);
        Map<String, Long> needs = new TreeMap<>();
        week.plan.needs().forEach(n -> needs.put(n.item() + " " + n.day(), n.mg()));
        assertThat(traced).isEqualTo(needs);
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void everyPart_comesFromABatchOrFromCountedFood_ofACompletePlan(Case week) {
        Tracing tracing = new Tracing(week.book, week.plan);
        if (week.plan.complete()) {
            assertThat(tracing.parts()).noneMatch(PartUse::uncovered);
        }
        for (Making m : tracing.makings()) {
            long used = tracing.usersOf(m).stream().mapToLong(PartUse::mg).sum();
            long yields = week.plan.batches().stream().filter(b -> m.service().isEmpty() && b.recipe().equals(m.recipe().id())
                    && b.made().equals(m.day()) && b.lastServed().equals(m.lastServed())).mapToLong(WeekPlan.Batch::mg).sum();
            if (m.service().isEmpty()) {
                assertThat(used).as(m.recipe().id() + " " + m.day()).isPositive().isLessThanOrEqualTo(yields);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void aPart_isReadyBeforeItIsUsed_andIsNotServedPastItsDate(Case week) {
        for (PartUse u : new Tracing(week.book, week.plan).parts()) {
            u.batch().ifPresent(b -> {
                assertThat(b.day().plusDays(b.recipe().leadDays())).isBeforeOrEqualTo(u.user().day());
                assertThat(b.useBy()).isAfterOrEqualTo(u.user().lastServed());
            });
        }
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void sharesOfEveryMaking_sumToOne(Case week) {
        Tracing tracing = new Tracing(week.book, week.plan);
        for (Making m : tracing.makings()) {
            Ratio sum = tracing.slotsOf(m).values().stream().reduce(Ratio.ZERO, Ratio::plus);
            assertThat(sum).as(m.recipe().id()).isEqualTo(Ratio.ONE);
            LocalDate needed = tracing.neededOn(m);
            assertThat(needed).isAfterOrEqualTo(m.day()).isBeforeOrEqualTo(m.lastServed());
        }
    }

    @Test
    void someOfTheseWeeks_useBatchesInSeveralDishes_andCountedFood() {
        long shared = weeks().map(w -> new Tracing(w.book, w.plan)).mapToLong(t -> t.makings().stream()
                .filter(m -> t.slotsOf(m).size() > 1).count()).sum();
        long counted = weeks().flatMap(w -> new Tracing(w.book, w.plan).parts().stream())
                .filter(u -> u.counted().isPresent()).count();
        assertThat(shared).isGreaterThan(50);
        assertThat(counted).isGreaterThan(3);
    }
}
