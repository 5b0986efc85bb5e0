package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void sitDown() {
        desk = new Desk(folder, Desk.always(true));
    }

    @Test
    void faultlessBook_saysWhatWasRead() {
        Desk.Run run = desk.run("check");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("Tinderbox Lane Larder: no faults.").contains("5 dishes, 2 components")
                .contains("allergens not fully stated");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void faultyBook_saysEveryFaultWithItsPlace_exit2() {
        desk.write("seasons/targets.yaml", "- {weeks: W23..W99, local: 45%}\n");
        desk.write("seasons/closures.yaml", "- {date: yesterday, why: \"x\"}\n");
        Desk.Run run = desk.run("check");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out().lines()).hasSizeGreaterThanOrEqualTo(2).allMatch(l -> l.matches(
                "seasons/\\w+\\.yaml:\\d+:\\d+: .+ -> .+"));
        assertThat(run.err()).contains("nothing was read");
    }

    @Test
    void folderThatIsNotThere_exit2() {
        Desk.Run run = desk.runAsTyped("check", "--book", folder.resolve("nowhere").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("there is no such folder ->");
    }
}
