package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.safety.UseBy;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Dates of refrigerated ready-to-eat food: FDA Food Code 3-501.17 as adopted in Minnesota 4626.0400 and
 * elsewhere.
 */
class UseByOutsideTest {
    private static final LocalDate JUNE_1 = LocalDate.of(2025, 6, 1);

    /**
     * At most 7 days, the day of preparation is day 1. Prepared 1 April, last day 7 April: Colorado date
     * marking guide (docslib 11549150), Southern Nevada Health District; the leap day and year end are
     * computed.
     */
    @ParameterizedTest(name = "prepared {0}, last day {1}")
    @CsvSource({"2025-04-01, 2025-04-07", "2024-02-26, 2024-03-03", "2025-02-26, 2025-03-04", "2025-12-28, 2026-01-03"})
    void sevenDays_countTheDayOfPreparation(LocalDate made, LocalDate last) {
        assertThat(UseBy.of(made, 7)).isEqualTo(last);
    }

    /** The limit holds however long a recipe says it keeps. */
    @ParameterizedTest(name = "life of {0} days: last day {1}")
    @CsvSource({"1, 2025-06-01", "4, 2025-06-04", "7, 2025-06-07", "8, 2025-06-07", "30, 2025-06-07"})
    void life_isNeverMoreThanSevenDays(int life, LocalDate last) {
        assertThat(UseBy.of(JUNE_1, life)).isEqualTo(last);
    }

    /**
     * Southern Nevada Health District: burgers cooked 1 June go into chili on 3 June; last day of the chili
     * is 7 June.
     */
    @Test
    void chiliWithEarlierBurgers_keepsTheBurgersDate() {
        LocalDate burgers = UseBy.of(JUNE_1, 7);
        LocalDate chili = UseBy.carried(UseBy.of(JUNE_1.plusDays(2), 7), List.of(burgers));
        assertThat(chili).isEqualTo(LocalDate.of(2025, 6, 7));
    }

    /**
     * 3-501.17(C): with a second component of 2 June it is still 7 June; the order of the parts does not
     * matter.
     */
    @Test
    void chiliWithTwoParts_keepsTheEarliestDate() {
        LocalDate first = UseBy.of(JUNE_1, 7);
        LocalDate second = UseBy.of(JUNE_1.plusDays(1), 7);
        LocalDate own = UseBy.of(JUNE_1.plusDays(2), 7);
        assertThat(UseBy.carried(own, List.of(first, second))).isEqualTo(LocalDate.of(2025, 6, 7));
        assertThat(UseBy.carried(own, List.of(second, first))).isEqualTo(LocalDate.of(2025, 6, 7));
        assertThat(UseBy.carried(own, List.of())).isEqualTo(LocalDate.of(2025, 6, 9));
    }

    /** A short life of the dish itself still ends first. */
    @Test
    void dishWithAShorterLife_keepsItsOwnDate() {
        assertThat(UseBy.carried(UseBy.of(JUNE_1, 2), List.of(UseBy.of(JUNE_1, 7))))
                .isEqualTo(LocalDate.of(2025, 6, 2));
    }

    /**
     * Minnesota 4626.0400 B: opened is day 1, never past the maker's date. Opened 3 March, maker's 6 March: 6
     * March.
     */
    @ParameterizedTest(name = "opened {0}, maker''s {1}: {2}")
    @CsvSource({"2025-03-03, 2025-03-06, 2025-03-06", "2025-03-03, 2025-03-09, 2025-03-09",
        "2025-03-03, 2025-03-10, 2025-03-09", "2025-03-03, 2026-01-01, 2025-03-09"})
    void openedPackage_isNeverDatedPastTheMakers(LocalDate opened, LocalDate makers, LocalDate mark) {
        assertThat(UseBy.opened(opened, makers)).isEqualTo(mark);
    }

    /**
     * Minnesota poster (paperzz 8509837) and 4626.0400: freezing stops the clock, it does not set it back.
     * Days before freezing and days from the thaw on make 7 together, the day of thawing being one of them:
     * the numbers are made for the test.
     */
    @ParameterizedTest(name = "life {0}, {1} days used, thawed 10 October: {2}")
    @CsvSource({"7, 3, 2025-10-13", "7, 1, 2025-10-15", "7, 6, 2025-10-10", "7, 0, 2025-10-16", "5, 2, 2025-10-12",
        "30, 3, 2025-10-13"})
    void freezing_stopsTheClock(int life, int used, LocalDate last) {
        assertThat(UseBy.thawed(LocalDate.of(2025, 10, 10), life, used)).isEqualTo(last);
    }

    /** Nothing used before freezing is the same as made on the day of thawing; each used day costs one. */
    @Test
    void freezing_neverGivesMoreThanFreshFoodHas() {
        for (int used = 0; used < 7; used++) {
            assertThat(UseBy.thawed(JUNE_1, 7, used)).isEqualTo(UseBy.of(JUNE_1, 7).minusDays(used));
        }
    }
}
