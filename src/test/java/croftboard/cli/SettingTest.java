package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.cli.screen.Headline;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.Shown;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SettingTest {
    private static Setting setting(boolean terminal, Map<String, String> environment) {
        return new Setting(Desk.FRIDAY, environment, terminal, Desk.Stop::new);
    }

    private static String headline(Setting setting) {
        Page page = setting.page();
        var book = SamplePlan.book();
        Headline.print(new Shown(book, SamplePlan.complete(book), Optional.empty(), false, LocalDateTime.MIN, ""), page);
        return page.toString();
    }

    @Test
    void columns_sayTheWidth() {
        assertThat(setting(false, Map.of("COLUMNS", "97")).width()).isEqualTo(97);
        assertThat(setting(false, Map.of("COLUMNS", "wide")).width()).isEqualTo(100);
        assertThat(setting(false, Map.of()).width()).isEqualTo(100);
    }

    @Test
    void bold_onlyOnATerminalThatWantsIt_andSaysNothingAlone() {
        String plain = headline(setting(false, Map.of("COLUMNS", "80")));
        assertThat(plain).doesNotContain("\u001b");
        assertThat(headline(setting(true, Map.of("COLUMNS", "80", "NO_COLOR", "1")))).isEqualTo(plain);
        assertThat(headline(setting(true, Map.of("COLUMNS", "80", "TERM", "dumb")))).isEqualTo(plain);
        String bold = headline(setting(true, Map.of("COLUMNS", "80")));
        assertThat(bold).contains("\u001b[1m");
        assertThat(bold.replaceAll("\u001b\\[\\d+m", "")).isEqualTo(plain);
    }
}
