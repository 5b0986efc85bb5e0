package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ManPagesTest {
    @TempDir
    private Path folder;

    @Test
    void man_writesOnePageACommand_withItsExitCodes() throws Exception {
        Desk desk = new Desk(folder, Desk.always(true));
        Desk.Run run = desk.runAsTyped("man", folder.resolve("man").toString());
        assertThat(run.code()).isZero();
        for (String name : List.of("croftboard", "croftboard-plan", "croftboard-check", "croftboard-show",
                "croftboard-scale", "croftboard-post")) {
            String page = Files.readString(folder.resolve("man").resolve(name + ".1"));
            assertThat(page).startsWith(".TH \"").contains(".SH NAME").contains("Exit codes");
        }
    }
}
