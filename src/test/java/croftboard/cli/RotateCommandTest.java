package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RotateCommandTest {
    @TempDir
    private Path folder;

    @Test
    void twoWeeks_areKeptShownAndChecked_andTheNextOnesMayNotOverlap() {
        Desk desk = new Desk(folder, Desk.always(true));
        Desk.Run made = desk.run("rotate", "2027-W36", "--weeks", "2", "--steps", "60");
        assertThat(made.code()).isIn(0, 3);
        assertThat(made.err()).contains("kept as 2027-W36..2027-W37@1");
        assertThat(made.out()).contains("Week by week").contains("Variety").contains("Check: every figure and every must");
        Desk.Run shown = desk.run("show", "2027-W36..2027-W37", "menu");
        assertThat(shown.out()).contains("Week 2027-W36").contains("Week 2027-W37");
        assertThat(desk.run("show", "2027-W36..2027-W37", "orders", "--format", "csv").out()).startsWith("week,");
        assertThat(desk.run("show", "2027-W36..2027-W37", "--format", "json").out()).contains("\"valueCents\": ");
        assertThat(desk.run("compare", "2027-W36..2027-W37@1", "2027-W36..2027-W37").out()).contains("0 dishes differ in the 2 weeks");
        assertThat(desk.run("compare", "2027-W36..2027-W37", "2027-W36").err()).contains("two plans of weeks, or two rotations");
        Desk.Run again = desk.run("rotate", "2027-W37", "--weeks", "2", "--steps", "60");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err().lines()).containsExactly("2027-W37..2027-W38 has weeks of the rotation 2027-W36..2027-W37 -> "
                + "begin with 2027-W38, or take that one out of force with --replace");
        assertThat(desk.book.resolve("plans/rotations/2027-W37..2027-W38")).doesNotExist();
        assertThat(desk.run("rotate", "2027-W37", "--weeks", "2", "--steps", "60", "--replace").err())
                .contains("the rotation 2027-W36..2027-W37 is out of force; its files stay");
    }

    @Test
    void pastWeeks_exit2_nothingWritten() {
        Desk desk = new Desk(folder, Desk.always(true));
        Desk.Run run = desk.run("rotate", "2027-W31");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("2027-W31 has begun or is past -> begin with 2027-W");
        assertThat(desk.book.resolve("plans")).doesNotExist();
    }

    @Test
    void wrongUse_everyFaultOnALine() {
        Desk desk = new Desk(folder, Desk.always(true));
        assertThat(desk.run("rotate", "2027-W36", "--weeks", "60", "--cycle", "9", "--steps", "0").err().lines())
                .hasSize(3).allMatch(l -> l.contains(" -> "));
        assertThat(desk.run("rotate", "2027-13").err()).contains("no week and no month");
        assertThat(desk.run("rotate", "2027-W36", "--cycle", "4").err()).contains("nothing is repeated");
        assertThat(desk.run("show", "2027-W36..2027-W39").err()).contains("there is no rotation 2027-W36..2027-W39");
    }

    @Test
    void month_isTheWeeksWhoseThursdayIsInIt() {
        Typed.FromWeek september = new Typed.Weeks().convert("2027-09");
        assertThat(september.first()).hasToString("2027-W35");
        assertThat(september.weeks()).contains(5);
        assertThat(new Typed.Weeks().convert("2027-10").first()).hasToString("2027-W40");
    }
}
