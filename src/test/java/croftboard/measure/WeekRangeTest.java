package croftboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeekRangeTest {
    private static WeekRange range(String text) {
        return WeekRange.parse(text).orElseThrow();
    }

    @ParameterizedTest(name = "{0} holds W{1}: {2}")
    @CsvSource({
        "W30..W38, 29, false", "W30..W38, 30, true", "W30..W38, 38, true", "W30..W38, 39, false",
        "W49..W12, 48, false", "W49..W12, 49, true", "W49..W12, 52, true", "W49..W12, 53, true", "W49..W12, 1, true",
        "W49..W12, 12, true", "W49..W12, 13, false",
        "W33, 33, true", "W33, 32, false", "W33, 34, false",
        "W40..W52, 53, true", "W52, 53, true", "W53, 53, true", "W53, 52, false", "W40..W51, 53, false",
        "W01..W39, 53, false", "W53..W05, 53, true", "W53..W05, 52, false"})
    void bothEndsAreIn_andWeek53BelongsToWeek52(String text, int week, boolean holds) {
        assertThat(range(text).holds(week)).isEqualTo(holds);
    }

    @ParameterizedTest(name = "[{0}]")
    @ValueSource(strings = {"W0", "W00", "W54", "W3..W5", "33", "W30-W38", "W30..", "2027-W33", "W30..W54", ""})
    void elseIsRefused(String text) {
        assertThat(WeekRange.parse(text)).isEmpty();
    }

    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource({"W01..W10, W10..W20, true", "W01..W10, W11..W20, false", "W49..W12, W13..W48, false",
        "W49..W12, W12..W48, true", "W49..W12, W52, true", "W01..W52, W53, true", "W45..W05, W50..W02, true"})
    void overlap_isAWeekInCommon(String a, String b, boolean overlaps) {
        assertThat(range(a).overlaps(range(b))).isEqualTo(overlaps);
        assertThat(range(b).overlaps(range(a))).isEqualTo(overlaps);
    }

    @Test
    void fourSeasons_leaveNoWeekOut_alsoInALongYear() {
        WeekRange[] seasons = {range("W49..W12"), range("W13..W22"), range("W23..W36"), range("W37..W48")};
        for (IsoWeek week = new IsoWeek(2026, 1); week.year() < 2028; week = week.plusWeeks(1)) {
            int in = 0;
            for (WeekRange season : seasons) {
                in += season.holds(week) ? 1 : 0;
            }
            assertThat(in).as(week.toString()).isEqualTo(1);
        }
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"W33", "W30..W38", "W49..W12"})
    void text_isReadBackTheSame(String text) {
        assertThat(range(text)).hasToString(text);
    }

    @Test
    void all_holdsEveryWeek() {
        for (int week = 1; week <= 53; week++) {
            assertThat(WeekRange.ALL.holds(week)).isTrue();
        }
    }
}
