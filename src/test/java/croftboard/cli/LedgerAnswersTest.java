package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.cli.screen.LedgerSample;
import croftboard.ledger.Contents;
import croftboard.ledger.EntryList;
import croftboard.ledger.store.LedgerStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What report, food-cost and grower-season do on a fortnight's ledger. */
class LedgerAnswersTest {
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void bookAFortnight() {
        desk = new Desk(folder, Desk.always(true));
        EntryList sample = LedgerSample.ledger(SamplePlan.book());
        try (LedgerStore store = LedgerStore.toWrite(desk.book.resolve("ledger.db").toString())) {
            assertThat(store.fill(new Contents(sample.bookings(), sample.everything()))).isTrue();
        }
    }

    private Desk.Run report(String readers, String... more) {
        String[] all = Stream.concat(Stream.of("report", readers, "--from", "2027-08-01", "--to", "2027-08-14"), Stream.of(more))
                .toArray(String[]::new);
        return desk.run(all);
    }

    @Test
    void membersReport_isWrittenAsPdfHtmlAndTables() {
        Desk.Run run = report("members");
        assertThat(run.code()).as(run.err()).isZero();
        Path reports = desk.book.resolve("reports");
        assertThat(reports.resolve("members-2027-08-01-to-2027-08-14.pdf")).isNotEmptyFile();
        assertThat(reports.resolve("members-2027-08-01-to-2027-08-14.html")).isNotEmptyFile();
        for (String table : List.of("definitions", "months", "farms", "miles", "near", "causes", "kept-out", "coverage", "waste", "receipts")) {
            assertThat(reports.resolve("members-2027-08-01-to-2027-08-14").resolve(table + ".csv")).exists();
        }
        assertThat(run.out()).contains("2 pages");
    }

    /** Every number stands with its definition: the share, the range, the other definitions, what is in neither number. */
    @Test
    void membersReport_saysWhatItsNumbersMean() throws IOException {
        report("members", "--format", "text");
        String text = Files.readString(desk.book.resolve("reports/members-2027-08-01-to-2027-08-14.txt"));
        assertThat(text).contains("57.3 % of the money that we paid for food was paid for local food: $155.00 of $270.50",
                "Local means: grown in New York State or within 150 straight-line miles of the store",
                "$76.50 is not classified", "at least 53.2 %", "at most 85.6 %", "By other definitions the same food would be: 50.3 % local",
                "$155.00 + $39.00 + $76.50 = $270.50", "staff meals, at cost $21.00", "Thank you to Hollow Brook Acre");
        assertThat(text.toLowerCase(java.util.Locale.ROOT)).doesNotContain("score", "constraint", "optim", "feasible");
    }

    @Test
    void samePrinting_isTheSameBytes() throws IOException {
        report("members", "--out", folder.resolve("a").toString());
        report("members", "--out", folder.resolve("b").toString());
        try (Stream<Path> files = Files.walk(folder.resolve("a"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertThat(folder.resolve("b").resolve(folder.resolve("a").relativize(file))).hasSameBinaryContentAs(file);
            }
        }
    }

    @Test
    void boardReport_addsMoneyLabourPlanAndMix() throws IOException {
        assertThat(report("board", "--format", "text,csv").code()).isZero();
        String text = Files.readString(desk.book.resolve("reports/board-2027-08-01-to-2027-08-14.txt"));
        assertThat(text).contains("Sales, food cost and margin", "Labour", "Plan against actual", "Menu mix", "Local means:");
        assertThat(desk.book.resolve("reports/board-2027-08-01-to-2027-08-14/menu-mix.csv")).exists();
    }

    @Test
    void daysWithoutFood_areRefused_andNothingIsWritten() {
        Desk.Run run = desk.run("report", "members", "--from", "2020-01-01", "--to", "2020-12-31");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("no food came from 2020-01-01 to 2020-12-31");
        assertThat(desk.book.resolve("reports")).doesNotExist();
        assertThat(desk.run("report", "everybody").err()).contains("'everybody' is none of them -> members, board");
    }

    @Test
    void foodCost_withoutCounts_saysWhatIsMissing() {
        Desk.Run run = desk.run("food-cost", "--month", "2027-08");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("+ purchases of food", "$270.50", "not known", "Without a count at both ends",
                "No sales are booked for this month");
        assertThat(desk.run("food-cost", "--month", "August").err()).contains("is no month -> a year and a month");
        assertThat(desk.run("food-cost", "--month", "2027-08", "--format", "csv").out()).contains("2027-08,,,270.50,6.00");
    }

    @Test
    void growerSeason_tellsWhatWasPaid_andWhatWasPromised() {
        Desk.Run run = desk.run("grower-season", "hollow-brook", "--from", "2027-08-01", "--to", "2027-08-31");
        assertThat(run.out()).contains("Paid for food: $102.00 ($108.00 charged, $6.00 credited).", "We promised to take 6 of carrots");
        Desk.Run wrong = desk.run("grower-season", "hollow");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("no vendor 'hollow' in the book or the ledger -> hollow-brook");
    }
}
