package croftboard.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class RequestTest {
    private static Request of(String... words) {
        String[] args = new String[words.length + 1];
        args[0] = ".";
        System.arraycopy(words, 0, args, 1, words.length);
        return Request.of(args);
    }

    @Test
    void numbers_mayBeListsAndRanges() {
        assertThat(Request.numbers("5")).containsExactly(5);
        assertThat(Request.numbers("5,20,60")).containsExactly(5, 20, 60);
        assertThat(Request.numbers("1-3,7")).containsExactly(1, 2, 3, 7);
    }

    @Test
    void command_saysHowToMeasureTheSameAgain() {
        Request r = of("quality", "size", "--seconds", "5,20", "--seeds", "1-2", "--quick");
        assertThat(r.parts()).containsExactly(Part.QUALITY, Part.SIZE);
        assertThat(r.command(Part.SIZE)).isEqualTo("./bench size --seconds 5,20 --seeds 1,2 --quick");
        assertThat(r.secondsOr("60", "5")).containsExactly(5, 20);
        assertThat(of("--quick").secondsOr("60", "5")).containsExactly(5);
        assertThat(of().secondsOr("60", "5")).containsExactly(60);
    }

    @Test
    void unknownPart_isRefusedWithWhatThereIs() {
        assertThatThrownBy(() -> of("random")).hasMessageContaining("quality").hasMessageContaining("planted");
    }

    @Test
    void everyPart_hasItsMarksInTheDocument() throws IOException {
        String document = Files.readString(Path.of("docs/benchmarks.md"));
        for (Part part : Part.values()) {
            assertThat(document).contains("<!-- measured: " + part.word() + " -->", "<!-- end: " + part.word() + " -->");
        }
    }
}
