package croftboard.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
        "scale,80", "scale,120", "ledger-share,80", "ledger-share,120", "ledger-share-by,80", "ledger-share-by,120", "ledger-share-trail,80",
        "ledger-share-trail,120", "food-cost,80", "food-cost,120", "grower-season,80", "grower-season,120"})
    void screen_isAsItWasRead(String name, int width) throws IOException {
        String text = Screens.text(Screens.of(BOOK).get(name), width);
        Path file = FOLDER.resolve(name + "-" + width + ".txt");
        if ("write".equals(System.getProperty("screens"))) {
            Files.writeString(file, text);
        }
        assertThat(text).isEqualTo(Files.readString(file));
    }
}
