package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.store.LedgerStore;
import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanStore;
import croftboard.plan.look.PastWeeks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was learned reaches the plan, the checker finds nothing against it, and it comes out the same each time. */
class LearnedPlanTest {
    private static final IsoWeek WEEK = new IsoWeek(2027, 34);
    @TempDir
    private Path folder;

    private static int portions(WeekPlan plan, DayOfWeek day) {
        return plan.menu().stream().filter(s -> s.line().equals("hot-main-1") && s.days().contains(WEEK.day(day)))
                .mapToInt(WeekPlan.Served::portions).sum();
    }

    @Test
    void plan_usesWhatWasLearned_andTheManagersFigure() throws IOException {
        Desk desk = new Desk(folder, Wiring.tools().planner(), Wiring.tools().check(), new Desk.Stop());
        String[] plan = {"plan", "2027-W34", "--steps", "60", "--seed", "5", "--keep", "wed/hot-main-1=lentil-bake", "--keep", "sat/hot-main-1=lentil-bake"};
        desk.run(plan);
        try (LedgerStore ledger = LedgerStore.toWrite(desk.book.resolve("ledger.db").toString())) {
            ledger.book(PastWeeks.draft(PastWeeks.of(12)));
        }
        assertThat(desk.run("learn", "all").code()).isZero();
        assertThat(desk.run("forecast", "2027-W34", "--set", "hot-main-1/sat=120", "--reason", "fair on the green").code()).isZero();
        Desk.Run second = desk.run(plan);
        desk.run(plan);
        assertThat(second.out()).contains("every figure and every must holds");
        PlanStore plans = new PlanStore(desk.book);
        WeekPlan before = plans.read(WEEK, 1).fold(r -> r.plan(), a -> null, a -> null);
        WeekPlan after = plans.read(WEEK, 2).fold(r -> r.plan(), a -> null, a -> null);
        assertThat(portions(after, DayOfWeek.WEDNESDAY)).as("a quarter more were asked for").isGreaterThan(portions(before, DayOfWeek.WEDNESDAY));
        assertThat(portions(after, DayOfWeek.SATURDAY)).isGreaterThan(portions(before, DayOfWeek.SATURDAY)).isGreaterThan(110);
        assertThat(after.fingerprint()).isNotEqualTo(before.fingerprint());
        Path kept = desk.book.resolve("plans/2027-W34");
        assertThat(Files.readString(kept.resolve("3.json"))).isEqualTo(Files.readString(kept.resolve("2.json")));
    }
}
