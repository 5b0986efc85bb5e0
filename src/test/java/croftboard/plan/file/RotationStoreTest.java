package croftboard.plan.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import croftboard.plan.Rotation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RotationStoreTest {
    private static final WeekSpan TWO = WeekSpan.parse("2027-W36..2027-W37").orElseThrow();
    @TempDir
    private Path book;
    private Rotation rotation;
    private RotationStore store;

    @BeforeEach
    void read() throws IOException {
        store = new RotationStore(book);
        rotation = RotationFile.read(Files.readString(Path.of("src/test/resources/rotations/format-1.json")))
                .fold(RotationReading.Read::rotation, a -> null, r -> null);
    }

    private Rotation read(OptionalInt version) {
        return store.read(new RotationRef(TWO, version)).fold(RotationReading.Read::rotation, a -> null, r -> null);
    }

    /** The same of its first week only. */
    private Rotation oneWeek() {
        return new Rotation(new WeekSpan(TWO.first(), TWO.first()), rotation.fingerprint(), rotation.inputs(),
                rotation.weeks().subList(0, 1), rotation.account(), rotation.share(), rotation.proof(), rotation.variety(),
                List.of(), List.of());
    }

    @Test
    void versionsAreKept_andTheLastIsMeant() {
        String why = store.read(new RotationRef(TWO, OptionalInt.empty())).fold(r -> "", RotationReading.Absent::why, r -> "");
        assertThat(why).isEqualTo("there is no rotation 2027-W36..2027-W37; there is none yet");
        assertThat(store.write(rotation, List.of())).isEqualTo(1);
        assertThat(store.write(rotation, List.of())).isEqualTo(2);
        assertThat(store.current(TWO)).hasValue(2);
        assertThat(read(OptionalInt.of(1))).isEqualTo(rotation);
        assertThat(store.covering(new IsoWeek(2027, 37))).contains(rotation);
        assertThat(store.covering(new IsoWeek(2027, 38))).isEmpty();
    }

    @Test
    void overlappingOnes_areRefused_unlessTheOtherIsTakenOutOfForce() {
        store.write(rotation, List.of());
        Rotation one = oneWeek();
        assertThat(store.overlapping(one.span())).containsExactly(TWO);
        assertThatThrownBy(() -> store.write(one, List.of())).isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("2027-W36..2027-W37");
        assertThat(book.resolve("plans/rotations/2027-W36..2027-W36/1.json")).doesNotExist();
        store.write(one, List.of(TWO));
        assertThat(store.inForce()).containsExactly(one.span());
        assertThat(store.covering(new IsoWeek(2027, 37))).isEmpty();
        assertThat(read(OptionalInt.empty())).isEqualTo(rotation);
    }
}
