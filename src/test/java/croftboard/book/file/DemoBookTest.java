package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The demo book at the repository's root. */
class DemoBookTest {
    @Test
    void hasNoFault_andNoWarningThatNobodyMeant() {
        BookReading reading = BookReader.read(Path.of("."));
        assertThat(reading.faultsFound()).isEmpty();
        assertThat(reading.fold(BookReading.Read::warnings, f -> java.util.List.of()))
                .extracting(Warning::says)
                .noneMatch(s -> s.contains("nobody sells") || s.contains("less ")
                || s.contains("no line fits")
                        || s.contains("never in season"));
    }
}
