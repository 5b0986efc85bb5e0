package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.IsoWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.threeten.extra.YearWeek;

/** Weeks by ISO 8601 against printed examples and against threeten-extra's YearWeek. */
class IsoWeekOutsideTest {
    /**
     * docslib.org/doc/11249519, wiki.richxsearch.com ISO_week_date, liquisearch.com/iso_week_date; the last,
     * of the long year 2026, is computed.
     */
    @ParameterizedTest(name = "{0} is {1}-{2}")
    @CsvSource({"2012-12-31, 2013-W01, 1", "1977-01-01, 1976-W53, 6", "2006-12-31, 2006-W52, 7",
        "2026-12-31, 2026-W53, 4"})
    void date_isInThePrintedWeek(LocalDate date, String week, int day) {
        IsoWeek found = IsoWeek.of(date);
        assertThat(found).hasToString(week).isEqualTo(IsoWeek.parse(week).orElseThrow());
        assertThat(date.getDayOfWeek().getValue()).isEqualTo(day);
        assertThat(found.day(date.getDayOfWeek())).isEqualTo(date);
    }

    /** One encyclopedia-style page gives 2022-12-31 as 2023-W01-6: its slip; it is 2022-W52-6. */
    @Test
    void slipOf31December2022_isNotOurs() {
        assertThat(IsoWeek.of(LocalDate.of(2022, 12, 31))).hasToString("2022-W52");
        assertThat(LocalDate.of(2022, 12, 31).getDayOfWeek().getValue()).isEqualTo(6);
    }

    /** ISO 8601: week 1 holds 4 January and the year's first Thursday. */
    @Test
    void weekOne_holds4January() {
        for (int year = 1900; year <= 2199; year++) {
            assertThat(IsoWeek.of(LocalDate.of(year, 1, 4))).isEqualTo(new IsoWeek(year, 1));
        }
    }

    /** ISO 8601: 71 years of 400 have 53 weeks; 2026 is one, 2027 is not. */
    @Test
    void longYears_are71In400() {
        long longYears = java.util.stream.IntStream.range(1800, 2200).filter(y -> IsoWeek.weeksIn(y) == 53).count();
        assertThat(longYears).isEqualTo(71);
        assertThat(IsoWeek.parse("2026-W53")).isPresent();
        assertThat(IsoWeek.parse("2027-W53")).isEmpty();
    }

    /** org.threeten:threeten-extra YearWeek, every day of three hundred years. */
    @Test
    void everyDay_isInTheWeekThatThreetenExtraSays() {
        List<LocalDate> wrong = new ArrayList<>();
        for (LocalDate d = LocalDate.of(1900, 1, 1); d.getYear() < 2199; d = d.plusDays(1)) {
            YearWeek theirs = YearWeek.from(d);
            IsoWeek ours = IsoWeek.of(d);
            boolean same = ours.year() == theirs.getYear() && ours.week() == theirs.getWeek()
                    && ours.day(d.getDayOfWeek()).equals(d);
            if (!same) {
                wrong.add(d);
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** org.threeten:threeten-extra YearWeek.plusWeeks, over year ends in both directions. */
    @Test
    void plusWeeks_crossesYearEndsAsThreetenExtraDoes() {
        for (int weeks = -600; weeks <= 600; weeks++) {
            YearWeek theirs = YearWeek.of(2026, 53).plusWeeks(weeks);
            assertThat(new IsoWeek(2026, 53).plusWeeks(weeks)).hasToString(theirs.toString());
        }
    }
}
