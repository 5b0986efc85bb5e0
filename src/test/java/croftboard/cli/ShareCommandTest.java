package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import croftboard.cli.screen.LedgerSample;
import croftboard.ledger.Contents;
import croftboard.ledger.EntryList;
import croftboard.ledger.store.LedgerStore;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShareCommandTest {
    private static final String[] DAYS = {"--from", "2027-08-01", "--to", "2027-08-14"};
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

    private Desk.Run share(String... more) {
        String[] all = new String[1 + DAYS.length + more.length];
        all[0] = "share";
        System.arraycopy(DAYS, 0, all, 1, DAYS.length);
        System.arraycopy(more, 0, all, 1 + DAYS.length, more.length);
        return desk.run(all);
    }

    @Test
    void share_tellsTheNumber_whoseDefinition_andFiveMore() {
        Desk.Run run = share();
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("57.3 % local: $155.00 of $270.50", "near-150, in force in this kitchen", "state-or-400",
                "within-250", "within-100", "state-over-51", "staff meals, at cost");
    }

    @Test
    void trail_addsUpToTheFoodMoney_inEveryFormat() throws IOException {
        BigDecimal sum = share("--trail", "--format", "csv").out().lines().skip(1)
                .map(l -> new BigDecimal(l.replaceAll("\"[^\"]*\"", "x").split(",")[9])).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(sum).isEqualByComparingTo("270.50");
        JsonNode json = new ObjectMapper().readTree(share("--trail", "--format", "json").out());
        BigDecimal again = BigDecimal.ZERO;
        for (JsonNode line : json.get("trail")) {
            again = again.add(line.get("paid_usd").decimalValue());
        }
        assertThat(again).isEqualByComparingTo(json.get("definitions").get(0).get("total_usd").decimalValue());
        assertThat(share("--trail").out()).contains("sum", "$270.50", "corrects #1");
    }

    @Test
    void division_addsUpToTheFoodMoney() {
        for (String by : new String[] {"vendor", "crop", "dish", "month"}) {
            BigDecimal sum = share("--by", by, "--format", "csv").out().lines().skip(1)
                    .map(l -> new BigDecimal(l.replaceAll("\"[^\"]*\"", "x").split(",")[6])).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(sum).as(by).isEqualByComparingTo("270.50");
        }
    }

    @Test
    void otherDefinition_isAskedForByName_andHasNoTarget() {
        assertThat(share("--definition", "within-100").out().replaceAll("\\s+", " ")).contains("50.3 % local", "not the one in force").doesNotContain("Target");
        Desk.Run wrong = share("--definition", "within-99");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("within-99: there is no such definition -> near-150, in-state, state-or-400");
    }

    @Test
    void noFoodInThoseDays_isSaid() {
        assertThat(desk.run("share", "--from", "2020-01-01", "--to", "2020-12-31").out()).contains("No food was paid for in these days");
    }

    @Test
    void wrongUse_isToldWithWhatWouldBeRight() {
        assertThat(desk.run("share", "--ledger", folder.resolve("none.db").toString()).err()).contains("there is no ledger yet -> croftboard receive");
        assertThat(desk.run("share", "--from", "2027-08-02", "--to", "2027-08-01").err()).contains("is after --to");
        assertThat(desk.run("share", "--from", "yesterday").err()).contains("is no date -> year, month, day");
        assertThat(folder.resolve("none.db")).doesNotExist();
    }
}
