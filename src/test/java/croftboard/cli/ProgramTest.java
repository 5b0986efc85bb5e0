package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProgramTest {
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void sitDown() {
        desk = new Desk(folder, Desk.always(true));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "plan", "show", "scale", "post"})
    void everyCommandsHelp_listsItsExitCodes(String command) {
        Desk.Run run = desk.runAsTyped(command, "--help");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Exit codes:").contains("  0   ").contains("  2   ").contains("--book");
        assertThat(desk.runAsTyped("help", command).out()).isEqualTo(run.out());
    }

    @Test
    void help_fitsTheWidth_andHasNoSolverWords() {
        for (String command : List.of("check", "plan", "show", "scale", "post")) {
            String help = desk.runAsTyped(command, "--help").out();
            assertThat(help.lines()).allMatch(l -> l.length() <= 90);
            assertThat(help.toLowerCase(Locale.ROOT)).doesNotContain("score", "constraint", "feasible", "solver",
                    "objective", "optim", "iteration");
        }
    }

    @Test
    void help_listsTheCommands_butNotTheWarmUp() {
        Desk.Run run = desk.runAsTyped("--help");
        assertThat(run.out()).contains("check ", "plan ", "show ", "scale ", "post ", "generate-completion")
                .doesNotContain("warm-up");
    }

    @Test
    void nothingTyped_helpOnStderr_exit2() {
        Desk.Run run = desk.runAsTyped();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("Usage: croftboard");
    }

    @Test
    void misspeltCommand_isSuggested() {
        Desk.Run run = desk.runAsTyped("pln");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("croftboard plan");
    }

    @Test
    void version_andCompletion() {
        assertThat(desk.runAsTyped("--version").out()).startsWith("croftboard ");
        assertThat(desk.runAsTyped("generate-completion").out()).contains("complete -F");
    }

    @Test
    void onlyTheNamedCommand_isBuilt() {
        Setting setting = new Setting(Desk.FRIDAY, java.util.Map.of(), false, Desk.Stop::new);
        Tools tools = new Tools(null, null, null);
        assertThat(Main.commandLine(setting, tools, "scale", "x").getSubcommands()).containsOnlyKeys("scale");
        assertThat(Main.commandLine(setting, tools, "pln").getSubcommands()).containsKeys("check", "plan", "help");
    }

    @Test
    void warmUp_exits0_onABookAndOnNone() {
        assertThat(desk.runAsTyped("--warm-up=" + desk.book).code()).isZero();
        assertThat(desk.book.resolve("plans")).doesNotExist();
        assertThat(desk.runAsTyped("--warm-up=" + folder.resolve("nothing")).code()).isZero();
    }
}
