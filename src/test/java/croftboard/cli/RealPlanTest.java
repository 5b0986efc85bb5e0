package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the book to the screen with everything in between as it is. */
class RealPlanTest {
    @TempDir
    private Path folder;

    @Test
    void sameStepsAndSeed_sameFileAndSameScreen() throws IOException {
        Desk desk = new Desk(folder, Wiring.tools().planner());
        Desk.Run first = desk.run("plan", "2027-W34", "--steps", "60", "--seed", "5");
        Desk.Run second = desk.run("plan", "2027-W34", "--steps", "60", "--seed", "5");
        assertThat(first.code()).isIn(Exit.DONE, Exit.INCOMPLETE);
        assertThat(second.out().replace("Version 2", "Version 1")).isEqualTo(first.out());
        Path plans = desk.book.resolve("plans/2027-W34");
        assertThat(Files.readString(plans.resolve("2.json"))).isEqualTo(Files.readString(plans.resolve("1.json")));
        assertThat(desk.run("show", "2027-W34", "prep").out()).contains("Chickpea salad");
    }
}
