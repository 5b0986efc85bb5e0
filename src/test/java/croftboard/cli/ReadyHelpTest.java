package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Texts made ready after a build are what the command line itself would say. */
class ReadyHelpTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void texts() throws IOException {
        ReadyHelp.write(folder.resolve("help"), Main.commandLine(setting(Map.of()), Wiring.tools()));
    }

    private static Setting setting(Map<String, String> environment) {
        return new Setting(Desk.FRIDAY, environment, false, Desk.Stop::new);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "--version", "-V", "plan --help", "plan -h", "check --help", "show --help",
        "scale --help", "post -h"})
    void readyText_isTheCommandLinesOwn(String typed) {
        String[] args = typed.split(" ");
        CommandText own = own(args);
        assertThat(own.code).isZero();
        assertThat(ReadyHelp.answer(folder.resolve("help"), setting(Map.of()), args)).contains(own.text);
    }

    private record CommandText(int code, String text) { }

    private static CommandText own(String[] args) {
        StringWriter out = new StringWriter();
        CommandLine line = Main.commandLine(setting(Map.of()), Wiring.tools(), args);
        line.setOut(new PrintWriter(out, true));
        return new CommandText(line.execute(args), out.toString());
    }

    @Test
    void anythingElse_goesTheLongWay() {
        for (List<String> args : List.of(List.of("plan"), List.of("--help", "plan"), List.of("nonsense", "--help"),
                List.of("../version", "--help"), List.of("help", "plan"), List.of("help", "--help"), List.<String>of(),
                List.of("plan", "--help", "--book=x"))) {
            assertThat(ReadyHelp.answer(folder.resolve("help"), setting(Map.of()), args.toArray(String[]::new)))
                    .as(args.toString()).isEmpty();
        }
        assertThat(ReadyHelp.answer(folder.resolve("help"), setting(Map.of("COLUMNS", "120")), "--help")).isEmpty();
        assertThat(ReadyHelp.answer(folder.resolve("nowhere"), setting(Map.of()), "--help")).isEmpty();
    }
}
