package croftboard.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class RotationFileTest {
    private static final Path FIXTURE = Path.of("src/test/resources/rotations/format-1.json");

    private static String why(String text) {
        return RotationFile.read(text).fold(read -> "read", absent -> "absent", RotationReading.Refused::why);
    }

    /** Written by the first version that knew rotations; every later one reads it. */
    @Test
    void fileOfTheFirstFormat_isRead_andReadAgainWhenWritten() throws IOException {
        String text = Files.readString(FIXTURE);
        var rotation = RotationFile.read(text).fold(RotationReading.Read::rotation, a -> null, r -> null);
        assertThat(rotation.span()).hasToString("2027-W36..2027-W37");
        assertThat(rotation.weeks()).hasSize(2);
        var again = RotationFile.read(RotationFile.write(rotation)).fold(RotationReading.Read::rotation, a -> null, r -> null);
        assertThat(again).isEqualTo(rotation);
    }

    @Test
    void newerCutOffOrOtherWeeks_areRefusedWithThePlace() throws IOException {
        String text = Files.readString(FIXTURE);
        assertThat(why(text.replaceFirst("\"format\": 1", "\"format\": 9"))).contains("$.format").contains("newer");
        assertThat(why(text.substring(0, text.length() / 2))).contains("cut off or damaged");
        assertThat(why(text.replaceFirst("2027-W36\\.\\.2027-W37", "2027-W36..2027-W38"))).contains("$.weeks");
        assertThat(why(text.replaceFirst("2027-W36\\.\\.2027-W37", "2027-W38..2027-W36"))).contains("$.span");
        assertThat(why("{}")).contains("\"format\" is missing");
    }
}
