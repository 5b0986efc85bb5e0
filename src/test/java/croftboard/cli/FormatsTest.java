package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import croftboard.cli.screen.MenuScreen;
import croftboard.cli.screen.Rows;
import croftboard.cli.screen.Shown;
import croftboard.plan.WeekPlan;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FormatsTest {
    /** Rows whose dish has that text as its id. */
    private static Rows rows(String dish) {
        var book = SamplePlan.book();
        WeekPlan plan = SamplePlan.complete(book);
        WeekPlan.Served s = plan.menu().get(0);
        WeekPlan one = new WeekPlan(plan.week(), plan.fingerprint(), plan.inputs(), List.of(new WeekPlan.Served(s.slot(),
                s.line(), s.days(), Optional.of(dish), s.portions(), s.sales(), s.left(), s.staples(), s.productions(),
                s.marks(), s.kept())), plan.batches(), plan.orders(), plan.needs(), plan.flows(), plan.surplus(),
                plan.account(), plan.promises(), plan.share(), plan.proof(), plan.missing(), plan.swaps());
        return new MenuScreen(new Shown(book, one, Optional.empty(), false, LocalDateTime.MIN, "")).rows();
    }

    private static String cell(String dish) {
        String csv = CsvText.of(rows(dish));
        String record = csv.substring(csv.indexOf("\r\n") + 2);
        return record.substring(record.indexOf(",1,") + 3, record.indexOf(",40,"));
    }

    @Test
    void csv_quotesCommasQuotesAndLineEnds() {
        assertThat(cell("a,b")).isEqualTo("\"a,b\",\"a,b\"");
        assertThat(cell("a \"b\"")).isEqualTo("\"a \"\"b\"\"\",\"a \"\"b\"\"\"");
        assertThat(cell("a\nb")).isEqualTo("\"a\nb\",\"a\nb\"");
    }

    @Test
    void csv_takesTheEdgeOffFormulas_butLeavesFigures() {
        assertThat(cell("=1+1")).isEqualTo("'=1+1,'=1+1");
        assertThat(cell("+x")).isEqualTo("'+x,'+x");
        assertThat(cell("-x")).isEqualTo("'-x,'-x");
        assertThat(cell("@x")).isEqualTo("'@x,'@x");
        assertThat(CsvText.of(new croftboard.cli.screen.MoneyScreen(new Shown(SamplePlan.book(),
                SamplePlan.complete(SamplePlan.book()), Optional.empty(), false, LocalDateTime.MIN, "")).rows()))
                .contains("orders,-455.00\r\n");
    }

    @Test
    void json_readsBackAsItWas() throws IOException {
        Map<String, Object> all = new LinkedHashMap<>();
        String hostile = "quote \" slash \\ line \n tab \t nul \u0000 bidi \u202E carrot \ud83e\udd55 </script>";
        all.put(hostile, List.of(hostile, new BigDecimal("-12.50"), true, List.of(), Map.of()));
        String text = JsonText.of(all);
        assertThat(text.chars().allMatch(c -> c == '\n' || c >= ' ' && c < 127)).isTrue();
        var back = new ObjectMapper().readTree(text).get(hostile);
        assertThat(back.get(0).textValue()).isEqualTo(hostile);
        assertThat(back.get(1).decimalValue()).isEqualByComparingTo("-12.50");
        assertThat(back.get(2).booleanValue()).isTrue();
        assertThat(back.get(3).isEmpty()).isTrue();
    }
}
