package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.plan.PlanAnswer;
import croftboard.plan.WeekPlan;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C while a plan is made. */
class StopTest {
    @TempDir
    private Path folder;

    private Desk desk(Desk.Stop stop, PlanService planner) {
        return new Desk(folder, planner, (b, p, given, when) -> new PlanCheck.Verdict(true, "fine."), stop);
    }

    /** Finds a plan, is stopped, and ends by itself. */
    private static PlanService stoppedAfter(Desk.Stop stop, Function<Book, WeekPlan> best) {
        return (book, now, request) -> {
            WeekPlan plan = best.apply(book);
            request.progress().better(plan);
            stop.asked = true;
            return new PlanAnswer.Planned(plan, request.stop().getAsBoolean());
        };
    }

    @Test
    void completePlanSoFar_isPrintedAndKept_exit0() {
        Desk.Stop stop = new Desk.Stop();
        Desk desk = desk(stop, stoppedAfter(stop, SamplePlan::complete));
        Desk.Run run = desk.run("plan", "2027-W33");
        assertThat(run.code()).isZero();
        assertThat(stop.finished).containsExactly(0);
        assertThat(desk.book.resolve("plans/2027-W33/1.json")).exists();
    }

    @Test
    void incompletePlanSoFar_isPrintedAndKept_exit130() {
        Desk.Stop stop = new Desk.Stop();
        Desk desk = desk(stop, stoppedAfter(stop, SamplePlan::incomplete));
        Desk.Run run = desk.run("plan", "2027-W33");
        assertThat(run.code()).isEqualTo(130);
        assertThat(stop.finished).containsExactly(130);
        assertThat(run.out()).contains("NOT COMPLETE");
        assertThat(desk.book.resolve("plans/2027-W33/1.json")).exists();
    }

    @Test
    void makerThatDoesNotEnd_isLeftBehind_bestSoFarIsTaken() {
        Desk.Stop stop = new Desk.Stop();
        CountDownLatch never = new CountDownLatch(1);
        Desk desk = desk(stop, (book, now, request) -> {
            request.progress().better(SamplePlan.complete(book));
            stop.asked = true;
            await(never);
            throw new IllegalStateException("went on");
        });
        Desk.Run run = desk.run("plan", "2027-W33");
        never.countDown();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Worth $3,336.32");
    }

    @Test
    void noPlanYet_exit130_nothingWritten() {
        Desk.Stop stop = new Desk.Stop();
        CountDownLatch never = new CountDownLatch(1);
        Desk desk = desk(stop, (book, now, request) -> {
            stop.asked = true;
            await(never);
            throw new IllegalStateException("went on");
        });
        Desk.Run run = desk.run("plan", "2027-W33");
        never.countDown();
        assertThat(run.code()).isEqualTo(130);
        assertThat(run.err()).contains("ended before there was a plan; nothing was written");
        assertThat(desk.book.resolve("plans")).doesNotExist();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
