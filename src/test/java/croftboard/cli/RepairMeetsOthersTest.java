package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A repair beside another terminal, and on the paper that hangs on the wall. */
class RepairMeetsOthersTest {
    private static final IsoWeek WEEK = new IsoWeek(2027, 33);
    private static final String TUESDAY = "2027-08-17T07:00";
    @TempDir
    private Path folder;
    private final Between between = new Between();
    private Desk desk;

    /** Whatever somebody else does while a repair is checked: after it was begun, before it is kept. */
    private static final class Between implements PlanCheck {
        private Runnable other = () -> { };

        @Override
        public Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now) {
            return check(book, plan, given, now, Optional.empty());
        }

        @Override
        public Verdict check(Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now, Optional<WeekPlan> base) {
            Runnable once = other;
            other = () -> { };
            once.run();
            return new Checking().check(book, plan, given, now, base);
        }
    }

    @BeforeEach
    void posted() {
        desk = new Desk(folder, Wiring.tools().planner(), between, new Desk.Stop());
        assertThat(desk.run("plan", "2027-W33", "--steps", "200").code()).isZero();
        assertThat(desk.run("post", "2027-W33").code()).isZero();
    }

    private Desk.Run broken(String sentence) {
        return desk.run("short", "2027-W33", "--steps", "50", "--now", TUESDAY, "--change", sentence);
    }

    private WeekPlan plan(int version) {
        return new PlanStore(desk.book).read(WEEK, version).fold(r -> r.plan(), a -> null, r -> null);
    }

    @Test
    void anotherTerminalRepairsMeanwhile_isKept_thisOneIsTold_andNothingIsLost() {
        between.other = () -> assertThat(broken("closed fri").code()).isZero();
        Desk.Run run = broken("closed thu");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("nothing was written").contains("croftboard show 2027-W33");
        assertThat(plan(2).inputs().revision().orElseThrow().changes()).containsExactly("closed fri");
        assertThat(plan(3)).isNull();
        assertThat(broken("closed thu").code()).as("said again").isZero();
        assertThat(plan(3).inputs().revision().orElseThrow().changes()).containsExactly("closed thu");
    }

    @Test
    void anotherTerminalPostsMeanwhile_thisOneIsTold() {
        assertThat(broken("closed fri").code()).isZero();
        between.other = () -> new PlanStore(desk.book).post(WEEK, 2);
        Desk.Run run = broken("closed thu");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("nothing was written");
        assertThat(plan(3)).isNull();
    }

    @Test
    void fileOfSentences_eachBadLineIsTold_nothingWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("tuesday.txt"), "# what the grower wrote\nclosed thu\n\nclosed someday\n"
                + "nobody/carrot got 2\n");
        Desk.Run run = desk.run("short", "2027-W33", "--now", TUESDAY, "--changes", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(2).allMatch(l -> l.contains("->"));
        assertThat(plan(2)).isNull();
        Desk.Run none = desk.run("short", "2027-W33", "--now", TUESDAY, "--changes", folder.resolve("no.txt").toString());
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err().lines()).hasSize(1);
    }

    @Test
    void revisedPlan_onPaper_namesTheOldPages() {
        Path out = folder.resolve("out");
        String[] paper = {"paper", "2027-W33", "--format", "text", "--out", out.toString()};
        assertThat(desk.run(paper).code()).isZero();
        assertThat(broken("closed thu").code()).isZero();
        assertThat(desk.run("post", "2027-W33@2").code()).isZero();
        Desk.Run again = desk.run(paper);
        assertThat(again.out()).contains("no longer in the plan, take them down:").contains("2027-08-19")
                .contains("differs from the one printed from 2027-W33@1");
    }

    @Test
    void paper_saysWhichOrdersAreInDoubt_untilTheyAreRecorded() {
        WeekPlan.Order first = plan(1).orders().get(0);
        LocalDateTime late = first.cutOff().plusHours(1);
        Desk.Run unknown = at(late, "paper", "2027-W33", "--format", "text", "--sheet", "order,order-calendar");
        assertThat(unknown.out()).contains("not recorded as sent");
        String day = first.delivery().toString();
        assertThat(at(late, "sent", "2027-W33", first.vendor(), "--delivery", day).code()).isZero();
        Desk.Run known = at(late, "paper", "2027-W33", "--format", "text", "--sheet", "order,order-calendar");
        assertThat(known.out()).doesNotContain("not recorded as sent");
    }

    private Desk.Run at(LocalDateTime now, String... words) {
        Clock clock = Clock.fixed(now.atZone(SamplePlan.book().kitchen().zone()).toInstant(), ZoneOffset.UTC);
        return desk.at(clock).run(words);
    }
}
