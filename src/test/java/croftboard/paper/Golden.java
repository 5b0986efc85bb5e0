package croftboard.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts kept under src/test/resources/paper; {@code -Dsheets=write} writes them anew, to be looked at before they are kept. */
public final class Golden {
    private static final Path KEPT = Path.of("src/test/resources/paper");

    private Golden() { }

    public static void same(String name, String text) {
        Path file = KEPT.resolve(name);
        try {
            if ("write".equals(System.getProperty("sheets"))) {
                Files.createDirectories(KEPT);
                Files.writeString(file, text);
            }
            assertThat(text).as(name).isEqualTo(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
