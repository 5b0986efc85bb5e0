package croftboard.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SampleAnswers;
import croftboard.cli.SamplePlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each screen as it stands in {@code src/test/resources/screens}. After a wanted change write them anew with
 * {@code -Dscreens=write} and read the difference.
 */
class GoldenScreensTest {
    private static final Path FOLDER = Path.of("src/test/resources/screens");
    private static final Book BOOK = SamplePlan.book();

    @ParameterizedTest
    @CsvSource({"headline,80", "headline,120", "menu,80", "menu,120", "orders,80", "orders,120", "prep,80", "prep,120",
        "money,80", "money,120", "coverage,80", "coverage,120", "share,80", "share,120", "proof,80", "proof,120",
        "scale,80", "scale,120", "compare,80", "compare,120",
        "why-dish,80", "why-dish,120", "why-order,80", "why-order,120", "why-week,80", "why-week,120", "why-not,80", "why-not,120", "why-not-cannot,80", "why-not-cannot,120",
        "clash,80", "clash,120", "worth,80", "worth,120", "exposure,80", "exposure,120",
        "changes,80", "changes,120", "changes-nothing,80", "changes-nothing,120", "surplus,80", "surplus,120", "not-sent,80",
        "not-sent,120"})
    void screen_isAsItWasRead(String name, int width) throws IOException {
        String text = Screens.text(Screens.of(BOOK).get(name), width);
        Path file = FOLDER.resolve(name + "-" + width + ".txt");
        if ("write".equals(System.getProperty("screens"))) {
            Files.writeString(file, text);
        }
        assertThat(text).isEqualTo(Files.readString(file));
    }

    @Test
    void picture_isAsItWasLookedAt() throws IOException {
        String svg = new ExposurePicture(SampleAnswers.exposure()).svg();
        Path file = FOLDER.resolve("exposure.svg");
        if ("write".equals(System.getProperty("screens"))) {
            Files.writeString(file, svg);
        }
        assertThat(svg).isEqualTo(Files.readString(file));
    }
}
