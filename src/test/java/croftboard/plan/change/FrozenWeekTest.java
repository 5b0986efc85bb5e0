package croftboard.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.measure.IsoWeek;
import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.Given;
import croftboard.plan.PlanRequest;
import croftboard.plan.Planner;
import croftboard.plan.WeekPlan;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is frozen is what was: a plan under no changes is worth what it was, at every hour of its week. */
class FrozenWeekTest {
    private static final Book BOOK = BookReader.read(Path.of("").toAbsolutePath()).orElseThrow();
    private static WeekPlan plan;

    @BeforeAll
    static void makePlan() {
        PlanRequest request = new PlanRequest(IsoWeek.parse("2027-W33").orElseThrow(), 1, Duration.ofSeconds(5),
                OptionalLong.of(20_000), new TreeMap<>(), Optional.empty(), Given.NOTHING, new PlanRequest.Progress() {
                    @Override
                    public void doing(String what) { }

                    @Override
                    public void better(WeekPlan better) { }
                }, () -> false);
        plan = new Planner(BOOK, Optional.empty()).plan(request).fold(p -> p.plan(), r -> null);
        assertThat(plan.complete()).isTrue();
    }

    private static ChangedWeek at(String now, Change... changes) {
        return ChangedWeek.of(BOOK, plan, Given.NOTHING, List.of(changes), LocalDateTime.parse(now));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-08-09T07:00", "2027-08-14T18:00", "2027-08-16T07:00", "2027-08-17T07:00", "2027-08-17T15:00",
        "2027-08-18T07:00", "2027-08-19T13:00", "2027-08-21T07:00"})
    void noChange_plansOwnMenuAndPacks_areCompleteAndWorthTheSame(String now) {
        ChangedWeek week = at(now);
        assertThat(week.faults()).isEmpty();
        WeekProblem p = week.built().problem();
        int[] packs = PlanPacks.of(p, plan);
        Workload work = Workload.of(p, week.start());
        assertThat(work.missed()).isEmpty();
        Buying buying = Buying.of(p, work.needMg(), packs);
        assertThat(buying.complete()).isTrue();
        Account account = Account.of(p, week.start(), packs, work);
        assertThat(account).isEqualTo(plan.account());
    }

    @Test
    void friday_leavesFewDishesOpen_andTheRestAsItIs() {
        WeekProblem p = at("2027-08-20T07:00").built().problem();
        long open = p.slots().stream().filter(s -> s.candidates().size() > 1).count();
        assertThat(open).isBetween(1L, 14L);
    }
}
