package croftboard.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.IsoWeek;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanRefTest {
    @Test
    void weekAlone_meansTheCurrentPlan() {
        assertThat(PlanRef.parse("2027-W33")).contains(new PlanRef(new IsoWeek(2027, 33), OptionalInt.empty()));
    }

    @Test
    void weekWithVersion_meansThatVersionAndPrintsTheSame() {
        PlanRef ref = PlanRef.parse("2027-W33@12").orElseThrow();
        assertThat(ref.version()).hasValue(12);
        assertThat(ref).hasToString("2027-W33@12");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "@1", "2027-W33@", "2027-W33@0", "2027-W33@01", "2027-W33@-1", "2027-W33@1@2", "2027-W54",
        "2027-W33 @1", "2027-W33@9999999999"})
    void anythingElse_isNone(String text) {
        assertThat(PlanRef.parse(text)).isEmpty();
    }
}
