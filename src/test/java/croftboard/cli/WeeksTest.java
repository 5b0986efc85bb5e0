package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import java.time.LocalDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeeksTest {
    private static final Book BOOK = SamplePlan.book();

    /** The small kitchen's first cut-off of a week is the Friday before it, 12:00. */
    @ParameterizedTest
    @CsvSource({"2027-08-02T08:00, 2027-W32", "2027-08-06T12:00, 2027-W32", "2027-08-06T12:01, 2027-W33",
        "2027-08-08T23:00, 2027-W33", "2027-08-09T00:00, 2027-W33", "2026-12-25T11:00, 2026-W53",
        "2026-12-25T13:00, 2027-W01"})
    void next_isTheFirstWeekWhoseCutOffsAreAllToCome(LocalDateTime now, String week) {
        assertThat(Weeks.next(BOOK, now)).hasToString(week);
    }
}
